import { spreadOver } from './beam-bend.ts';
import { type Grid, placeIn } from './beam-grid.ts';
import type { Contact, Loads } from './beam-input.ts';
import { solveDense } from './matrix.ts';

type Twisted = { before: Float64Array; after: Float64Array; twist: Float64Array };

/** Torque and twist from the near end on, where it is not yet turned. */
function twistedBy({ x, cells }: Grid, torque: Float64Array, from: Float64Array, to: Float64Array): Twisted {
  const none = () => new Float64Array(x.length);
  const twisted = { before: none(), after: none(), twist: none() };
  let [held, twist] = [0, 0];
  for (let i = 0; i < x.length; i += 1) {
    twisted.before[i] = held;
    held -= torque[i] ?? 0;
    twisted.after[i] = held;
    twisted.twist[i] = twist;
    const cell = cells[i];
    if (!cell) break;
    const { long, s, turn } = cell;
    const [a, b] = [from[i] ?? 0, to[i] ?? 0];
    const rise = (b - a) / (2 * long);
    for (let p = 0; p < s.length; p += 1) {
      const at = s[p] ?? 0;
      twist += (held - at * (a + at * rise)) * (turn[p] ?? 0);
    }
    held -= (long * (a + b)) / 2;
  }
  return twisted;
}

/** Torque and twist along the tube, with what each contact gives; `supports` must hold what twists. */
export function twistedOn(grid: Grid, contacts: readonly Contact[], { points, spreads }: Loads) {
  const { x, cells } = grid;
  const torque = new Float64Array(x.length);
  const [from, to] = [new Float64Array(x.length), new Float64Array(x.length)];
  for (const point of points)
    torque[placeIn(x, point.at)] = (torque[placeIn(x, point.at)] ?? 0) + point.torque;
  for (const spread of spreads) if (spread.torque) spreadOver(x, cells.length, spread, { from, to });
  const own = twistedBy(grid, torque, from, to);
  const holders = contacts.filter(({ twist }) => twist).map(({ at }) => placeIn(x, at));
  const end = x.length - 1;
  const left = own.after[end] ?? 0;
  if (holders.length === 0) {
    const most = Math.max(...own.after.map(Math.abs), ...own.before.map(Math.abs));
    if (Math.abs(left) > 1e-9 * most) {
      throw new RangeError(
        'supports must hold the twist: a clamp, or a rest or sleeve with holdsTwist, got none',
      );
    }
    return { ...own, torques: contacts.map(() => 0) };
  }
  const none = new Float64Array(x.length);
  const units = holders.map((node) => {
    const one = new Float64Array(x.length);
    one[node] = 1;
    return twistedBy(grid, one, none, none);
  });
  // Scaled by the flexibility of the whole tube, so that both kinds of row are of one size.
  const soft = cells.reduce((sum, { turn }) => sum + turn.reduce((a, b) => a + b, 0), 0);
  const rows = holders.map((node) => [...units.map(({ twist }) => (twist[node] ?? 0) / soft), 1]);
  const right = holders.map((node) => -(own.twist[node] ?? 0) / soft);
  rows.push([...units.map(({ after }) => after[end] ?? 0), 0]);
  right.push(-left);
  const found = solveDense(rows, right) ?? [];
  holders.forEach((node, k) => {
    torque[node] = (torque[node] ?? 0) + (found[k] ?? 0);
  });
  const all = twistedBy(grid, torque, from, to);
  const start = (found[holders.length] ?? 0) * soft;
  for (let i = 0; i <= end; i += 1) all.twist[i] = (all.twist[i] ?? 0) + start;
  for (const node of holders) all.twist[node] = 0;
  let held = 0;
  const torques = contacts.map(({ twist }) => {
    if (!twist) return 0;
    held += 1;
    return found[held - 1] ?? 0;
  });
  return { ...all, torques };
}

/** Axial force along the tube; one contact may hold it, and one must when the forces do not cancel. */
export function axialOn({ x }: Grid, contacts: readonly Contact[], { points }: Loads) {
  const force = new Float64Array(x.length);
  let [sum, most] = [0, 0];
  for (const { at, axial } of points) {
    const i = placeIn(x, at);
    force[i] = (force[i] ?? 0) + axial;
    sum += axial;
    most = Math.max(most, Math.abs(axial));
  }
  const holders = contacts.filter(({ axial }) => axial);
  if (holders.length > 1 && most > 0) {
    throw new RangeError('supports must hold it along its axis at one place, got more than one that does');
  }
  const holder = holders[0];
  if (!holder && Math.abs(sum) > 1e-9 * most) {
    throw new RangeError('supports must hold it along its axis: a clamp, or one with holdsAxial, got none');
  }
  if (holder) {
    const i = placeIn(x, holder.at);
    force[i] = (force[i] ?? 0) - sum;
  }
  const before = new Float64Array(x.length);
  const after = new Float64Array(x.length);
  let held = 0;
  for (let i = 0; i < x.length; i += 1) {
    before[i] = held;
    held -= force[i] ?? 0;
    after[i] = held;
  }
  after[x.length - 1] = 0;
  return { before, after, forces: contacts.map((contact) => (contact === holder ? -sum : 0)) };
}
