import type { LoadCase, LoadPlan, LoadRecord, Support } from '#shared/record/load-plan.ts';
import { loadTitle, place, stretch, theLoad } from './load-words.ts';
import { reachOf } from './of-plan.ts';

/** What keeps a tube from being checked: one sentence, and where in its loads it is put right. */
export interface Trouble {
  says: string;
  /** Path after '/plan/:doc/loads' */
  to: string;
  /** What pressing it leads to. */
  act: string;
  /** Nothing is wrong: it was not written yet. */
  missing?: true;
}

/** Rounding of a length shown in inches, m */
const hair = 1e-5;
/** Supports nearer than this share of the length are one to the computation. */
const samePlace = 1e-4;

const off = (from: number, to: number, length: number) => from < -hair || to > length + hair;

const heldBy = { builtIn: 'built-in place', rests: 'rest', sleeve: 'sleeve' } as const;

const contactsOf = (support: Support): number[] =>
  support.holds === 'sleeve' ? [support.at, support.at + support.length] : [support.at];

function supportTroubles(supports: readonly Support[], length: number): Trouble[] {
  const [first] = supports;
  if (!first) {
    return [
      {
        says: 'Nothing holds the tube yet: say where it is built in, or where it rests.',
        to: '/support/new',
        act: 'Say how it is held',
        missing: true,
      },
    ];
  }
  const found: Trouble[] = [];
  for (const support of supports) {
    const [from = 0, to = from] = contactsOf(support);
    if (!off(from, to, length)) continue;
    const where = support.holds === 'sleeve' ? stretch(from, to) : place(from);
    found.push({
      says: `The ${heldBy[support.holds]} at ${where} is off the tube, which ends at ${place(length)}: move it onto the tube.`,
      to: `/support/${support.id}`,
      act: 'Put the support on the tube',
    });
  }
  const places = supports
    .flatMap((s) => contactsOf(s).map((at) => ({ at, id: s.id })))
    .sort((a, b) => a.at - b.at);
  const double = places.find(
    (p, i) => p.at - (places[i - 1]?.at ?? Number.NEGATIVE_INFINITY) < samePlace * length,
  );
  if (double) {
    found.push({
      says: `Two supports lie on each other at ${place(double.at)}: move one of them, or take it out.`,
      to: `/support/${double.id}`,
      act: 'Move the support',
    });
  }
  if (supports.length === 1 && first.holds === 'rests') {
    found.push({
      says: `It rests at ${place(first.at)} alone and would swing: add a second place, or build it in.`,
      to: '/support/new',
      act: 'Hold it at a second place',
    });
  }
  return found;
}

const twistOf = (load: LoadRecord): number => {
  if (load.kind === 'torque') return load.torque;
  return load.kind === 'spreadTorque' ? load.torque * (load.to - load.from) : 0;
};
const axialOf = (load: LoadRecord): number => (load.kind === 'axial' ? load.force : 0);

/** Whether forces of which some are not 0 leave something over that a support has to take. */
function leftOver(forces: readonly number[]): boolean {
  const most = Math.max(0, ...forces.map(Math.abs));
  return Math.abs(forces.reduce((sum, f) => sum + f, 0)) > 1e-9 * most;
}

/** A case twists or slides the tube, and nothing of what holds it takes that. */
function heldTroubles({ name, loads }: LoadCase, supports: readonly Support[]): Trouble[] {
  if (supports.length === 0) return [];
  const twist = supports.some((s) => s.holds === 'builtIn' || s.holdsTwist);
  const axial = supports.filter((s) => s.holds === 'builtIn' || s.holdsAxial);
  const to = `/support/${supports[0]?.id}`;
  const found: Trouble[] = [];
  if (!twist && leftOver(loads.map(twistOf))) {
    found.push({
      says: `${name} twists the tube and no support keeps it from turning: build it in, or say which one holds it.`,
      to,
      act: 'Say what keeps it from turning',
    });
  }
  const pulled = loads.some((l) => axialOf(l) !== 0);
  if (axial.length === 0 && leftOver(loads.map(axialOf))) {
    found.push({
      says: `${name} pulls along the tube and no support keeps it from sliding: build it in, or say which one holds it.`,
      to,
      act: 'Say what keeps it from sliding',
    });
  }
  if (axial.length > 1 && pulled) {
    found.push({
      says: `${name} pulls along the tube and more than one support would hold that: let all but one slide.`,
      to: `/support/${axial[1]?.id}`,
      act: 'Let one support slide',
    });
  }
  return found;
}

function loadTroubles(one: LoadCase, length: number): Trouble[] {
  return one.loads.flatMap((load) => {
    const { from, to } = reachOf(load);
    const at = { to: `/case/${one.id}/${load.id}`, act: 'Put the load right' };
    if (off(from, to, length)) {
      return [
        {
          ...at,
          says: `${theLoad(load)} in ${one.name} is off the tube, which ends at ${place(length)}: move it, or make the tube longer.`,
        },
      ];
    }
    const order = load.kind === 'table' ? load.stations.map((s) => s.at) : [from, to];
    const back = order.some((m, i) => m < (order[i - 1] ?? Number.NEGATIVE_INFINITY));
    const nowhere = from === to && !('at' in load);
    if (!back && !nowhere) return [];
    return [
      {
        ...at,
        says: back
          ? `${loadTitle(load)} in ${one.name} ends before it begins: write its places from end 0 on.`
          : `${loadTitle(load)} in ${one.name} is spread over no length: let it end farther on.`,
      },
    ];
  });
}

function caseTroubles(one: LoadCase, length: number, supports: readonly Support[]): Trouble[] {
  const found = [...loadTroubles(one, length), ...heldTroubles(one, supports)];
  if (one.loads.length === 0) {
    found.push({
      says: `Nothing pulls on it in ${one.name} yet: add a load, or take the case out.`,
      to: `/case/${one.id}/new`,
      act: `Add a load to ${one.name}`,
      missing: true,
    });
  }
  if (one.loadFactor === undefined) {
    found.push({
      says: `${one.name} has no load factor: write how many times these loads it may meet, 1 for no more than them.`,
      to: `/case/${one.id}`,
      act: `Set the load factor of ${one.name}`,
      missing: true,
    });
  }
  return found;
}

/** All that keeps the loads of a plan from being checked, first things first; empty when nothing does. */
export function loadTroublesOf(loads: LoadPlan, length: number): Trouble[] {
  const found = supportTroubles(loads.supports, length);
  if (loads.cases.length === 0) {
    found.push({
      says: 'Nothing pulls on it yet: add the first load.',
      to: '/case/first/new',
      act: 'Say what pulls on it',
      missing: true,
    });
  }
  found.push(...loads.cases.flatMap((one) => caseTroubles(one, length, loads.supports)));
  if (loads.safetyFactor === undefined || loads.safetyFactor < 1) {
    found.push({
      says:
        loads.safetyFactor === undefined
          ? 'There is no safety factor: nothing is checked until you set it.'
          : 'A safety factor below 1 counts on a tube that has failed: write 1 or more.',
      to: '/asked',
      act: 'Set the safety factor',
      ...(loads.safetyFactor === undefined && { missing: true }),
    });
  }
  return found;
}
