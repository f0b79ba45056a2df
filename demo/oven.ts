import { interpolateProfile } from '#calc';
import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import { minute } from './shop-time.ts';

/** The air follows its thermostat in so many minutes: common practice, no source. */
const airFollows = 2.5;

/** Thin aluminum tubes follow the air in 5 to 9 minutes: common practice, no source. */
export const lags = { Boom: 7, 'Upper mast': 7.5, Sprit: 5.5, 'Lower mast': 9 };

export interface Runaway {
  /** The thermostat sticks and is found, minutes after the oven was lit. */
  from: number;
  found: number;
  /** K a minute while it is stuck */
  climbs: number;
}

export interface Heat {
  /** K, one a minute from the moment it was lit */
  air: number[];
  parts: number[][];
}

/**
 * What sensors in a shop-made oven would read: air behind the thermostat, each tube behind the air by its own
 * time constant. First-order lags, a minute a step.
 */
export function heat(
  schedule: CureSchedule,
  lasts: number,
  lags: readonly number[],
  runaway?: Runaway,
): Heat {
  const wanted = thermostat(schedule, runaway);
  let air = schedule.start;
  const parts = lags.map(() => schedule.start);
  const out: Heat = { air: [], parts: lags.map(() => []) };
  for (let t = 0; t <= lasts; t++) {
    air += (wanted(t, air) - air) / airFollows;
    out.air.push(air);
    lags.forEach((lag, i) => {
      const part = parts[i] ?? schedule.start;
      parts[i] = part + (air - part) / lag;
      out.parts[i]?.push(parts[i] ?? part);
    });
  }
  return out;
}

/** K above what was asked for: a shop-made thermostat swings a degree each way. */
const swing = (t: number) => [0, 0.8, 1.2, 0.6, -0.3, -0.9, -0.7, 0.1][t % 8] ?? 0;

function thermostat({ start, stages }: CureSchedule, runaway?: Runaway) {
  const asked = (t: number) => interpolateProfile({ start, stages, time: t * 60 }) + swing(t);
  return (t: number, air: number) => {
    if (!runaway || t < runaway.from || t > runaway.found + 12) return asked(t);
    // Door open until it is back where it should be.
    return t > runaway.found ? asked(t) - 4 : Math.max(air, asked(t)) + runaway.climbs * airFollows;
  };
}

/** Minutes after it was lit when the coldest tube reaches the band. */
export function holdBegins({ parts }: Heat, schedule: CureSchedule): number {
  const first = parts.map((series) => series.findIndex((kelvin) => kelvin >= schedule.holdLow));
  return Math.max(...first);
}

/** When it is turned off, minutes after it was lit: two minutes after the hold is over. */
export function turnedOff(warmth: Heat, schedule: CureSchedule): number {
  const hold = schedule.stages.find((s) => s.kind === 'hold');
  return holdBegins(warmth, schedule) + Math.round((hold?.lasts ?? 0) / 60) + 2;
}

export const msAfter = (lit: number, minutes: number) => lit + minutes * minute;
