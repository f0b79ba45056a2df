import { type ReadonlySignal, signal } from '@preact/signals';

/** 'locked': browsers stay silent until the screen has been touched once. */
export type SoundState = 'locked' | 'ready' | 'unsupported';

/** Hz and seconds of one beep, and the silence after it. */
export interface Beep {
  pitch: number;
  lasts: number;
  rest: number;
}

const supported = 'AudioContext' in window;
const state = signal<SoundState>(supported ? 'locked' : 'unsupported');
let context: AudioContext | undefined;

export const soundState: ReadonlySignal<SoundState> = state;

/** Unlocks the sound with the first touch anywhere, and again after the phone has taken it away. */
export function readySound(): void {
  if (!supported) return;
  for (const event of ['click', 'touchend', 'keydown']) {
    addEventListener(event, wake, { capture: true, passive: true });
  }
  document.addEventListener('visibilitychange', () => {
    if (context && document.visibilityState === 'visible') resume(context);
  });
}

function wake(): void {
  if (context?.state === 'running') return;
  context ??= open();
  resume(context);
}

function open(): AudioContext {
  // Without it the silent switch of an iPhone silences an alarm too.
  const { audioSession } = navigator as Navigator & { audioSession?: { type: string } };
  if (audioSession) audioSession.type = 'playback';
  const made = new AudioContext();
  made.addEventListener('statechange', () => {
    state.value = made.state === 'running' ? 'ready' : 'locked';
  });
  return made;
}

function resume(opened: AudioContext): void {
  // Refused until a touch: the state says so, and the next touch tries again.
  opened.resume().catch(() => {});
}

/** Plays beeps one after the other; says nothing while it is locked. */
export function play(beeps: readonly Beep[]): void {
  if (context?.state !== 'running') return;
  let at = context.currentTime + 0.02;
  for (const beep of beeps) {
    tone(context, beep, at);
    at += beep.lasts + beep.rest;
  }
}

function tone(audio: AudioContext, { pitch, lasts }: Beep, at: number): void {
  const oscillator = audio.createOscillator();
  const gain = audio.createGain();
  // Square carries over a fan better than sine; its edges are ramped so that it does not click.
  oscillator.type = 'square';
  oscillator.frequency.value = pitch;
  gain.gain.setValueAtTime(0, at);
  gain.gain.linearRampToValueAtTime(0.35, at + 0.01);
  gain.gain.setValueAtTime(0.35, at + lasts - 0.02);
  gain.gain.linearRampToValueAtTime(0, at + lasts);
  oscillator.connect(gain).connect(audio.destination);
  oscillator.start(at);
  oscillator.stop(at + lasts);
}
