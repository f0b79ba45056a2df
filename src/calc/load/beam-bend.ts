import { type Grid, placeIn, SAME_PLACE } from './beam-grid.ts';
import type { Contact, Loads, SpreadLoad } from './beam-input.ts';
import { solveDense } from './matrix.ts';

/** At every place of a grid: just before and just after what acts there, and how the tube lies. */
export type Bent = {
  readonly shear: Float64Array;
  readonly moment: Float64Array;
  readonly shearAfter: Float64Array;
  readonly momentAfter: Float64Array;
  readonly deflection: Float64Array;
  readonly slope: Float64Array;
};

/** What acts on the tube: at places, and at both ends of each cell. */
export type Acting = {
  readonly force: Float64Array;
  readonly moment: Float64Array;
  readonly from: Float64Array;
  readonly to: Float64Array;
};

/** The loads that bend, put on a grid. */
export function actingOn({ x, cells }: Grid, { points, spreads }: Loads): Acting {
  const acting = nothingOn(x.length);
  for (const { at, force, moment } of points) {
    const i = placeIn(x, at);
    acting.force[i] = (acting.force[i] ?? 0) + force;
    acting.moment[i] = (acting.moment[i] ?? 0) + moment;
  }
  for (const spread of spreads) if (!spread.torque) spreadOver(x, cells.length, spread, acting);
  return acting;
}

/** Adds what is spread, at both ends of each cell that it lies on. */
export function spreadOver(
  x: Float64Array,
  cells: number,
  { stations }: SpreadLoad,
  into: { readonly from: Float64Array; readonly to: Float64Array },
): void {
  for (let k = 0; k + 1 < stations.length; k += 1) {
    const [a, b] = [stations[k], stations[k + 1]];
    if (!a || !b || b.at - a.at <= SAME_PLACE) continue;
    const rise = (b.value - a.value) / (b.at - a.at);
    for (let i = placeIn(x, a.at); i < cells && (x[i] ?? 0) < b.at - SAME_PLACE; i += 1) {
      into.from[i] = (into.from[i] ?? 0) + a.value + rise * ((x[i] ?? 0) - a.at);
      into.to[i] = (into.to[i] ?? 0) + a.value + rise * ((x[i + 1] ?? 0) - a.at);
    }
  }
}

export function nothingOn(size: number): Acting {
  const none = () => new Float64Array(size);
  return { force: none(), moment: none(), from: none(), to: none() };
}

/** Shear, moment, slope and deflection from the near end on, which itself lies level and at 0. */
export function carriedOn({ x, cells }: Grid, { force, moment: couple, from, to }: Acting): Bent {
  const none = () => new Float64Array(x.length);
  const bent = {
    shear: none(),
    moment: none(),
    shearAfter: none(),
    momentAfter: none(),
    deflection: none(),
    slope: none(),
  };
  let [v, m, slope, w] = [0, 0, 0, 0];
  for (let i = 0; i < x.length; i += 1) {
    bent.shear[i] = v;
    bent.moment[i] = m;
    v += force[i] ?? 0;
    m -= couple[i] ?? 0;
    bent.shearAfter[i] = v;
    bent.momentAfter[i] = m;
    bent.slope[i] = slope;
    bent.deflection[i] = w;
    const cell = cells[i];
    if (!cell) break;
    const { long, s, bend } = cell;
    const even = (from[i] ?? 0) / 2;
    const rise = ((to[i] ?? 0) - (from[i] ?? 0)) / (6 * long);
    let [turned, aside] = [0, 0];
    for (let p = 0; p < s.length; p += 1) {
      const at = s[p] ?? 0;
      const curved = (m + at * (v + at * (even + at * rise))) * (bend[p] ?? 0);
      turned += curved;
      aside += curved * (long - at);
    }
    w += slope * long + aside;
    slope += turned;
    m += long * (v + long * (even + long * rise));
    v += (long * ((from[i] ?? 0) + (to[i] ?? 0))) / 2;
  }
  return bent;
}

