import { followingReadings, holdTime, mandrelTimeConstant, type Reading } from '#calc';
import { mandrelHeat } from '#shared/reference/mandrel-heat.ts';
import type { Tube } from './oven-cure.ts';

/** After so many time constants a mandrel is within 5 % of the air (common practice). */
const timeConstants = 3;

/** How a part that nobody read follows the air. */
export interface Lag {
  /** s, of the slowest mandrel */
  timeConstant: number;
  /** The hold counts from here on, s from lighting; undefined before the air was in the band */
  countsFrom?: number;
}

/** s; undefined where a mandrel is unknown, or of something that heat does not simply warm */
export function timeConstantOf(tubes: readonly Tube[]): number | undefined {
  const all = tubes.map(({ mandrel }) => {
    const heat = mandrel && mandrelHeat[mandrel.material];
    return heat && mandrelTimeConstant({ diameter: mandrel.diameter, wall: mandrel.wall, ...heat });
  });
  const known = all.filter((t) => t !== undefined);
  return known.length > 0 && known.length === all.length ? Math.max(...known) : undefined;
}

/** When the readings are first at a level, s, straight between them */
export function firstAt(readings: readonly Reading[], level: number): number | undefined {
  let before: Reading | undefined;
  for (const reading of readings) {
    if (reading.temperature >= level) {
      if (!before) return reading.time;
      const part = (level - before.temperature) / (reading.temperature - before.temperature);
      return before.time + part * (reading.time - before.time);
    }
    before = reading;
  }
  return undefined;
}

export function lagOf(tubes: readonly Tube[], air: readonly Reading[], low: number): Lag | undefined {
  const timeConstant = timeConstantOf(tubes);
  if (timeConstant === undefined) return undefined;
  const inBand = firstAt(air, low);
  return { timeConstant, ...(inBand !== undefined && { countsFrom: inBand + timeConstants * timeConstant }) };
}

/** What the part was at, by the air; it went in no warmer than the shop. */
export const partByAir = (air: readonly Reading[], { timeConstant }: Lag, shop: number): Reading[] =>
  followingReadings({ readings: air, timeConstant, start: Math.min(shop, air[0]?.temperature ?? shop) });

/** s of hold in a run of readings, none of it before the part has followed */
export function heldIn(readings: readonly Reading[], low: number, lag: Lag | undefined): number {
  const all = holdTime({ readings, low });
  if (!lag) return all;
  const from = lag.countsFrom ?? Number.POSITIVE_INFINITY;
  const before = readings.filter((r) => r.time <= from);
  const [last, next] = [before.at(-1), readings[before.length]];
  if (last && next) {
    const part = (from - last.time) / (next.time - last.time);
    before.push({ time: from, temperature: last.temperature + part * (next.temperature - last.temperature) });
  }
  return all - holdTime({ readings: before, low });
}

/** s that a hold has still to wait for the part, from then on */
export function lagLeft(lag: Lag | undefined, at: number): number {
  if (!lag) return 0;
  return lag.countsFrom === undefined ? timeConstants * lag.timeConstant : Math.max(0, lag.countsFrom - at);
}
