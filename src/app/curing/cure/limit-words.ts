import type { Broken } from '#app/curing/oven/oven-limits.ts';
import { show } from '#app/state/show.ts';
import { formatDuration } from '#shared/units/time.ts';
import type { Fit } from './what-fits.ts';

/** '6 °C over what the release film bears' */
export const brokenTitle = ({ by, limit }: Broken): string =>
  `${show(by, 'temperatureDifference', by < 1 ? 1 : 0)} over what the ${limit.name} bears`;

/** 'Good to 82 °C, less 4 °C kept as margin' */
function bears({ limit, margin }: Broken): string {
  const good = `the ${limit.name} is good to ${show(limit.highest, 'temperature', 0)}`;
  const size = show(Math.abs(margin), 'temperatureDifference');
  if (Math.abs(margin) < 0.05) return good;
  return margin > 0
    ? `${good}, less ${size} kept for sensor and oven`
    : `${good}, and its sensor reads ${size} high`;
}

const into = (seconds: number) => (seconds <= 0 ? 'the start' : formatDuration(seconds));

/** What is gone over, by how much, for how long and when. */
export function brokenSays(broken: Broken): string {
  const { hottest, seconds, from, until, limit } = broken;
  const when = `Over it for ${formatDuration(seconds)}, from ${into(from)} to ${into(until)} into the cure.`;
  const counts = limit.name === 'release film' ? ' Those minutes count: heat makes film brittle.' : '';
  return `The schedule goes to ${show(hottest, 'temperature', 0)}, ${bears(broken)}. ${when}${counts}`;
}

/** '82 °C for 4 h 10' */
export const fitWords = ({ at, lasts }: Fit): string =>
  `${show(at, 'temperature', 0)} for ${formatDuration(lasts)}`;

/** What to do where nothing fits. */
export const nothingFits = (broken: readonly Broken[]): string =>
  `No cure under that is short enough: change the ${broken.map((b) => b.limit.name).join(', the ')}, or cure with another resin.`;
