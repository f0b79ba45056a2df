import { type Signal, signal } from '@preact/signals';
import { allGood, type QuantityInput, quantityInput } from '#app/parts/quantity-input.ts';
import type { LoadRecord } from '#shared/record/load-plan.ts';
import { onTube, placeInput } from './place-input.ts';

/** What the builder picks; an even spread is one that is alike at both ends. */
export type LoadKind = 'point' | 'even' | 'growing' | 'table' | 'torque' | 'spreadTorque' | 'axial';

export interface StationDraft {
  key: number;
  at: QuantityInput;
  value: QuantityInput;
}

export interface LoadDraft {
  kind: Signal<LoadKind>;
  at: QuantityInput;
  from: QuantityInput;
  to: QuantityInput;
  /** Of a force: against the way the main load goes; along the tube: it presses. */
  against: Signal<boolean>;
  force: QuantityInput;
  even: QuantityInput;
  atFrom: QuantityInput;
  atTo: QuantityInput;
  torque: QuantityInput;
  stations: Signal<readonly StationDraft[]>;
  before: LoadRecord | undefined;
}

/** Beyond these nobody loads a hand-laid tube, N, N/m, N m */
const most = { force: 1e6, running: 1e6, torque: 1e6 };

const running = (si: number | undefined) =>
  quantityInput(si, { quantity: 'lineLoad', min: -most.running, max: most.running });

let stationsMade = 0;

export function stationDraft(
  at: number | undefined,
  value: number | undefined,
  length: number,
): StationDraft {
  stationsMade += 1;
  return { key: stationsMade, at: placeInput(at, length), value: running(value) };
}

function kindOfDraft(load: LoadRecord | undefined): LoadKind {
  if (load?.kind === 'spread') return load.atFrom === load.atTo ? 'even' : 'growing';
  return load?.kind ?? 'point';
}

function torqueOf(load: LoadRecord | undefined): number | undefined {
  if (load?.kind === 'spreadTorque') return load.torque * (load.to - load.from);
  return load?.kind === 'torque' ? load.torque : undefined;
}

export function loadDraft(load: LoadRecord | undefined, length: number): LoadDraft {
  const force = load?.kind === 'point' || load?.kind === 'axial' ? load.force : undefined;
  const spread = load?.kind === 'spread' ? load : undefined;
  const reach = spread ?? (load?.kind === 'spreadTorque' ? load : undefined);
  const table = load?.kind === 'table' ? load.stations : undefined;
  return {
    kind: signal(kindOfDraft(load)),
    at: placeInput(load && 'at' in load ? load.at : length, length),
    from: placeInput(reach?.from ?? 0, length),
    to: placeInput(reach?.to ?? length, length),
    against: signal((force ?? 0) < 0),
    force: quantityInput(force === undefined ? undefined : Math.abs(force), {
      quantity: 'force',
      positive: true,
      max: most.force,
    }),
    even: running(spread?.atFrom),
    atFrom: running(spread?.atFrom),
    atTo: running(spread?.atTo),
    torque: quantityInput(torqueOf(load), { quantity: 'moment', min: -most.torque, max: most.torque }),
    stations: signal(
      table?.map((s) => stationDraft(s.at, s.value, length)) ?? [
        stationDraft(0, undefined, length),
        stationDraft(length, undefined, length),
      ],
    ),
    before: load,
  };
}

/** The fields that this kind of load is told by. */
export function loadFields(draft: LoadDraft): QuantityInput[] {
  const { at, from, to, force, even, atFrom, atTo, torque } = draft;
  switch (draft.kind.value) {
    case 'point':
    case 'axial':
      return [force, at];
    case 'torque':
      return [torque, at];
    case 'spreadTorque':
      return [torque, from, to];
    case 'even':
      return [even, from, to];
    case 'growing':
      return [from, atFrom, to, atTo];
    case 'table':
      return draft.stations.value.flatMap((s) => [s.at, s.value]);
  }
}

/** The figures of a load as they were written; those nobody touched as they were before. */
function typedOf(draft: LoadDraft): string {
  const figures = loadFields(draft).filter((f) => f.quantity !== 'length');
  return figures.map((f) => f.typed.value).join(', ');
}

function shapeOf(draft: LoadDraft, tube: number, id: string): LoadRecord | undefined {
  const si = ({ si: { value } }: QuantityInput) => value;
  const [at, from, to] = [draft.at, draft.from, draft.to].map((input) => {
    const m = input.si.value;
    return m === undefined ? undefined : onTube(m, tube);
  });
  const force = si(draft.force);
  const torque = si(draft.torque);
  switch (draft.kind.value) {
    case 'point':
    case 'axial':
      if (at === undefined || force === undefined) return undefined;
      return {
        id,
        kind: draft.kind.value === 'axial' ? 'axial' : 'point',
        at,
        force: draft.against.value ? -force : force,
      };
    case 'torque':
      return at === undefined || torque === undefined ? undefined : { id, kind: 'torque', at, torque };
    case 'table':
      return tableOf(draft, tube, id);
    default:
      break;
  }
  if (from === undefined || to === undefined || to <= from) return undefined;
  if (draft.kind.value === 'spreadTorque') {
    return torque === undefined
      ? undefined
      : { id, kind: 'spreadTorque', from, to, torque: torque / (to - from) };
  }
  const isEven = draft.kind.value === 'even';
  const atFrom = si(isEven ? draft.even : draft.atFrom);
  const atTo = si(isEven ? draft.even : draft.atTo);
  return atFrom === undefined || atTo === undefined
    ? undefined
    : { id, kind: 'spread', from, to, atFrom, atTo };
}

function tableOf(draft: LoadDraft, tube: number, id: string): LoadRecord | undefined {
  const stations = draft.stations.value.flatMap((s) => {
    const [at, value] = [s.at.si.value, s.value.si.value];
    return at === undefined || value === undefined ? [] : [{ at: onTube(at, tube), value }];
  });
  if (stations.length < draft.stations.value.length || stations.length < 2) return undefined;
  return { id, kind: 'table', stations: stations.sort((a, b) => a.at - b.at) };
}

/** The load as typed; undefined while a figure is missing. */
export function loadOfDraft(draft: LoadDraft, id: string, tube: number): LoadRecord | undefined {
  const load = shapeOf(draft, tube, id);
  if (!load) return undefined;
  const { before } = draft;
  const { typed: _, ...same } = before ?? {};
  // Nobody wrote its figures anew: what was written then still stands.
  if (before?.typed && JSON.stringify(same) === JSON.stringify(load)) return before;
  return { ...load, typed: typedOf(draft).slice(0, 200) };
}

/** What is wrong with the places of a spread load, said under them. */
export function reachProblem(draft: LoadDraft): string | undefined {
  if (!['even', 'growing', 'spreadTorque'].includes(draft.kind.value)) return undefined;
  const [from, to] = [draft.from.si.value, draft.to.si.value];
  if (from === undefined || to === undefined || to > from) return undefined;
  return 'It ends where it begins, or before: let it end farther from end 0 than it begins.';
}

/** Shows what is wrong; true when it can be saved. */
export const loadIsGood = (draft: LoadDraft): boolean =>
  allGood(loadFields(draft)) && reachProblem(draft) === undefined;
