import { useSignal } from '@preact/signals';
import { Secondary } from '#app/parts/action.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import { type MixOfBuild, scaleDoubt } from './mix-of-build.ts';
import { percentWords } from './mix-words.ts';
import { ScaleSheet, scaleWords } from './scale-sheet.tsx';

interface Props {
  /** kg of mixed resin in the next cup */
  cup: number;
  mix: MixOfBuild;
}

/** Said while there is time to fetch a finer scale. */
export function ScaleWarning({ cup, mix }: Props) {
  const doubt = scaleDoubt(cup, settings.value.scaleStep, mix.mixing);
  if (!doubt) return null;
  const allowed = percentWords(mix.mixing.tolerance);
  return (
    <Warning kind="amber" title={`This scale is too coarse for a cup of ${show(cup, 'mass')}`}>
      Its step alone can put the ratio {percentWords(doubt.error)} off, and {allowed} is allowed. It can hold
      that from <strong>{show(doubt.smallest, 'mass')}</strong> a cup: mix fewer, bigger cups, or fetch a
      finer scale.
    </Warning>
  );
}

/** How the scale is used, and the way to change it. */
export function ScaleLine() {
  const open = useSignal(false);
  return (
    <>
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
