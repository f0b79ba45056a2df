import { placeIn } from './beam-grid.ts';
import { drawn, type Line, lineOf } from './beam-line.ts';
import { type Frame, factored, frameOf, solveBand, timesPart } from './pressed-frame.ts';
import { MOST_RESERVE } from './reserve.ts';
import type { Beam, BeamSolution } from './types.ts';

/** Cells to the length of the tube, at least. */
const PARTS = 48;

/** With the axial force at work on the bent tube. */
export type PressedBeam = {
  /** How many times all axial loads may grow until the tube buckles as a column; 1e6 when nothing presses it. */
  readonly bucklingReserve: number;
  /** Largest moment with the axial force over that without; 1 when nothing bends it. */
  readonly amplification: number;
  /** Nothing when the axial loads are past what buckles it. */
  readonly solution: BeamSolution | undefined;
};

/**
 * A tube under bending and axial force together: what pressing adds to deflection and moment, and the load at which it
 * buckles as a column, for any taper, any supports and axial loads anywhere.
 *
 * @param stations as for `beamLine`
 * @param supports as for `beamLine`; one of them must hold it along its axis
 * @param loads as for `beamLine`
 * @param loadFactor greater than 0
 * @returns see `PressedBeam`; the shear of `solution` is across the tube as it lay before it bent
 * @throws RangeError naming the field
 *
 * Formula: (K - P G) w = f in 48 or more beam elements with exact flexibility; buckling where K - r P G first loses its
 * definiteness, by Sturm's count and halving. Reserve good to 1e-6, moments to 1e-5.
 * Source: Timoshenko and Gere, Theory of Elastic Stability, beam-columns; Bathe, Finite Element Procedures, Sturm's
 * sequence check.
 *
 * @example
 * // A pole of 2 kN m2 and 3 m, free to turn at both ends, pressed with 1 kN. What reserve against buckling?
 * beamColumn({
 *   stations: [{ at: 0, ei: 2000, gj: 800 }, { at: 3, ei: 2000, gj: 800 }],
 *   supports: [{ kind: 'rest', at: 0, holdsAxial: true }, { kind: 'rest', at: 3 }],
 *   loads: [{ kind: 'axial', at: 3, force: -1000 }],
 *   loadFactor: 1,
 * }).bucklingReserve
 * // => 2.193
 */
export function beamColumn(input: Beam): PressedBeam {
  const line = lineOf(input, PARTS);
  if (line.axial.after.every((force) => force === 0)) {
    return { bucklingReserve: MOST_RESERVE, amplification: 1, solution: drawn(line) };
  }
  const frame = frameOf(line.grid, line.contacts, line.axial.after);
  const bucklingReserve = bucklingOf(frame, line.axial.after);
  if (bucklingReserve <= 1) return { bucklingReserve, amplification: MOST_RESERVE, solution: undefined };
  const pressed = pressedLine(line, frame);
  const largest = ({ bent }: Line) =>
    Math.max(...bent.moment.map(Math.abs), ...bent.momentAfter.map(Math.abs));
  const alone = largest(line);
  const amplification = alone > 0 ? largest(pressed) / alone : 1;
  return { bucklingReserve, amplification, solution: drawn(pressed) };
}

/** The least factor on the axial loads at which the tube buckles. */
function bucklingOf(frame: Frame, axial: Float64Array): number {
  if (!axial.some((force) => force < 0)) return MOST_RESERVE;
  const buckled = (times: number) => factored(frame, times).negative > 0;
  let [low, high] = [1, 1];
  if (buckled(1)) while (buckled(low) && low > 1 / MOST_RESERVE) [low, high] = [low / 2, low];
  else while (!buckled(high) && high < MOST_RESERVE) [low, high] = [high, high * 2];
  if (high >= MOST_RESERVE) return MOST_RESERVE;
  while (high - low > 1e-7 * high) {
    const middle = (low + high) / 2;
    if (buckled(middle)) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/** What the axial force adds to a line: it acts on the tube as it lies, and again on what that adds. */
function pressedLine(line: Line, frame: Frame): Line {
  const { bent } = line;
  const lies = new Float64Array(frame.size);
  for (let i = 0; 2 * i < frame.size; i += 1) {
    lies[2 * i] = bent.deflection[i] ?? 0;
    lies[2 * i + 1] = bent.slope[i] ?? 0;
  }
  const push = new Float64Array(frame.size);
  frame.press.forEach((press, e) => {
    timesPart(press, lies, 2 * e).forEach((value, j) => {
      push[2 * e + j] = (push[2 * e + j] ?? 0) + value;
    });
  });
  for (let row = 0; row < frame.size; row += 1) if (frame.held[row] === 1) push[row] = 0;
  const more = solveBand(factored(frame, 1).band, push);
  const all = lies.map((value, k) => value + (more[k] ?? 0));
  const own = { ...bent, moment: bent.moment.slice(), momentAfter: bent.momentAfter.slice() };
  const shear = { shear: bent.shear.slice(), shearAfter: bent.shearAfter.slice() };
  const given = new Float64Array(frame.size);
  frame.stiff.forEach((stiff, e) => {
    const pressing = timesPart(frame.press[e], all, 2 * e);
    const ends = timesPart(stiff, more, 2 * e).map((value, j) => value - (pressing[j] ?? 0));
    ends.forEach((value, j) => {
      given[2 * e + j] = (given[2 * e + j] ?? 0) + value;
    });
    const [side = 0, near = 0, , far = 0] = ends;
    own.momentAfter[e] = (own.momentAfter[e] ?? 0) - near;
    own.moment[e + 1] = (own.moment[e + 1] ?? 0) + far;
    shear.shearAfter[e] = (shear.shearAfter[e] ?? 0) + side;
    shear.shear[e + 1] = (shear.shear[e + 1] ?? 0) + side;
  });
  const deflection = bent.deflection.map((_, i) => all[2 * i] ?? 0);
  const slope = bent.slope.map((_, i) => all[2 * i + 1] ?? 0);
  const reactions = line.reactions.map((reaction, k) => {
    const i = placeIn(line.grid.x, reaction.at);
    const turned = line.contacts[k]?.clamp ? (given[2 * i + 1] ?? 0) : 0;
    return { ...reaction, force: reaction.force + (given[2 * i] ?? 0), moment: reaction.moment + turned };
  });
  return { ...line, reactions, bent: { ...own, ...shear, deflection, slope } };
}
