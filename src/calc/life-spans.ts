import { finite, listOf, notNegative, positive } from './check.ts';

/** From then on, until the next span begins, the resin would last so long from fresh. */
export interface LifeSpan {
  /** s after first contact */
  from: number;
  /** s */
  life: number;
}

/**
 * Share of a resin's life that is gone, where its life changed on the way: warmer, colder, out of the cup.
 *
 * @param spans in order of `from`, s, the first at 0 or later; `life` s, greater than 0
 * @param until s, at least 0
 * @returns share, 1 when used up
 * @throws RangeError naming the field that is missing, out of range or out of order
 *
 * Formula: integral of dt / life.
 * Source: Miner's sum, as for pot life in common practice, no source.
 *
 * @example
 * // 10 min in a cup of 40 min, then 20 min on a film of 80. How much is gone?
 * lifeUsed({ spans: [{ from: 0, life: 2400 }, { from: 600, life: 4800 }], until: 1800 })
 * // => 0.5
 */
export function lifeUsed(input: { spans: readonly LifeSpan[]; until: number }): number {
  const until = notNegative(input, 'until', 's');
  let used = 0;
  eachSpan(input.spans, (from, to, life) => {
    used += Math.max(0, Math.min(to, until) - from) / life;
  });
  return finite(used, 'until');
}

/**
 * When a resin is used up, where its life changed on the way.
 *
 * @param spans as in `lifeUsed`; the last one goes on
 * @returns s after first contact
 * @throws RangeError naming the field that is missing, out of range or out of order
 *
 * Formula: where the integral of dt / life reaches 1.
 * Source: as `lifeUsed`.
 *
 * @example
 * // 10 min in a cup of 40 min, then on a film of 80. When is it used up?
 * lifeEnd({ spans: [{ from: 0, life: 2400 }, { from: 600, life: 4800 }] })
 * // => 4200
 */
export function lifeEnd(input: { spans: readonly LifeSpan[] }): number {
  let left = 1;
  let end: number | undefined;
  eachSpan(input.spans, (from, to, life) => {
    if (end !== undefined) return;
    const share = (to - from) / life;
    if (share >= left) end = from + left * life;
    else left -= share;
  });
  return finite(end ?? Number.POSITIVE_INFINITY, 'life');
}

function eachSpan(spans: readonly LifeSpan[], span: (from: number, to: number, life: number) => void): void {
  const read = listOf('spans', spans, 1).map((each, index) => ({
    from: notNegative(each, 'from', 's', `spans[${index}].`),
    life: positive(each, 'life', 's', `spans[${index}].`),
  }));
  read.forEach(({ from, life }, index) => {
    const to = read[index + 1]?.from ?? Number.POSITIVE_INFINITY;
    if (to < from) throw new RangeError(`spans[${index + 1}].from must not be before the one before it`);
    span(from, to, life);
  });
}
