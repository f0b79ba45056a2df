import { describe, expect, it } from 'vitest';
import { foldBuild } from '#shared/record/build-state.ts';
import type { AnyEntry } from '#shared/record/entry.ts';
import { buildHeader, entryOf } from './arbitraries.ts';

const build = (...entries: AnyEntry[]) => foldBuild(buildHeader, entries);
const weight = (mass: number, piece?: string) =>
  entryOf({ kind: 'weight', what: 'cutCloth', mass, ...(piece !== undefined && { piece }) });

describe('cloth weighed piece by piece', () => {
  it('never takes a piece for all the cut cloth', () => {
    const state = build(weight(0.265), weight(0.04, 'sleeve'));
    expect(state.weights.get('cutCloth')?.entry.mass).toBe(0.265);
    expect(state.pieceWeights.get('sleeve')?.entry.mass).toBe(0.04);
  });

  it('keeps the latest weight of each piece', () => {
    const state = build(weight(0.04, 'sleeve'), weight(0.22, 'skin'), weight(0.041, 'sleeve'));
    expect([...state.pieceWeights].map(([piece, f]) => [piece, f.entry.mass])).toEqual([
      ['sleeve', 0.041],
      ['skin', 0.22],
    ]);
  });
});

describe('where the outer edge landed', () => {
  const mark = (station: number, off: number) => entryOf({ kind: 'edgeMark', station, off });

  it('is the latest word at each station', () => {
    const state = build(mark(0, 0.002), mark(1.2, -0.001), mark(0, 0.003));
    expect(state.edgeMarks.map((f) => [f.entry.station, f.entry.off])).toEqual([
      [0, 0.003],
      [1.2, -0.001],
    ]);
  });

  it('is gone once it was struck out', () => {
    const one = mark(0, 0.002);
    expect(build(one, entryOf({ kind: 'retracted', corrects: one.id })).edgeMarks).toEqual([]);
  });
});
