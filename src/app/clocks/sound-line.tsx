import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { soundState } from '#app/platform/sound.ts';
import { settings } from '#app/state/settings.ts';
import { anyClockRuns } from './running.ts';

/** Taken away under the thumb that unlocks the sound, the line would let that touch land on something else, ms */
const staysFor = 700;

/** After a reload a browser stays silent until it is touched: an alarm nobody hears must say so. */
export function SoundLine() {
  const mute = anyClockRuns.value && settings.value.sound && soundState.value === 'locked';
  const shown = useSignal(mute);
  useEffect(() => {
    const timer = setTimeout(
      () => {
        shown.value = mute;
      },
      mute ? 0 : staysFor,
    );
    return () => clearTimeout(timer);
  }, [mute, shown]);
  return shown.value ? <p class="sound-line">Touch once, so that it can sound.</p> : null;
}
