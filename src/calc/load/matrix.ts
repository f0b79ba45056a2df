import { add, type Matrix3, type Row3 } from '../laminate.ts';

const dot = (a: Row3, b: Row3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Row3, b: Row3): Row3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

export const zeros3 = (): Matrix3 => [
  [0, 0, 0],
  [0, 0, 0],
  [0, 0, 0],
];

/** Matrix times column. */
export const times3 = ([x, y, s]: Matrix3, v: Row3): Row3 => [dot(x, v), dot(y, v), dot(s, v)];

/** Inverse of a symmetric stiffness; scaled first, so that three factors of 1e9 do not overflow. */
export function inverse3(matrix: Matrix3): Matrix3 {
  const scale = 1 / (matrix[0][0] + matrix[1][1]);
  const scaled = (row: Row3): Row3 => [row[0] * scale, row[1] * scale, row[2] * scale];
  const [x, y, s] = [scaled(matrix[0]), scaled(matrix[1]), scaled(matrix[2])];
  const [u, v, w] = [cross(y, s), cross(s, x), cross(x, y)];
  const by = scale / dot(x, u);
  return [
    [u[0] * by, v[0] * by, w[0] * by],
    [u[1] * by, v[1] * by, w[1] * by],
    [u[2] * by, v[2] * by, w[2] * by],
  ];
}

/** D - B A^-1 B: bending of a laminate that is free to stretch as it likes. All symmetric. */
export function reducedBending(d: Matrix3, b: Matrix3, flexibility: Matrix3): Matrix3 {
  const half: Matrix3 = [times3(flexibility, b[0]), times3(flexibility, b[1]), times3(flexibility, b[2])];
  const taken: Matrix3 = [times3(b, half[0]), times3(b, half[1]), times3(b, half[2])];
  const reduced = zeros3();
  add(reduced, d, 1);
  add(reduced, taken, -1);
  return reduced;
}

/**
 * Solves a small full system in place by elimination with the largest pivot.
 *
 * @returns undefined when it has no single answer
 */
export function solveDense(rows: number[][], right: number[]): number[] | undefined {
  const size = right.length;
  for (let k = 0; k < size; k += 1) {
    let pivot = k;
    for (let i = k + 1; i < size; i += 1) {
      if (Math.abs(rows[i]?.[k] ?? 0) > Math.abs(rows[pivot]?.[k] ?? 0)) pivot = i;
    }
    const row = rows[pivot];
    const rest = right[pivot];
    const above = rows[k];
    const aside = right[k];
    if (!row || !above || rest === undefined || aside === undefined) return undefined;
    const head = row[k] ?? 0;
    if (!(Math.abs(head) > 1e-13)) return undefined;
    rows[pivot] = above;
    right[pivot] = aside;
    rows[k] = row;
    right[k] = rest;
    for (let i = k + 1; i < size; i += 1) {
      const under = rows[i];
      if (!under) continue;
      const share = (under[k] ?? 0) / head;
      for (let j = k; j < size; j += 1) under[j] = (under[j] ?? 0) - share * (row[j] ?? 0);
      right[i] = (right[i] ?? 0) - share * rest;
    }
  }
  for (let k = size - 1; k >= 0; k -= 1) {
    let sum = right[k] ?? 0;
    for (let j = k + 1; j < size; j += 1) sum -= (rows[k]?.[j] ?? 0) * (right[j] ?? 0);
    right[k] = sum / (rows[k]?.[k] ?? 1);
  }
  return right;
}
