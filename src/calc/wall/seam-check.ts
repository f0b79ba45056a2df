import { numberIn, positive } from '../check.ts';

/** Farther off than this, wrong width, wrong mandrel or slack is likelier than thick or thin plies. */
const LOOK = 0.005;
/** A ply thickness read with more error than this says nothing. */
const WORTH = 0.1;

/**
 * What the place where the free edge landed says. A gross check; ply thickness follows from it only
 * when there are enough wraps to show it.
 *
 * @param edgeOff how far past the plan's mark it landed, m of arc; below 0 when it fell short
 * @param wraps greater than 0
 * @param plyThickness in the plan, m, greater than 0
 * @param readingError of the edge's place, m, greater than 0
 * @returns `look` true when it is more than 5 mm off; `error` of a ply thickness read from it, as a share;
 *   `plyThickness` in m only when that is under a tenth and what it says can be
 * @throws RangeError naming the field
 *
 * Formula: the edge moves by pi N^2 dt; error e/(pi N^2 t).
 * Source: differential of w = pi N (D + N t) at the same width.
 *
 * @example
 * // 8 wraps of 0.3 mm landed 4 mm short, read to 2 mm. What does it say?
 * seamCheck({ edgeOff: -0.004, wraps: 8, plyThickness: 0.0003, readingError: 0.002 })
 * // => { look: false, error: 0.03316, plyThickness: 0.0003199 }
 */
export function seamCheck(input: {
  edgeOff: number;
  wraps: number;
  plyThickness: number;
  readingError: number;
}): { look: boolean; error: number; plyThickness?: number } {
  const edgeOff = numberIn(input, 'edgeOff', 'm', { from: -1000, to: 1000 });
  const wraps = numberIn(input, 'wraps', 'wraps', { from: 1e-3, to: 1e4 });
  const plan = numberIn(input, 'plyThickness', 'm', { from: 1e-6, to: 1 });
  const readingError = numberIn(input, 'readingError', 'm', { above: 0, to: 1000 });
  const lever = Math.PI * wraps * wraps;
  const look = Math.abs(edgeOff) > LOOK;
  const error = readingError / (lever * plan);
  const read = plan - edgeOff / lever;
  return error < WORTH && read > 0 ? { look, error, plyThickness: read } : { look, error };
}

/**
 * Cured ply thickness from the diameters of the finished tube.
 *
 * @param outsideDiameter m, greater than innerDiameter
 * @param innerDiameter m, greater than 0: the mandrel with its release on
 * @param wraps of all pieces together, greater than 0
 * @returns m
 * @throws RangeError naming the field
 *
 * Formula: (Do - Di) / (2 N).
 * Source: the wall is N plies.
 *
 * @example
 * // 40.6 mm outside on a 38.1 mm mandrel after 4 wraps. How thick is a ply?
 * plyThicknessFromDiameter({ outsideDiameter: 0.0406, innerDiameter: 0.0381, wraps: 4 })
 * // => 0.0003125
 */
export function plyThicknessFromDiameter(input: {
  outsideDiameter: number;
  innerDiameter: number;
  wraps: number;
}): number {
  const innerDiameter = positive(input, 'innerDiameter', 'm');
  const outside = numberIn(input, 'outsideDiameter', 'm', { above: innerDiameter });
  return (outside - innerDiameter) / (2 * numberIn(input, 'wraps', 'wraps', { from: 1e-3 }));
}
