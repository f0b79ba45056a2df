import type { Beep } from '#app/platform/sound.ts';
import type { AlarmLevel } from './alarm-plan.ts';

/** What an alarm sounds and feels like, so that a builder knows it with the eyes shut. */
export interface AlarmSignal {
  name: string;
  /** In words, for who tries it out. */
  like: string;
  beeps: readonly Beep[];
  /** Alternately on and off, ms */
  shakes: number[];
}

/** Hz; inside the 500 to 1500 Hz where a danger signal has its main part (ISO 7731, from memory). */
const low = 660;
const high = 990;

export const alarmSignals: Record<AlarmLevel, AlarmSignal> = {
  warning: {
    name: 'Nearly',
    like: 'a rising pair, two short buzzes',
    beeps: [
      { pitch: low, lasts: 0.18, rest: 0.08 },
      { pitch: high, lasts: 0.18, rest: 0 },
    ],
    shakes: [150, 100, 150],
  },
  due: {
    name: 'Due now',
    like: 'three even beeps, three buzzes',
    beeps: Array.from({ length: 3 }, () => ({ pitch: high, lasts: 0.3, rest: 0.15 })),
    shakes: [500, 150, 500, 150, 500],
  },
  over: {
    name: 'Over',
    like: 'a long two-tone call, two long buzzes',
    beeps: Array.from({ length: 6 }, (_, i) => ({ pitch: i % 2 ? low : high, lasts: 0.35, rest: 0.02 })),
    shakes: [1200, 200, 1200],
  },
};

/** From the mildest. */
export const alarmLevels: readonly AlarmLevel[] = ['warning', 'due', 'over'];
