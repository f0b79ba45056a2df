import { startWiping } from './wiping.ts';

/** Harmless wherever it lies: it ends by itself. */
export function WipeKey({ kind }: { kind: 'tab' | 'secondary' | 'top' }) {
  return (
    <button
      type="button"
      class={kind === 'secondary' ? 'secondary' : `wipe-${kind}`}
      aria-label="Wipe glass: 15 seconds without touch"
      onClick={startWiping}
    >
      Wipe glass
    </button>
  );
}
