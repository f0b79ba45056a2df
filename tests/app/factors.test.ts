import { describe, expect, it } from 'vitest';
import { factorsOf, tooFew, type Words } from '#app/made/learned/factors.ts';
import type { Made } from '#app/made/learned/made-facts.ts';
import { shopValues } from '#app/made/learned/shop-values.ts';
import type { BuildSummary } from '#shared/record/summary.ts';
import { madeFrom, ovenSummaryOf } from './summary-of.ts';

const words: Words = { lot: (id) => (id === 'roll-1' ? 'Roll 1' : undefined), shopHeat: () => 'shop warm' };
const builds = (...all: Partial<BuildSummary>[]): Made[] => all.map((b, i) => madeFrom(b, i + 1));
const factors = (made: Made[]) => factorsOf(made, [], words);
const factor = (made: Made[], kind: string) => factors(made).find((f) => f.kind === kind);

describe('where mixed resin goes', () => {
  it('is loss and squeeze-out apart where the leftovers were weighed', () => {
    const made = madeFrom({ leftover: 0.012, wipings: 0.008 });
    expect(made.lossPerCup).toBeCloseTo(0.01, 12);
    // 160 g mixed, 20 g lost, 120 g in the tube of 140 g that reached the cloth.
    expect(made.squeezedOut).toBeCloseTo(1 - 120 / 140, 12);
    expect(made.totalLossPerCup).toBeCloseTo(0.02, 12);
  });

  it('is a total loss and no more where they were not', () => {
    const made = madeFrom();
    expect(made.totalLossPerCup).toBeCloseTo(0.02, 12);
    expect(made).not.toHaveProperty('lossPerCup');
    expect(made).not.toHaveProperty('squeezedOut');
  });

  it('is not told by weights that contradict each other', () => {
    expect(madeFrom({ resinMixed: 0.1 })).not.toHaveProperty('totalLossPerCup');
    expect(madeFrom({ leftover: 0.05 })).not.toHaveProperty('squeezedOut');
    expect(madeFrom({ curedMass: 0.09 })).not.toHaveProperty('resinShare');
  });

  it('counts the resin in the faces of a core as in the tube', () => {
    const made = madeFrom({ core: 0.05, coreResin: 0.02, curedMass: 0.25 });
    expect(made.resinShare).toBeCloseTo(0.5, 12);
    expect(made.totalLossPerCup).toBeCloseTo((0.16 - 0.12) / 2, 12);
  });
});

describe('what a shop does', () => {
  it('is the median of its builds, hardly moved by one bad one, with the book beside it', () => {
    const made = builds(...[0.022, 0.024, 0.026, 0.4].map((leftover) => ({ leftover })));
    const loss = factor(made, 'lossPerCup');
    expect(loss?.spread).toMatchObject({ count: 4 });
    expect(loss?.spread.median).toBeCloseTo(0.0125, 12);
    expect(loss?.book).toBe(0.015);
    expect(loss?.sources.map((s) => s.to)).toContain('/record/build/build-4');
  });

  it('from fewer than three builds is too few to go by', () => {
    const made = builds({ leftover: 0.02 }, { leftover: 0.03 }, {});
    expect(factor(made, 'lossPerCup')).toSatisfy(tooFew);
    expect(factor(builds({}, {}, {}), 'totalLoss')).not.toSatisfy(tooFew);
  });

  it('tells cloths and methods apart, the best founded first', () => {
    const made = builds({ release: 'Wax' }, { release: 'Film' }, { release: 'Film' }, { cloth: 'Twill' });
    expect(
      factors(made)
        .filter((f) => f.kind === 'resinShare')
        .map((f) => [f.of, f.spread.count]),
    ).toEqual([
      ['Plain 193, Film', 2],
      ['Plain 193, Wax', 1],
      ['Twill', 1],
    ]);
  });

  it('weighs each lot of cloth by itself, from cloth that was on the scale and an area that was planned', () => {
    const draws = [{ of: 'cloth' as const, lot: 'roll-1', amount: 0.5, at: 0 }];
    const made = builds(
      { weighedCloth: 0.1, clothArea: 0.5, draws },
      { weighedCloth: 0.098, clothArea: 0.5 },
      { clothArea: 0.5 },
    );
    const [first, second, ...more] = factors(made).filter((f) => f.kind === 'arealWeight');
    expect([first?.of, first?.spread.median, first?.book]).toEqual(['Plain 193, Roll 1', 0.2, 0.193]);
    expect([second?.of, second?.spread.median]).toEqual(['Plain 193, lot not named', 0.196]);
    expect(more).toEqual([]);
  });

  it('knows how far the oven goes over its hold', () => {
    const ovens = [342, 341, 345].map((highestAir, i) => ovenSummaryOf(i, { highestAir, wantedHold: 339 }));
    const [over] = factorsOf([], [...ovens, ovenSummaryOf(9)], words);
    expect(over).toMatchObject({ kind: 'overshoot', spread: { count: 3, median: 3 } });
  });

  it('says nothing where nothing was weighed', () => {
    expect(factors(builds({ curedMass: undefined, resinMixed: undefined, cups: 0 } as never))).toEqual([]);
  });
});

describe('the shop for a plan', () => {
  const of = { cloth: 'Plain 193', release: 'Film', tape: 'Tape 25' };

  it('goes by builds of the same cloth, release and tape, and by the cloth while those are too few', () => {
    const same = { release: 'Film', tape: 'Tape 25', curedMass: 0.25 };
    const few = builds(same, same, { release: 'Wax' }, { release: 'Wax' });
    expect(shopValues(few, of).fiberVolume).toMatchObject({ of: 'of this cloth', spread: { count: 4 } });
    const enough = builds(same, same, same, { release: 'Wax' });
    expect(shopValues(enough, of).fiberVolume).toMatchObject({
      of: 'of this cloth, release and tape',
      spread: { count: 3 },
    });
  });

  it('takes squeeze-out from under the same tape, and a ply from the same cloth', () => {
    const made = builds(
      { tape: 'Tape 25', leftover: 0.01, wall: 0.0012, plies: 4 },
      { tape: 'Tape 12', leftover: 0.03, wall: 0.002, plies: 4, cloth: 'Twill' },
    );
    const values = shopValues(made, of);
    expect(values.squeezeOut?.spread.count).toBe(1);
    expect(values.plyThickness?.spread.median).toBeCloseTo(0.0003, 12);
    expect(values.workingRate).toBeUndefined();
  });
});

describe('stiffness against plan', () => {
  it('is of each cloth, from what bent under a weight, with the plan itself as the book', () => {
    const proof = [{ expected: 0.02, measured: 0.025 }];
    const made = builds(
      { proof },
      { proof: [{ expected: 0.02, measured: 0.02 }] },
      { proof, cloth: 'Twill' },
      {},
    );
    const [plain, twill] = factors(made).filter((f) => f.kind === 'stiffness');
    expect(plain).toMatchObject({ of: 'Plain 193', book: 1, spread: { count: 2 } });
    expect(plain?.spread.median).toBeCloseTo(0.9, 9);
    expect(twill?.spread.median).toBeCloseTo(0.8, 9);
  });

  it('around is a tube’s middle squeeze, one each, by cloth', () => {
    const made = builds({ rings: [0.7, 0.9, 2] }, { rings: [0.8] }, {});
    const [around, none] = factors(made).filter((f) => f.kind === 'ring');
    expect(around).toMatchObject({ of: 'Plain 193', book: 1, spread: { count: 2 } });
    expect(around?.spread.median).toBeCloseTo(0.85, 9);
    expect(none).toBeUndefined();
  });
});
