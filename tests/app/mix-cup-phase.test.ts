import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  asItIs,
  cupError,
  cupPhase,
  judgePour,
  type Mixing,
  pourTask,
} from '#app/laying-up/mix/cup-phase.ts';
import { cup } from './mix-cups.ts';

const mixing: Mixing = { ratio: 0.3, tolerance: 0.03 };
const inCup = { resin: 0.07, hardenerAt: 2000 };

describe('where a cup stands', () => {
  it('waits for resin, then for the first hardener, then for enough of it', () => {
    expect(cupPhase(cup(), mixing)).toBe('resin');
    expect(cupPhase(cup({ resin: 0.07 }), mixing)).toBe('contact');
    expect(cupPhase(cup(inCup), mixing)).toBe('pour');
    expect(cupPhase(cup({ ...inCup, hardener: 0.021 }), mixing)).toBe('mixed');
  });

  it('is mixed at both ends of the tolerance and not beyond them', () => {
    expect(cupPhase(cup({ ...inCup, hardener: 0.021 * 1.03 }), mixing)).toBe('mixed');
    expect(cupPhase(cup({ ...inCup, hardener: 0.021 * 0.97 }), mixing)).toBe('mixed');
    expect(cupPhase(cup({ ...inCup, hardener: 0.021 * 1.031 }), mixing)).toBe('pour');
    expect(cupPhase(cup({ ...inCup, hardener: 0.021 * 0.969 }), mixing)).toBe('pour');
  });

  it('is mixed however far off it is once it was taken as it is', () => {
    expect(cupPhase(cup({ ...inCup, hardener: 0.01, asItIs: 'lean' }), mixing)).toBe('mixed');
  });

  it('is gone when it is empty or thrown out, whatever went in', () => {
    expect(cupPhase(cup({ emptyAt: 3000 }), mixing)).toBe('empty');
    expect(cupPhase(cup({ ...inCup, discardedAt: 3000, emptyAt: 2500 }), mixing)).toBe('thrownOut');
  });

  it('asks for resin when two phones only agree on the hardener', () => {
    const odd = cup({ hardener: 0.021 });
    expect(cupPhase(odd, mixing)).toBe('pour');
    expect(pourTask(odd, mixing)).toMatchObject({ part: 'resin', correcting: true });
    expect(pourTask(odd, mixing).wanted).toBeCloseTo(0.07, 9);
  });
});

