import { finite } from '../check.ts';
import { bentOn } from './beam-bend.ts';
import { type Grid, gridOf, stationsIn } from './beam-grid.ts';
import { type Contact, contactsIn, loadsIn, placesOf } from './beam-input.ts';
import { axialOn, twistedOn } from './beam-twist.ts';
import type { Beam, BeamSolution, Reaction } from './types.ts';

/**
 * Shear, moment, torque, axial force, deflection, slope and twist along a tube that is held and loaded, small
 * deflections, axial force without its effect on bending (`beamColumn` has that). Any number of supports.
 *
 * @param stations `at` in m, two or more in order, the first and last are the tube's ends; `ei` and `gj` in N m2,
 *   greater than 0; two at one place are a step. Between them fourth roots run straight, exact for a cone, or bow as
 *   far as both neighbors agree: twelve stations of a thin even wall that tapers to half are good to 1e-5
 * @param supports at least a clamp, a sleeve or two rests, each at its own place
 * @param loads on the tube, signs as in `BeamLoad`; none is no error
 * @param loadFactor greater than 0; all loads are taken times this
 * @returns see `BeamSolution`
 * @throws RangeError naming the field; `supports` when the tube could swing, turn or slide free
 *
 * Formula: EI w'' = M, M'' = q, GJ twist' = T; reactions from the deflections that each contact allows (force method).
 * Diagrams are exact; flexibility is integrated by Gauss and Legendre, four points to every 15 % of change of its
 * fourth root: deflections good to 1e-8 for the flexibility as told.
 * Source: Gere and Timoshenko, Mechanics of Materials, deflections of beams and statically indeterminate beams.
 *
 * @example
 * // A pole of 2 kN m2 held at its foot, 100 N at its tip 3 m out. How far does the tip go?
 * beamLine({
 *   stations: [{ at: 0, ei: 2000, gj: 800 }, { at: 3, ei: 2000, gj: 800 }],
 *   supports: [{ kind: 'clamp', at: 0 }],
 *   loads: [{ kind: 'point', at: 3, force: 100 }],
 *   loadFactor: 1,
 * }).deflection[1]
 * // => 0.45
 */
export function beamLine(input: Beam): BeamSolution {
  return drawn(lineOf(input));
}

/** All that is known of a beam at the places of its grid. */
export type Line = {
  readonly grid: Grid;
  readonly contacts: readonly Contact[];
  readonly bent: ReturnType<typeof bentOn>['bent'];
  readonly twisted: ReturnType<typeof twistedOn>;
  readonly axial: ReturnType<typeof axialOn>;
  readonly reactions: readonly Reaction[];
};

/** The beam on its grid, cut into so many parts at the least. */
export function lineOf(input: Beam, parts = 0): Line {
  const stations = stationsIn(input);
  const [first, last] = [stations.at[0] ?? 0, stations.at.at(-1) ?? 0];
  const loads = loadsIn(input, first, last);
  const contacts = contactsIn(input, first, last);
  const grid = gridOf(stations, placesOf(contacts, loads), parts > 0 ? (last - first) / parts : 0);
  const { bent, forces, moments } = bentOn(grid, contacts, loads);
  const twisted = twistedOn(grid, contacts, loads);
  const axial = axialOn(grid, contacts, loads);
  finite(Math.max(...bent.deflection.map(Math.abs), ...twisted.twist.map(Math.abs)), 'ei');
  const reactions = contacts.map(({ at }, k) => ({
    at,
    force: forces[k] ?? 0,
    moment: moments[k] ?? 0,
    torque: twisted.torques[k] ?? 0,
    axial: axial.forces[k] ?? 0,
  }));
  return { grid, contacts, bent, twisted, axial, reactions };
}

type Jump = readonly [before: Float64Array, after: Float64Array];

/** The diagrams as a pen draws them: from nothing, and at each place twice where one of them jumps. */
export function drawn({ grid: { x }, bent, twisted, axial, reactions }: Line): BeamSolution {
  const jumps: readonly Jump[] = [
    [bent.shear, bent.shearAfter],
    [bent.moment, bent.momentAfter],
    [twisted.before, twisted.after],
    [axial.before, axial.after],
  ];
  const last = x.length - 1;
  const noise = jumps.map(
    ([before, after]) => 1e-12 * Math.max(...before.map(Math.abs), ...after.map(Math.abs)),
  );
  const pick: { i: number; side: 0 | 1 }[] = [];
  for (let i = 0; i <= last; i += 1) {
    const jumped = jumps.some(
      ([before, after], k) => Math.abs((after[i] ?? 0) - (before[i] ?? 0)) > (noise[k] ?? 0),
    );
    if (i === last || (jumped && i > 0)) pick.push({ i, side: 0 });
    if (i < last) pick.push({ i, side: 1 });
  }
  const told = (series: Float64Array) => Float64Array.from(pick, ({ i }) => series[i] ?? 0);
  const sided = (jump: Jump) => Float64Array.from(pick, ({ i, side }) => jump[side][i] ?? 0);
  return {
    at: told(x),
    shear: sided([bent.shear, bent.shearAfter]),
    moment: sided([bent.moment, bent.momentAfter]),
    torque: sided([twisted.before, twisted.after]),
    axial: sided([axial.before, axial.after]),
    deflection: told(bent.deflection),
    slope: told(bent.slope),
    twist: told(twisted.twist),
    reactions,
  };
}
