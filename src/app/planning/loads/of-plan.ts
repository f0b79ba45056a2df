import type { BeamLoad, LoadCase as CalcCase, Support as CalcSupport } from '#calc';
import type { LoadCase, LoadPlan, LoadRecord, Support } from '#shared/record/load-plan.ts';

/** A support of the record as the computation takes it. */
export function supportOf(support: Support): CalcSupport {
  if (support.holds === 'builtIn') return { kind: 'clamp', at: support.at };
  const { at, holdsTwist, holdsAxial } = support;
  if (support.holds === 'rests') return { kind: 'rest', at, holdsTwist, holdsAxial };
  return { kind: 'sleeve', from: at, to: at + support.length, holdsTwist, holdsAxial };
}

export const supportsOfPlan = ({ supports }: LoadPlan): CalcSupport[] => supports.map(supportOf);

/** A load of the record as the computation takes it. */
export function beamLoad(load: LoadRecord): BeamLoad {
  switch (load.kind) {
    case 'point':
    case 'axial':
      return { kind: load.kind, at: load.at, force: load.force };
    case 'torque':
      return { kind: 'torque', at: load.at, torque: load.torque };
    case 'table':
      return { kind: 'spread', stations: load.stations.map(({ at, value }) => ({ at, value })) };
    case 'spread':
      return {
        kind: 'spread',
        stations: [
          { at: load.from, value: load.atFrom },
          { at: load.to, value: load.atTo },
        ],
      };
    case 'spreadTorque':
      return {
        kind: 'spreadTorque',
        stations: [load.from, load.to].map((at) => ({ at, value: load.torque })),
      };
  }
}

/** A case of the record; undefined while the builder has set no load factor: there is none to fall back on. */
export function caseOf({ loads, loadFactor }: LoadCase): CalcCase | undefined {
  return loadFactor === undefined ? undefined : { loads: loads.map(beamLoad), loadFactor };
}

/** All cases, in the order of the plan; undefined while one has no load factor, or there is none. */
export function casesOfPlan({ cases }: LoadPlan): CalcCase[] | undefined {
  const all = cases.flatMap((one) => caseOf(one) ?? []);
  return all.length > 0 && all.length === cases.length ? all : undefined;
}

/** Where a load begins and ends along the tube, m. */
export function reachOf(load: LoadRecord): { from: number; to: number } {
  switch (load.kind) {
    case 'spread':
    case 'spreadTorque':
      return { from: load.from, to: load.to };
    case 'table': {
      const places = load.stations.map(({ at }) => at);
      return { from: Math.min(...places), to: Math.max(...places) };
    }
    default:
      return { from: load.at, to: load.at };
  }
}
