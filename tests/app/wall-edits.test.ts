import { describe, expect, test } from 'vitest';
import {
  addDiameter,
  mandrelKind,
  removeDiameter,
  straightMandrel,
  taperedMandrel,
} from '#app/planning/wall/mandrel-edits.ts';
import { stationsOnTube } from '#app/planning/wall/shape-edits.ts';
import {
  addPiece,
  copyPiece,
  newPiece,
  removePiece,
  setLength,
  setPressedAt,
  shiftPiece,
  stretchTo,
  type WallState,
} from '#app/planning/wall/wall-edits.ts';
import { lowerMastPlies, pieceOf, shape, wallOf } from './wall-of.ts';

const sleeve = () =>
  pieceOf(
    shape([
      [0, 2],
      [0.4, 1],
    ]),
    { start: 0.3 },
  );

function stateOf(...pieces: ReturnType<typeof pieceOf>[]): WallState {
  return { wall: wallOf(pieces).wall, length: 2.4 };
}

const reach = (state: WallState, piece: number) => {
  const found = state.wall.pieces[piece];
  return found && stationsOnTube(found).map((s) => Number(s.at.toFixed(6)));
};

describe('pieces of a wall', () => {
  const [a, b] = [pieceOf(lowerMastPlies), sleeve()];

  test('change places in the wrap one by one, and stop at the ends', () => {
    const state = stateOf(a, b);
    expect(shiftPiece(state, a.id, 1).wall.pieces).toEqual([b, a]);
    expect(shiftPiece(state, a.id, -1)).toBe(state);
    expect(shiftPiece(state, b.id, 1)).toBe(state);
  });

  test('a copy comes right after, with its starting edge across the tube', () => {
    const [first, copy, last] = copyPiece(stateOf(a, b), a.id, 'new').wall.pieces;
    expect(first).toBe(a);
    expect(copy).toEqual({ ...a, id: 'new', clock: Math.PI });
    expect(last).toBe(b);
  });

  test('the last one can be taken out, to start afresh', () => {
    expect(removePiece(stateOf(a), a.id).wall.pieces).toEqual([]);
  });

  test('a new cloth laps by 15 mm, a core meets', () => {
    const common = { id: 'x', name: 'New', length: 2.4, plies: 1 };
    expect(newPiece({ ...common, kind: 'cloth', material: 'c' }).overlap).toBe(0.015);
    const core = newPiece({ ...common, kind: 'core', material: 'c' });
    expect(core.overlap).toBe(0);
    expect(addPiece(stateOf(a), core).wall.pieces.at(-1)).toBe(core);
  });

  test('the load can be set and forgotten again', () => {
    const set = setPressedAt(stateOf(a), 1);
    expect(set.wall.pressedAt).toBe(1);
    expect('pressedAt' in setPressedAt(set, undefined).wall).toBe(false);
  });
});

describe('another tube length', () => {
  test('takes along what reached the end, and leaves the partners where they are', () => {
    const longer = setLength(stateOf(pieceOf(lowerMastPlies), sleeve()), 2.6);
    expect(longer.length).toBe(2.6);
    expect(reach(longer, 0)).toEqual([0, 0.5, 0.56, 0.8, 1.4, 2.6]);
    expect(reach(longer, 1)).toEqual([0.3, 0.7]);
  });

  test('makes a straight mandrel long enough, and leaves a tapered one for the builder', () => {
    const state = stateOf(pieceOf(lowerMastPlies));
    expect(setLength(state, 4).wall.mandrel.stations.at(-1)).toEqual({ at: 4, value: 0.0508 });
    const mandrel = shape([
      [0, 0.05],
      [2.5, 0.03],
    ]);
    const tapered = { ...state, wall: { ...state.wall, mandrel } };
    expect(setLength(tapered, 4).wall.mandrel).toEqual(mandrel);
  });

  test('cuts off what lies beyond it, on the line that was there', () => {
    const shorter = setLength(stateOf(pieceOf(lowerMastPlies)), 1.9);
    expect(reach(shorter, 0)).toEqual([0, 0.5, 0.56, 0.8, 1.4, 1.9]);
    expect(shorter.wall.pieces[0] && stationsOnTube(shorter.wall.pieces[0]).at(-1)?.value).toBeCloseTo(
      2.5,
      12,
    );
  });

  test('drops a piece that lies beyond it altogether', () => {
    expect(setLength(stateOf(pieceOf(lowerMastPlies), sleeve()), 0.2).wall.pieces).toHaveLength(1);
  });

  test('stretched, all stations and starts move along', () => {
    const double = stretchTo(stateOf(pieceOf(lowerMastPlies), sleeve()), 4.8);
    expect(reach(double, 0)).toEqual([0, 1, 1.12, 1.6, 2.8, 4.8]);
    expect(reach(double, 1)).toEqual([0.6, 1.4]);
  });
});

describe('the mandrel', () => {
  const straight = shape([
    [0, 0.05],
    [2.5, 0.05],
  ]);
  const tapered = shape([
    [-0.1, 0.05],
    [2.5, 0.03],
  ]);

  test('is known by its diameters', () => {
    expect(mandrelKind(straight)).toBe('straight');
    expect(mandrelKind(tapered)).toBe('tapered');
    expect(mandrelKind(addDiameter(tapered))).toBe('measured');
  });

  test('a place more lies halfway along the longest stretch, and can be taken out again', () => {
    const more = addDiameter(tapered);
    expect(more.stations[1]?.at).toBeCloseTo(1.2, 12);
    expect(more.stations[1]?.value).toBeCloseTo(0.04, 12);
    expect(removeDiameter(more, 1)).toEqual(tapered);
  });

  test('tapered and back it keeps its length', () => {
    expect(taperedMandrel(addDiameter(tapered))).toEqual(tapered);
    expect(straightMandrel(tapered).stations.map((s) => s.at)).toEqual([-0.1, 2.5]);
  });
});
