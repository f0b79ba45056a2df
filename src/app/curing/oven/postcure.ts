import { glassTransitionReached } from '#calc';
import type { Tube } from './oven-cure.ts';
import type { OvenResults } from './oven-results.ts';

/** A free-standing postcure warms this fast, K/s: 10 to 20 K an hour (common practice, no source). */
export const postcureRate = { from: 10 / 3600, to: 20 / 3600 };
/** And stays this near above the glass transition it has, K (common practice, no source). */
const aboveTransition = 10;
/** A thermometer of whole degrees, read every quarter of an hour, may say so much more. */
const readingSlack = 1.1;

export interface Postcure {
  /** Glass transition by now, and no hotter than this now, K */
  softens: number;
  noHotter: number;
  /** It was read over what was allowed just before, K */
  tooHot?: number;
  /** Steepest read, when it is over 20 K an hour, K/s */
  tooSteep?: number;
}

const hottestOf = (readings: readonly { temperature: number }[]): number =>
  readings.reduce((most, r) => Math.max(most, r.temperature), 0);

/** Undefined for a first cure. */
export function postcureOf(
  tubes: readonly Tube[],
  { part, series, steepest }: OvenResults,
): Postcure | undefined {
  const cured = tubes.filter(({ earlier }) => earlier && earlier.length > 0);
  if (cured.length === 0) return undefined;
  const softensAfter = (here: number) =>
    Math.min(
      ...cured.map(({ earlier, resin }) =>
        glassTransitionReached({
          hottest: Math.max(here, hottestOf((earlier ?? []).flat())),
          own: resin.glassTransition,
        }),
      ),
    );
  const last = series.hottest.at(-1)?.temperature ?? 0;
  const before = softensAfter(hottestOf(part.slice(0, -1))) + aboveTransition;
  const softens = softensAfter(hottestOf(part));
  return {
    softens,
    noHotter: softens + aboveTransition,
    ...(last > before && { tooHot: last }),
    ...(steepest > readingSlack * postcureRate.to && { tooSteep: steepest }),
  };
}
