import { numberIn, positive } from '../check.ts';
import { stationsIn } from './beam-grid.ts';
import { beamLine } from './beam-line.ts';
import type { BeamSolution, BeamStation, Support } from './types.ts';

/** Standard gravity, m/s2, by definition (3rd CGPM 1901). */
const GRAVITY = 9.80665;

export type ProofLoad = {
  /** To hang, kg and N */
  readonly mass: number;
  readonly force: number;
  /** Where the moments of test and design are matched: the design's largest, m and N m */
  readonly matchedAt: number;
  readonly moment: number;
  /** Most that the test bends anywhere for what design times proof factor does there; above 1 it proves too much. */
  readonly mostOver: number;
  readonly mostOverAt: number;
  /** Of the tube under the weight: where it should lie. */
  readonly solution: BeamSolution;
};

/**
 * The weight to hang on a tube so that it bends, where it is to bear most, as its loads would.
 *
 * @param stations as for `beamLine`
 * @param supports of the test, as for `beamLine`
 * @param hangAt m, on the tube
 * @param design what `beamLine` or `beamColumn` gives for the loads it is made for
 * @param proofFactor of the design's largest moment, above 0 to 3
 * @returns see `ProofLoad`; deflections are positive downward, the tube's own weight left out: measure from where it
 *   lies before the weight is on
 * @throws RangeError naming the field; `hangAt` where a weight would not bend the tube's most loaded place
 *
 * Formula: F = proofFactor |M design| / |M of 1 N| at the design's largest moment.
 *
 * @example
 * // A pole for 100 N at its tip, 3 m out. How much to hang at 2.5 m to prove it once?
 * proofLoad({
 *   stations: [{ at: 0, ei: 2000, gj: 800 }, { at: 3, ei: 2000, gj: 800 }],
 *   supports: [{ kind: 'clamp', at: 0 }],
 *   hangAt: 2.5,
 *   design: beamLine({
 *     stations: [{ at: 0, ei: 2000, gj: 800 }, { at: 3, ei: 2000, gj: 800 }],
 *     supports: [{ kind: 'clamp', at: 0 }],
 *     loads: [{ kind: 'point', at: 3, force: 100 }],
 *     loadFactor: 1,
 *   }),
 *   proofFactor: 1,
 * }).mass
 * // => 12.24
 */
export function proofLoad(input: {
  stations: readonly BeamStation[];
  supports: readonly Support[];
  hangAt: number;
  design: BeamSolution;
  proofFactor: number;
}): ProofLoad {
  const { stations, supports, design } = input;
  if (!(design?.moment instanceof Float64Array)) throw new RangeError('design must be what beamLine gives');
  const proofFactor = numberIn(input, 'proofFactor', '', { above: 0, to: 3 });
  const { at: places } = stationsIn(input);
  const [first, last] = [places[0] ?? 0, places.at(-1) ?? 0];
  const hangAt = numberIn(input, 'hangAt', 'm', { from: first, to: last });
  const hung = (force: number) =>
    beamLine({ stations, supports, loads: [{ kind: 'point', at: hangAt, force }], loadFactor: 1 });
  const one = hung(1);
  let most = 0;
  for (let i = 0; i < design.at.length; i += 1) {
    if (Math.abs(design.moment[i] ?? 0) > Math.abs(design.moment[most] ?? 0)) most = i;
  }
  const matchedAt = design.at[most] ?? 0;
  const moment = proofFactor * Math.abs(design.moment[most] ?? 0);
  const each = Math.abs(momentAt(one, matchedAt));
  if (!(each > 1e-6 * (last - first))) {
    throw new RangeError(
      `hangAt must bend the tube at ${matchedAt} m, where it is to bear most, got ${hangAt}`,
    );
  }
  const force = moment / each;
  let [mostOver, mostOverAt] = [0, matchedAt];
  one.at.forEach((at, i) => {
    const wanted = proofFactor * Math.abs(momentAt(design, at));
    const has = Math.abs(one.moment[i] ?? 0) * force;
    // Near a hinge both are next to nothing, and their ratio says nothing.
    const over = has > 0.02 * moment ? has / Math.max(wanted, 0.02 * moment) : 0;
    if (over > mostOver) [mostOver, mostOverAt] = [over, at];
  });
  const solution = hung(positive({ force }, 'force', 'N'));
  return { mass: force / GRAVITY, force, matchedAt, moment, mostOver, mostOverAt, solution };
}

/** Larger of the moments on both sides of a place, straight between places. */
function momentAt({ at, moment }: BeamSolution, place: number): number {
  let found = 0;
  for (let i = 0; i + 1 < at.length; i += 1) {
    const [a, b] = [at[i] ?? 0, at[i + 1] ?? 0];
    if (place < a - 1e-9 || place > b + 1e-9) continue;
    const share = b > a ? Math.min(1, Math.max(0, (place - a) / (b - a))) : 0;
    const here = (moment[i] ?? 0) + share * ((moment[i + 1] ?? 0) - (moment[i] ?? 0));
    if (Math.abs(here) > Math.abs(found)) found = here;
  }
  return found;
}
