import { mayNotify } from '#app/platform/notify.ts';
import { soundState } from '#app/platform/sound.ts';
import { canSpeak } from '#app/platform/speak.ts';
import { canVibrate } from '#app/platform/vibrate.ts';
import { awake } from '#app/platform/wake-lock.ts';
import { settings } from '#app/state/settings.ts';
import type { Means } from './reach-words.ts';
import { anyClockRuns } from './running.ts';

/** By what an alarm can reach the builder here and now. */
export const meansNow = (): Means => ({
  sound: settings.value.sound,
  speech: settings.value.speech === true,
  soundState: soundState.value,
  awake: awake.value,
  mayNotify: mayNotify.value,
  canVibrate,
  canSpeak: canSpeak.value,
  running: anyClockRuns.value,
});
