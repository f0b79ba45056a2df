import { type ReadonlySignal, signal } from '@preact/signals';

/** 'locked': browsers stay silent until the screen has been touched once. */
export type SoundState = 'locked' | 'ready' | 'unsupported';

/** Hz and seconds of one beep, and the silence after it. */
export interface Beep {
  pitch: number;
  lasts: number;
  rest: number;
}

interface Output {
  context: AudioContext;
  into: AudioNode;
}

const supported = 'AudioContext' in window;
const state = signal<SoundState>(supported ? 'locked' : 'unsupported');
let output: Output | undefined;
let sounding: OscillatorNode[] = [];

export const soundState: ReadonlySignal<SoundState> = state;

/** Unlocks the sound with the first touch anywhere, and again after the phone has taken it away. */
export function readySound(): void {
  if (!supported) return;
  for (const event of ['click', 'touchend', 'keydown']) {
    addEventListener(event, unlockSound, { capture: true, passive: true });
  }
  document.addEventListener('visibilitychange', () => {
    if (output && document.visibilityState === 'visible') resume(output.context);
  });
}

/** To be called in the tap itself; true once it can be heard. */
export async function unlockSound(): Promise<boolean> {
  if (!supported) return false;
  output ??= open();
  if (output.context.state !== 'running') await resume(output.context);
  return output.context.state === 'running';
}

function open(): Output {
  // Without it the silent switch of an iPhone silences an alarm too.
  const { audioSession } = navigator as Navigator & { audioSession?: { type: string } };
  if (audioSession) audioSession.type = 'playback';
  const context = new AudioContext();
  context.addEventListener('statechange', () => {
    state.value = context.state === 'running' ? 'ready' : 'locked';
  });
  // Full scale already; its make-up gain lifts the overtones, which carry over a fan.
  const louder = context.createDynamicsCompressor();
  louder.threshold.value = -24;
  louder.ratio.value = 12;
  louder.attack.value = 0.002;
  louder.connect(context.destination);
  return { context, into: louder };
}

// Refused until a touch, and then some browsers never answer: the state says so, and the next touch tries again.
const resume = (context: AudioContext): Promise<unknown> =>
  Promise.race([context.resume().catch(() => {}), new Promise((late) => setTimeout(late, 500))]);

/** Plays beeps one after the other, at the loudest a page can; says nothing while it is locked. */
export function play(beeps: readonly Beep[]): void {
  if (output?.context.state !== 'running') return;
  for (const earlier of sounding) earlier.stop();
  let at = output.context.currentTime + 0.02;
  sounding = beeps.map((beep) => {
    const oscillator = tone(output as Output, beep, at);
    at += beep.lasts + beep.rest;
    return oscillator;
  });
}

/** s */
export const lengthOf = (beeps: readonly Beep[]): number =>
  beeps.reduce((sum, { lasts, rest }) => sum + lasts + rest, 0);

function tone({ context, into }: Output, { pitch, lasts }: Beep, at: number): OscillatorNode {
  const oscillator = context.createOscillator();
  const gain = context.createGain();
  // Square carries over a fan better than sine; its edges are ramped so that it does not click.
  oscillator.type = 'square';
  oscillator.frequency.value = pitch;
  gain.gain.setValueAtTime(0, at);
  gain.gain.linearRampToValueAtTime(1, at + 0.01);
  gain.gain.setValueAtTime(1, at + lasts - 0.02);
  gain.gain.linearRampToValueAtTime(0, at + lasts);
  oscillator.connect(gain).connect(into);
  oscillator.start(at);
  oscillator.stop(at + lasts);
  return oscillator;
}
