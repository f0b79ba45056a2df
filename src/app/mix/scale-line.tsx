import { useSignal } from '@preact/signals';
import { Secondary } from '#app/parts/action.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import { type MixOfBuild, scaleDoubt } from './mix-of-build.ts';
import { percentWords } from './mix-words.ts';
import { ScaleSheet, scaleWords } from './scale-sheet.tsx';

/** How the scale is used, and a warning while there is time to fetch a finer one. */
export function ScaleLine({ cup, mix }: { cup: number; mix: MixOfBuild }) {
  const open = useSignal(false);
  const doubt = scaleDoubt(cup, settings.value.scaleStep, mix.mixing);
  return (
    <>
      {doubt && (
        <Warning kind="amber" title={`This scale is too coarse for a cup of ${show(cup, 'mass')}`}>
          Its step alone can put the ratio {percentWords(doubt.error)} off, and{' '}
          {percentWords(mix.mixing.tolerance)} is allowed. It can hold that from{' '}
          <strong>{show(doubt.smallest, 'mass')}</strong> a cup: mix fewer, bigger cups, or fetch a finer
          scale.
        </Warning>
      )}
      <Secondary
        onPress={() => {
          open.value = true;
        }}
      >
        {scaleWords()}
      </Secondary>
      {open.value && (
        <ScaleSheet
          onClose={() => {
            open.value = false;
          }}
        />
      )}
    </>
  );
}
