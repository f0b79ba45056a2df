import { limitBreaks, peak, type Reading } from '#calc';
import type { Channel, OvenLimit } from '#shared/record/oven-load.ts';
import type { Margins } from './oven-limits.ts';
import { extremeOf, type OvenSeries, type Series } from './oven-series.ts';

export interface OverLimit {
  limit: OvenLimit;
  /** Judged by the air, since no part sensor was read. */
  byAir: boolean;
  /** As read, or in the hottest corner where errors of sensor and oven are known */
  highest: Reading;
  /** K over it at the most */
  by: number;
  /** An error of the sensor or of the oven is counted in. */
  counted: boolean;
  /** s above it, straight between readings */
  lasts: number;
  /** First and last reading over it, s */
  first: number;
  last: number;
  /** The newest reading is over it still. */
  isNow: boolean;
}

/** What is to be kept from each limit, K: what its sensors read too low, and how uneven the oven is. */
export function marginsOf(
  channels: readonly Pick<Channel, 'sees' | 'offset'>[],
  unevenness = 0,
): Required<Margins> {
  const of = (sees: Channel['sees']): number | undefined => {
    const [first, ...others] = channels.filter((c) => c.sees === sees).map((c) => c.offset ?? 0);
    return first === undefined ? undefined : unevenness - others.reduce((a, b) => Math.min(a, b), first);
  };
  const air = of('air') ?? unevenness;
  return { air, part: of('part') ?? air, element: of('element') ?? unevenness };
}

/** Readings less what their sensor reads too high. */
function trueOf(series: readonly Series[]): Series[] {
  return series.map((s) => {
    const offset = s.channel.offset ?? 0;
    if (offset === 0) return s;
    return { ...s, readings: s.readings.map((r) => ({ ...r, temperature: r.temperature - offset })) };
  });
}

interface Felt {
  readings: readonly Reading[];
  byAir: boolean;
  offset: boolean;
}

function overOf(limit: OvenLimit, { readings, byAir, offset }: Felt, margin: number): OverLimit[] {
  if (readings.length === 0) return [];
  const bound = limit.highest - margin;
  const { over, seconds } = limitBreaks({ readings, highest: limit.highest, margin });
  const above = readings.filter((r) => r.temperature > bound);
  const [first, last] = [above[0], above.at(-1)];
  if (!first || !last) return [];
  const { time, temperature } = peak({ readings });
  return [
    {
      limit,
      byAir,
      highest: { time, temperature: temperature + margin },
      by: over,
      counted: margin !== 0 || offset,
      lasts: seconds,
      first: first.time,
      last: last.time,
      isNow: (readings.at(-1)?.temperature ?? 0) > bound,
    },
  ];
}

/** Limits that readings went over, each judged where it is felt; what feels the air feels a bare element too. */
export function overLimits(limits: readonly OvenLimit[], series: OvenSeries, unevenness = 0): OverLimit[] {
  const felt = (of: readonly Series[], byAir = false): Felt => ({
    readings: extremeOf(trueOf(of), 'hottest'),
    byAir,
    offset: of.some((s) => (s.channel.offset ?? 0) !== 0),
  });
  const air = felt(series.air);
  const element = felt(series.elements);
  const part = felt(series.judged, series.by === 'air');
  return limits.flatMap((limit) => {
    if (limit.sees === 'part') return overOf(limit, part, unevenness);
    const atElement = overOf({ ...limit, sees: 'element' }, element, unevenness);
    return limit.sees === 'air' ? [...overOf(limit, air, unevenness), ...atElement] : atElement;
  });
}
