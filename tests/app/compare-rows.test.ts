import { describe, expect, it } from 'vitest';
import { compareBuilds } from '#app/made/compare/rows.ts';
import type { BuildSummary } from '#shared/record/summary.ts';
import { madeFrom, ovenSummaryOf } from './summary-of.ts';

const rowOf = (builds: Partial<BuildSummary>[], key: string) => {
  const { differ, same } = compareBuilds(builds.map((b, i) => madeFrom(b, i + 1)));
  return {
    marks: differ.find((r) => r.fact.key === key)?.cells.map((c) => c.mark),
    texts: differ.find((r) => r.fact.key === key)?.cells.map((c) => c.text),
    same: same.find((s) => s.fact.key === key),
  };
};

describe('builds side by side', () => {
  it('mark the highest and the lowest where two differ', () => {
    expect(rowOf([{ curedMass: 0.22 }, { curedMass: 0.26 }], 'tube').marks).toEqual(['least', 'most']);
  });

  it('mark only what stands apart: what half of them do is no end', () => {
    const builds = [0.22, 0.221, 0.22, 0.29].map((curedMass) => ({ curedMass }));
    expect(rowOf(builds, 'tube').marks).toEqual([undefined, undefined, undefined, 'most']);
  });

  it('fold away what is as good as the same, with what it ran from and to', () => {
    const { marks, same } = rowOf([{ curedMass: 0.22 }, { curedMass: 0.222 }], 'tube');
    expect(marks).toBeUndefined();
    expect(same).toMatchObject({ text: '220 to 222\u00a0g', said: 2 });
  });

  it('mark the word that is another than most, and both of two', () => {
    const releases = (...names: string[]) => names.map((release) => ({ release }));
    expect(rowOf(releases('Wax', 'Wax', 'Film'), 'release').marks).toEqual([undefined, undefined, 'other']);
    expect(rowOf(releases('Wax', 'Film'), 'release').marks).toEqual(['other', 'other']);
    expect(rowOf(releases('Wax', 'Wax'), 'release').same).toMatchObject({ text: 'Wax' });
  });

  it('leave out what nobody weighed, and show a dash where one did not', () => {
    expect(rowOf([{}, {}], 'loss')).toEqual({ marks: undefined, texts: undefined, same: undefined });
    const { texts } = rowOf([{ leftover: 0.02 }, { leftover: 0.03 }, {}], 'loss');
    expect(texts).toEqual(['10.0\u00a0g', '15.0\u00a0g', '–']);
  });

  it('say how far each cup was off, and go by the worst', () => {
    const cup = (hardener: number) => ({ resin: 0.1, hardener, wanted: 0.3 });
    const { texts, marks } = rowOf(
      [{ poured: [cup(0.0303), cup(0.0285)] }, { poured: [cup(0.03)] }],
      'ratio',
    );
    expect(texts?.[0]).toBe('+1\u00a0%, −5\u00a0%');
    expect(marks).toEqual(['most', 'least']);
  });

  it('take the oven from the sensor on the tube, the hottest of all its loads', () => {
    const tube = (highest: number) => [{ build: 'build-1', round: 1, highest, steepest: 0.02, held: 339 }];
    const ovens = [ovenSummaryOf(1, { tubes: tube(345) }), ovenSummaryOf(2, { tubes: tube(352) })];
    const made = madeFrom({ ovenLoads: ['oven-1', 'oven-2'] }, 1, ovens);
    expect(made).toMatchObject({ peak: 352, held: 339, steepest: 0.02 });
  });
});
