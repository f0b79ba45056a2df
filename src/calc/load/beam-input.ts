import { type Bounds, listOf, numberIn, positive } from '../check.ts';
import { SAME_PLACE } from './beam-grid.ts';
import type { Beam, BeamLoad, LoadStation, Support } from './types.ts';

/** A place where the tube is held from going aside, and what else is held there. */
export type Contact = {
  readonly at: number;
  readonly clamp: boolean;
  readonly twist: boolean;
  readonly axial: boolean;
};

/** At one place, already times the load factor. */
export type PointLoad = { at: number; force: number; moment: number; torque: number; axial: number };

/** Straight between stations; `torque` for one that twists. */
export type SpreadLoad = { readonly torque: boolean; readonly stations: readonly LoadStation[] };

export type Loads = { readonly points: readonly PointLoad[]; readonly spreads: readonly SpreadLoad[] };

/**
 * The supports as contacts, in the order given.
 *
 * @throws RangeError naming the field; `supports` when the tube could swing or slide free of them
 */
export function contactsIn({ supports }: Beam, first: number, last: number): Contact[] {
  const bounds = { from: first - SAME_PLACE, to: last + SAME_PLACE };
  const contacts = listOf('supports', supports, 1).flatMap((support, k) =>
    contactsOf(support, bounds, `supports[${k}].`),
  );
  const order = contacts.map(({ at }) => at).sort((a, b) => a - b);
  order.forEach((at, k) => {
    const before = order[k - 1];
    if (before !== undefined && at - before < 1e-4 * (last - first)) {
      throw new RangeError(`supports must each have their own place, got two at ${at} m`);
    }
  });
  if (contacts.length < 2 && !contacts.some(({ clamp }) => clamp)) {
    throw new RangeError(
      'supports must hold the tube: a clamp, a sleeve or rests at two places, got one rest',
    );
  }
  return contacts;
}

function contactsOf(support: Support, bounds: Bounds, path: string): Contact[] {
  if (support?.kind === 'clamp') {
    const at = numberIn(support, 'at', 'm', bounds, path);
    return [{ at, clamp: true, twist: true, axial: true }];
  }
  const { holdsTwist: twist = false, holdsAxial: axial = false } = support ?? {};
  if (support?.kind === 'rest') {
    return [{ at: numberIn(support, 'at', 'm', bounds, path), clamp: false, twist, axial }];
  }
  if (support?.kind === 'sleeve') {
    const from = numberIn(support, 'from', 'm', bounds, path);
    const to = numberIn(support, 'to', 'm', { ...bounds, above: from }, path);
    return [
      { at: from, clamp: false, twist, axial },
      { at: to, clamp: false, twist: false, axial: false },
    ];
  }
  throw new RangeError(`${path}kind must be clamp, rest or sleeve`);
}

/**
 * The loads, each times the load factor.
 *
 * @throws RangeError naming the field; what lies off the tube is refused
 */
export function loadsIn(beam: Beam, first: number, last: number): Loads {
  const factor = positive(beam, 'loadFactor', '');
  const points: PointLoad[] = [];
  const spreads: SpreadLoad[] = [];
  listOf('loads', beam.loads, 0).forEach((load, k) => {
    const path = `loads[${k}].`;
    if (load?.kind === 'spread' || load?.kind === 'spreadTorque') {
      spreads.push({
        torque: load.kind === 'spreadTorque',
        stations: spreadIn(load.stations, first, last, factor, path),
      });
    } else points.push(pointIn(load, first, last, factor, path));
  });
  return { points, spreads };
}

function pointIn(
  load: Exclude<BeamLoad, { stations: unknown }>,
  first: number,
  last: number,
  factor: number,
  path: string,
): PointLoad {
  const none = { force: 0, moment: 0, torque: 0, axial: 0 };
  const at = () => numberIn(load, 'at', 'm', { from: first - SAME_PLACE, to: last + SAME_PLACE }, path);
  switch (load?.kind) {
    case 'point':
      return { ...none, at: at(), force: numberIn(load, 'force', 'N', {}, path) * factor };
    case 'moment':
      return { ...none, at: at(), moment: numberIn(load, 'moment', 'N m', {}, path) * factor };
    case 'torque':
      return { ...none, at: at(), torque: numberIn(load, 'torque', 'N m', {}, path) * factor };
    case 'axial':
      return { ...none, at: at(), axial: numberIn(load, 'force', 'N', {}, path) * factor };
    default:
      throw new RangeError(`${path}kind must be point, moment, spread, torque, spreadTorque or axial`);
  }
}

function spreadIn(
  given: readonly LoadStation[],
  first: number,
  last: number,
  factor: number,
  path: string,
): LoadStation[] {
  let before = first - SAME_PLACE;
  return listOf(`${path}stations`, given, 2).map((station, k) => {
    const place = `${path}stations[${k}].`;
    const at = numberIn(station, 'at', 'm', { from: before, to: last + SAME_PLACE }, place);
    before = at;
    return { at, value: numberIn(station, 'value', 'N/m', {}, place) * factor };
  });
}

/** Every place where something acts or holds. */
export function placesOf(contacts: readonly Contact[], { points, spreads }: Loads): number[] {
  return [
    ...contacts.map(({ at }) => at),
    ...points.map(({ at }) => at),
    ...spreads.flatMap(({ stations }) => stations.map(({ at }) => at)),
  ];
}