/** What the contacts must give so that the tube lies on them and is at rest. */
export function reactionsOf(grid: Grid, contacts: readonly Contact[], acting: Acting) {
  const { x } = grid;
  const long = (x.at(-1) ?? 0) - (x[0] ?? 0);
  const stiff = long / grid.cells.reduce((sum, { bend }) => sum + bend.reduce((a, b) => a + b, 0), 0);
  const unit = { force: stiff / long ** 3, moment: stiff / long ** 2 };
  const nodes = contacts.map(({ at }) => placeIn(x, at));
  const clamps = contacts.flatMap(({ clamp }, k) => (clamp ? [nodes[k] ?? 0] : []));
  const own = carriedOn(grid, acting);
  const units = [
    ...nodes.map((node) => unitAt(grid, node, unit.force, 'force')),
    ...clamps.map((node) => unitAt(grid, node, unit.moment, 'moment')),
  ];
  const near = x[0] ?? 0;
  const end = x.length - 1;
  const rows: number[][] = [];
  const right0: number[] = [];
  const equation = (pick: (bent: Bent) => number, level: number, tilt: number) => {
    rows.push([...units.map(pick), level, tilt]);
    right0.push(-pick(own));
  };
  for (const node of nodes) {
    equation((bent) => bent.deflection[node] ?? 0, 1, ((x[node] ?? 0) - near) / long);
  }
  for (const node of clamps) equation((bent) => (bent.slope[node] ?? 0) * long, 0, 1);
  equation((bent) => (bent.shearAfter[end] ?? 0) / unit.force, 0, 0);
  equation((bent) => (bent.momentAfter[end] ?? 0) / unit.moment, 0, 0);
  const found = solveDense(rows, right0);
  if (!found) throw new RangeError('supports must hold the tube, got some that let it swing');
  return {
    nodes,
    clamps,
    forces: nodes.map((_, k) => (found[k] ?? 0) * unit.force),
    moments: clamps.map((_, k) => (found[nodes.length + k] ?? 0) * unit.moment),
    level: found[units.length] ?? 0,
    tilt: (found[units.length + 1] ?? 0) / long,
  };
}

function unitAt(grid: Grid, node: number, size: number, what: 'force' | 'moment'): Bent {
  const acting = nothingOn(grid.x.length);
  acting[what][node] = size;
  return carriedOn(grid, acting);
}

/** The tube under its loads, lying on its contacts; reactions beside each. */
export function bentOn(grid: Grid, contacts: readonly Contact[], loads: Loads) {
  const acting = actingOn(grid, loads);
  const found = reactionsOf(grid, contacts, acting);
  found.nodes.forEach((node, k) => {
    acting.force[node] = (acting.force[node] ?? 0) + (found.forces[k] ?? 0);
  });
  found.clamps.forEach((node, k) => {
    acting.moment[node] = (acting.moment[node] ?? 0) + (found.moments[k] ?? 0);
  });
  const bent = carriedOn(grid, acting);
  const near = grid.x[0] ?? 0;
  for (let i = 0; i < grid.x.length; i += 1) {
    bent.slope[i] = (bent.slope[i] ?? 0) + found.tilt;
    bent.deflection[i] = (bent.deflection[i] ?? 0) + found.level + found.tilt * ((grid.x[i] ?? 0) - near);
  }
  // What is held is held: rounding of the sums is not to show as a movement of a support.
  for (const node of found.nodes) bent.deflection[node] = 0;
  for (const node of found.clamps) bent.slope[node] = 0;
  const moments = contacts.map((_, k) => {
    const c = found.clamps.indexOf(found.nodes[k] ?? -1);
    return c < 0 ? 0 : (found.moments[c] ?? 0);
  });
  return { bent, forces: found.forces, moments };
}
