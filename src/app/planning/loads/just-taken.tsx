import { signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { Lines } from '#app/parts/figure.tsx';
import { show } from '#app/state/show.ts';
import { marginWords } from './ruling.ts';

interface Wall {
  margin: number;
  /** kg; undefined where a density is missing */
  mass: number | undefined;
}

/** The wall that wanted plies took the place of, and the plan it was in. */
export const wallBefore = signal<(Wall & { doc: string }) | undefined>(undefined);

const massWords = (mass: number | undefined) => (mass === undefined ? '–' : show(mass, 'mass', 0));

/** What the plies just taken changed, until one goes on. */
export function JustTaken({ doc, now }: { doc: string; now: Wall }) {
  const before = wallBefore.value;
  useEffect(
    () => () => {
      wallBefore.value = undefined;
    },
    [],
  );
  if (before?.doc !== doc) return null;
  return (
    <section aria-label="What the plies changed">
      <h2>The plies are in the wall</h2>
      <Lines
        head={['Least margin', 'weighs']}
        rows={[
          [`before ${marginWords(before.margin)}`, massWords(before.mass)],
          [`now ${marginWords(now.margin)}`, massWords(now.mass)],
        ]}
      />
    </section>
  );
}
