import { finite, listOf, notNegative, numberIn, positive } from './check.ts';
import { tapeAdvance, tapeLayers } from './tape.ts';

/** Outside diameter at m along the tube. */
export type OutsideAt = { readonly at: number; readonly diameter: number };

/**
 * Tape wound from end to end of a tube that may taper, as often as there are passes. Each pass lies on the
 * one before it.
 *
 * @param outside at least two places, `at` in m from low to high, `diameter` in m, greater than 0; straight
 *   between them. The same `at` twice is a step
 * @param width of the tape, m, greater than 0
 * @param thickness of the tape, m, at least 0
 * @param overlapFraction share of the width that lies on the turn before, at least 0, at most 0.99
 * @param passes a whole number, at least 1
 * @returns `turns` of all passes, `length` of tape in m
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: integral of sqrt(1 + r'^2 + (2 pi r/p)^2) along the tube, a helix of even advance on a cone; exact
 * for straight stretches.
 * Source: arc length in cylinder coordinates, any textbook of calculus.
 *
 * @example
 * // 25.4 mm tape, half over, once along a cone from 40 to 20 mm, 2 m: how much?
 * windTape({
 *   outside: [{ at: 0, diameter: 0.04 }, { at: 2, diameter: 0.02 }],
 *   width: 0.0254, thickness: 0, overlapFraction: 0.5, passes: 1,
 * })
 * // => { turns: 157.5, length: 14.98 }
 */
export function windTape(input: {
  outside: readonly OutsideAt[];
  width: number;
  thickness: number;
  overlapFraction: number;
  passes: number;
}): { turns: number; length: number } {
  const layers = tapeLayers(input);
  const advance = tapeAdvance(input);
  const { passes } = input;
  const outside = placesIn(input.outside);
  // The middle of a pass lies half its own layers above what it is wound on.
  const perPass = (notNegative(input, 'thickness', 'm') * (layers.least + layers.most)) / (2 * passes);
  let length = 0;
  for (let pass = 0; pass < passes; pass += 1) {
    length += alongOnce(outside, advance, (2 * pass + 1) * perPass);
  }
  const long = (outside.at(-1)?.at ?? 0) - (outside[0]?.at ?? 0);
  return {
    turns: finite((passes * long) / advance, 'width'),
    length: finite(length, 'width'),
  };
}

function placesIn(given: readonly OutsideAt[]): OutsideAt[] {
  let last = Number.NEGATIVE_INFINITY;
  return listOf('outside', given, 2).map((place, index) => {
    const path = `outside[${index}].`;
    const at = numberIn(place, 'at', 'm', Number.isFinite(last) ? { from: last } : {}, path);
    last = at;
    return { at, diameter: positive(place, 'diameter', 'm', path) };
  });
}

function alongOnce(outside: readonly OutsideAt[], advance: number, thicker: number): number {
  const turn = Math.PI / advance;
  let length = 0;
  let before = outside[0];
  for (const place of outside) {
    const long = place.at - (before?.at ?? 0);
    if (before && long > 0) {
      const slant = Math.hypot(1, (place.diameter - before.diameter) / 2 / long);
      length += long * meanRoot(slant, (before.diameter + thicker) * turn, (place.diameter + thicker) * turn);
    }
    before = place;
  }
  return length;
}

/** Mean of sqrt(c^2 + u^2) for u from one value to another. */
function meanRoot(c: number, from: number, to: number): number {
  const middle = Math.hypot(c, (from + to) / 2);
  // Simpson's rule: within 1e-12 here, where the closed form would subtract two near equals.
  if (Math.abs(to - from) < 1e-3 * (from + to)) {
    return (Math.hypot(c, from) + 4 * middle + Math.hypot(c, to)) / 6;
  }
  const area = (u: number) => (u * Math.hypot(c, u) + c * c * Math.asinh(u / c)) / 2;
  return (area(to) - area(from)) / (to - from);
}
