import { soundState } from '#app/platform/sound.ts';
import { settings } from '#app/state/settings.ts';
import { anyClockRuns } from './running.ts';

/** After a reload a browser stays silent until it is touched: an alarm nobody hears must say so. */
export function SoundLine() {
  const mute = anyClockRuns.value && settings.value.sound && soundState.value === 'locked';
  return mute ? <p class="sound-line">Touch once, so that it can sound.</p> : null;
}