describe('the pour that comes next', () => {
  it('starts with the resin the cup was planned with', () => {
    expect(pourTask(cup(), mixing)).toMatchObject({ part: 'resin', wanted: 0.07, correcting: false });
  });

  it('is the hardener that belongs to the resin really poured, not to the resin planned', () => {
    const task = pourTask(cup({ ...inCup, resin: 0.0893 }), mixing);
    expect(task).toMatchObject({ part: 'hardener', correcting: false });
    expect(task.wanted).toBeCloseTo(0.02679, 9);
    expect(task.least).toBeCloseTo(0.02679 * 0.97, 9);
    expect(task.most).toBeCloseTo(0.02679 * 1.03, 9);
  });

  it('is the resin that puts hardener poured over right', () => {
    const task = pourTask(cup({ ...inCup, resin: 0.0782, hardener: 0.025 }), mixing);
    expect(task).toMatchObject({ part: 'resin', correcting: true });
    expect(task.wanted).toBeCloseTo(0.005133, 6);
  });

  it('goes back to hardener when the correcting resin ran over in its turn', () => {
    const task = pourTask(cup({ ...inCup, resin: 0.09, hardener: 0.025 }), mixing);
    expect(task).toMatchObject({ part: 'hardener', correcting: true });
    expect(task.wanted).toBeCloseTo(0.002, 9);
  });

  it('ends in a mixed cup anywhere from its least to its most', () => {
    const grams = fc.double({ min: 0.002, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(grams, grams, fc.double({ min: 0, max: 1, noNaN: true }), (resin, hardener, share) => {
        const before = cup({ resin, hardener, hardenerAt: 2000 });
        if (cupPhase(before, mixing) !== 'pour') return;
        const task = pourTask(before, mixing);
        const mass = task.least + share * (task.most - task.least);
        const after = { ...before, [task.part]: before[task.part] + mass };
        expect(cupPhase(after, mixing)).toBe('mixed');
        expect(task.least).toBeLessThan(task.wanted);
        expect(task.wanted).toBeLessThan(task.most);
      }),
    );
  });
});

describe('judging a pour', () => {
  const judge = (state: ReturnType<typeof cup>, mass: number) =>
    judgePour(state, mixing, pourTask(state, mixing), mass);

  it('says by how much a pour is short of its mark', () => {
    const verdict = judge(cup(inCup), 0.0095);
    expect(verdict).toMatchObject({ kind: 'short' });
    expect(verdict.kind === 'short' && verdict.by).toBeCloseTo(0.0115, 9);
  });

  it('lets resin run over, since the hardener follows it', () => {
    expect(judge(cup(), 0.075)).toMatchObject({ kind: 'good', fits: true });
  });

  it('says when resin and its hardener are more than the cup may hold', () => {
    const verdict = judge(cup(), 0.09);
    expect(verdict).toMatchObject({ kind: 'good', fits: false });
    expect(verdict.kind === 'good' && verdict.total).toBeCloseTo(0.117, 9);
  });

  it('says how rich hardener poured over is and how much resin puts it right', () => {
    const verdict = judge(cup({ ...inCup, resin: 0.0782 }), 0.025);
    expect(verdict).toMatchObject({ kind: 'over', next: 'resin', fits: false });
    expect(verdict.kind === 'over' && verdict.off).toBeCloseTo(0.06564, 5);
    expect(verdict.kind === 'over' && verdict.add).toBeCloseTo(0.005133, 6);
    expect(verdict.kind === 'over' && verdict.total).toBeCloseTo(0.10833, 5);
  });

  it('says that the corrected cup still fits when it does', () => {
    expect(judge(cup({ ...inCup, resin: 0.06 }), 0.0195)).toMatchObject({ kind: 'over', fits: true });
  });

  it('asks for hardener when the correcting resin runs over', () => {
    const state = cup({ ...inCup, resin: 0.0782, hardener: 0.025 });
    expect(judge(state, 0.012)).toMatchObject({ kind: 'over', next: 'hardener' });
    expect(judge(state, 0.0051)).toMatchObject({ kind: 'good' });
    expect(judge(state, 0.001)).toMatchObject({ kind: 'short' });
  });
});

describe('a pour recorded as it is', () => {
  const mark = (state: ReturnType<typeof cup>, mass: number) =>
    asItIs(judgePour(state, mixing, pourTask(state, mixing), mass));

  it('is lean when hardener is short and rich when it is over', () => {
    expect(mark(cup(inCup), 0.01)).toBe('lean');
    expect(mark(cup(inCup), 0.03)).toBe('rich');
  });

  it('is rich when too little correcting resin went in, lean when too much did', () => {
    const state = cup({ ...inCup, resin: 0.0782, hardener: 0.025 });
    expect(mark(state, 0.001)).toBe('rich');
    expect(mark(state, 0.012)).toBe('lean');
  });

  it('has no mark for resin poured first, nor when it is within tolerance', () => {
    expect(mark(cup(), 0.03)).toBeUndefined();
    expect(mark(cup(inCup), 0.021)).toBeUndefined();
  });
});

describe('how far a cup is off', () => {
  it('is signed, and unknown while a part is missing', () => {
    expect(cupError({ resin: 0.1, hardener: 0.033 }, mixing)).toBeCloseTo(0.1, 9);
    expect(cupError({ resin: 0.1, hardener: 0.027 }, mixing)).toBeCloseTo(-0.1, 9);
    expect(cupError({ resin: 0.1, hardener: 0 }, mixing)).toBeUndefined();
    expect(cupError({ resin: 0, hardener: 0.03 }, mixing)).toBeUndefined();
  });
});
