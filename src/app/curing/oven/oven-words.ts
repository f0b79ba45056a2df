import { show } from '#app/state/show.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
import { formatClockTime, formatDuration } from '#shared/units/time.ts';
import type { Cure } from './oven-cure.ts';
import type { OvenNow } from './oven-now.ts';
import type { OvenResults } from './oven-results.ts';
import { litOf } from './oven-series.ts';
import type { OverLimit } from './over-limits.ts';

/** What the oven is doing: the title of its screen. */
export function ovenTitle({ phase, at, tooHot, unreadSince }: OvenNow): string {
  const degrees = show(at, 'temperature', 0);
  if (unreadSince !== undefined) return `Unread since ${formatClockTime(unreadSince)}`;
  if (tooHot !== undefined) return `Too hot: ${show(tooHot, 'temperature', 0)} read`;
  switch (phase) {
    case 'warming':
      return `Warming to ${degrees}`;
    case 'holding':
      return `Holding at ${degrees}`;
    case 'held':
      return `Hold done at ${degrees}`;
    case 'cooling':
      return `Cooling to ${degrees}`;
    case 'off':
      return 'Off';
    case 'out':
      return 'Out of the oven';
  }
}

/** 'Oven load 12 · 2 tubes · 1 h 52 in' */
export function ovenKicker(state: OvenState, now: number): string {
  const tubes = new Set(state.builds.map((b) => b.build)).size;
  const of = `Oven load ${state.header.number} · ${tubes} ${tubes === 1 ? 'tube' : 'tubes'}`;
  if (state.outAt !== undefined) return `${of} · out at ${formatClockTime(state.outAt)}`;
  if (state.offAt !== undefined) return `${of} · off since ${formatClockTime(state.offAt)}`;
  return `${of} · ${formatDuration(Math.max(0, now - litOf(state)) / 1000)} in`;
}

/** Above this no bare hand takes a mandrel out, K (common practice, no source). */
const hotToTouch = 313.15;

/** Why it is hardly meant to come out now: 'still 66 °C'; undefined once it was read cool after it went off. */
export function stillHot({ offAt }: OvenState, { series }: OvenResults): string | undefined {
  const last = series.hottest.at(-1);
  if (!last) return 'never read';
  const at = series.from + last.time * 1000;
  const degrees = show(last.temperature, 'temperature', 0);
  if (offAt !== undefined && at < offAt) return `last read ${degrees} at ${formatClockTime(at)}`;
  return last.temperature > hotToTouch ? `still ${degrees}` : undefined;
}

/** '2.1°/min': degrees of the builder's own unit */
export function rateFigure(kelvinPerSecond: number): string {
  return show(kelvinPerSecond, 'rampRate', 1).replace(/\s°[CF]/, '°');
}

export const sinceLit = (from: number, seconds: number): string => formatClockTime(from + seconds * 1000);

/** '6 °C over for 12 min, 10:40 AM to 10:55 AM' */
export function overSentence(over: OverLimit, from: number): string {
  const { limit, highest, lasts, first, last, isNow, counted } = over;
  const by = show(over.by, 'temperatureDifference');
  const time = lasts > 0 ? ` for ${formatDuration(lasts)}` : '';
  const [begin, end] = [sinceLit(from, first), sinceLit(from, last)];
  const when = isNow ? `since ${begin}, and still is` : begin === end ? `at ${begin}` : `${begin} to ${end}`;
  return `Good to ${show(limit.highest, 'temperature')}, ${by} over${time}: ${when}. ${counted ? 'With the errors of sensor and oven up to' : 'Highest read'} ${show(highest.temperature, 'temperature')} at ${sinceLit(from, highest.time)}.`;
}

/** Why there is no cure time used. */
export function noCureSentence(why: Extract<Cure, { known: false }>['why']): string {
  switch (why) {
    case 'noCurePoints':
      return 'The resin’s data sheet entry gives no cure time, so none can be counted as used.';
    case 'curePointsDisagree':
      return 'The cure times of the resin contradict each other: hotter must take less time. Correct them on the shelf for the next tube.';
    case 'noTube':
      return 'The tube of this oven load is not on this phone, so its cure time cannot be counted.';
  }
}
