import type { Cell, Grid } from './beam-grid.ts';
import { placeIn } from './beam-grid.ts';
import type { Contact } from './beam-input.ts';

/** Symmetric with four entries a row, the diagonal first; two unknowns a place: aside and slope. */
export type Band = Float64Array;
const WIDE = 4;

type Square = readonly (readonly number[])[];

/** The tube as elements between the places of its grid: stiffness, and what pressing takes off it. */
export type Frame = {
  readonly size: number;
  readonly stiff: readonly Square[];
  readonly press: readonly Square[];
  /** 1 where the tube is held. */
  readonly held: Uint8Array;
};

/**
 * Elements for a pressed tube. Stiffness by the exact flexibility of each cell; what an axial force does to it with
 * the cubic of an even beam, which is off by the fourth power of a cell's share of the length.
 *
 * @param axial force in each cell, N, pulled is positive
 */
export function frameOf(grid: Grid, contacts: readonly Contact[], axial: Float64Array): Frame {
  const size = 2 * grid.x.length;
  const held = new Uint8Array(size);
  for (const { at, clamp } of contacts) {
    const i = placeIn(grid.x, at);
    held[2 * i] = 1;
    if (clamp) held[2 * i + 1] = 1;
  }
  return {
    size,
    held,
    stiff: grid.cells.map(stiffnessOf),
    press: grid.cells.map(({ long }, i) => pressOf(long, -(axial[i] ?? 0))),
  };
}

function stiffnessOf({ long, s, bend }: Cell): Square {
  let [aa, ab, bb] = [0, 0, 0];
  for (let p = 0; p < s.length; p += 1) {
    const arm = long - (s[p] ?? 0);
    const soft = bend[p] ?? 0;
    aa += arm * arm * soft;
    ab += arm * soft;
    bb += soft;
  }
  const det = aa * bb - ab * ab;
  const [ff, fc, cc] = [bb / det, -ab / det, aa / det];
  // What holds the near end follows from rest: the same force back, and its arm.
  const [nf, nc] = [-ff * long - fc, -fc * long - cc];
  return [
    [ff, -nf, -ff, -fc],
    [-nf, -(nf * long + nc), nf, nc],
    [-ff, nf, ff, fc],
    [-fc, nc, fc, cc],
  ];
}

function pressOf(h: number, force: number): Square {
  const by = force / (30 * h);
  return [
    [36, 3 * h, -36, 3 * h],
    [3 * h, 4 * h * h, -3 * h, -h * h],
    [-36, -3 * h, 36, -3 * h],
    [3 * h, -h * h, -3 * h, 4 * h * h],
  ].map((row) => row.map((value) => value * by));
}

/** Stiffness less so many times the press, factored in place; `negative` is how many ways it gives out. */
export function factored(frame: Frame, times: number): { band: Band; negative: number } {
  const { size, held } = frame;
  const band = new Float64Array(size * WIDE);
  frame.stiff.forEach((stiff, e) => {
    const press = frame.press[e];
    for (let i = 0; i < 4; i += 1) {
      for (let j = i; j < 4; j += 1) {
        const [row, column] = [2 * e + i, 2 * e + j];
        if (held[row] === 1 || held[column] === 1) continue;
        const place = row * WIDE + (j - i);
        band[place] = (band[place] ?? 0) + (stiff[i]?.[j] ?? 0) - times * (press?.[i]?.[j] ?? 0);
      }
    }
  });
  for (let row = 0; row < size; row += 1) if (held[row] === 1) band[row * WIDE] = 1;
  let negative = 0;
  for (let k = 0; k < size; k += 1) {
    const pivot = band[k * WIDE] || 1e-300;
    if (pivot < 0) negative += 1;
    for (let i = 1; i < WIDE && k + i < size; i += 1) {
      const share = (band[k * WIDE + i] ?? 0) / pivot;
      if (share === 0) continue;
      for (let j = i; j < WIDE; j += 1) {
        const place = (k + i) * WIDE + (j - i);
        band[place] = (band[place] ?? 0) - share * (band[k * WIDE + j] ?? 0);
      }
    }
    for (let i = 1; i < WIDE; i += 1) band[k * WIDE + i] = (band[k * WIDE + i] ?? 0) / pivot;
  }
  return { band, negative };
}

/** Solves with a factored band, in place. */
export function solveBand(band: Band, right: Float64Array): Float64Array {
  const size = right.length;
  for (let k = 0; k < size; k += 1) {
    const value = right[k] ?? 0;
    for (let i = 1; i < WIDE && k + i < size; i += 1) {
      right[k + i] = (right[k + i] ?? 0) - (band[k * WIDE + i] ?? 0) * value;
    }
  }
  for (let k = size - 1; k >= 0; k -= 1) {
    let sum = (right[k] ?? 0) / (band[k * WIDE] || 1);
    for (let i = 1; i < WIDE && k + i < size; i += 1) sum -= (band[k * WIDE + i] ?? 0) * (right[k + i] ?? 0);
    right[k] = sum;
  }
  return right;
}

/** A small square times four unknowns from `first` on. */
export function timesPart(square: Square | undefined, of: Float64Array, first: number): number[] {
  return (square ?? []).map((row) => row.reduce((sum, value, j) => sum + value * (of[first + j] ?? 0), 0));
}
