import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  cureTimeUsed,
  limitBreaks,
  type ProfileStage,
  profilePoints,
  scheduleThatFits,
  timeAbove,
} from '#calc';
import { celsius, history } from './histories.ts';

const at = (degrees: number) => degrees + 273.15;

describe('a limit gone over', () => {
  it('says by how much, for how long, and between which crossings', () => {
    const readings = celsius([0, 70], [10, 90], [20, 90], [30, 80], [40, 60]);
    const broken = limitBreaks({ readings, highest: at(80) });
    expect(broken.over).toBeCloseTo(10, 9);
    expect(broken.from).toBeCloseTo(300, 6);
    expect(broken.until).toBeCloseTo(1800, 6);
    expect(broken.seconds).toBeCloseTo(1500, 6);
  });

  it('counts the minutes of two excursions, not the time between them', () => {
    const readings = celsius([0, 70], [10, 90], [20, 70], [60, 70], [70, 90], [80, 70]);
    const broken = limitBreaks({ readings, highest: at(80) });
    expect(broken.seconds).toBeCloseTo(1200, 6);
    expect(broken.until).toBeCloseTo(4500, 6);
  });

  it('is not over where it lies on the limit, and never with no reading', () => {
    const level = celsius([0, 80], [60, 80]);
    const on = level[0]?.temperature ?? 0;
    expect(limitBreaks({ readings: level, highest: on })).toEqual({ over: 0, seconds: 0 });
    expect(limitBreaks({ readings: [], highest: on })).toEqual({ over: 0, seconds: 0 });
  });

  it('keeps a margin from the limit, and gives it back for a sensor that reads high', () => {
    const readings = celsius([0, 78], [60, 78]);
    expect(limitBreaks({ readings, highest: at(80), margin: 5 })).toMatchObject({
      over: expect.closeTo(3, 9),
      seconds: 3600,
      from: 0,
      until: 3600,
    });
    expect(limitBreaks({ readings: celsius([0, 82], [60, 82]), highest: at(80), margin: -3 }).over).toBe(0);
  });

  it('agrees with time above, and goes over for no longer than from its first to its last crossing', () => {
    fc.assert(
      fc.property(history, fc.double({ min: 260, max: 480, noNaN: true }), (readings, highest) => {
        const { over, seconds, from, until } = limitBreaks({ readings, highest });
        expect(seconds).toBe(timeAbove({ readings, limit: highest }));
        expect(over > 0).toBe(from !== undefined);
        if (from !== undefined && until !== undefined) {
          expect(seconds).toBeLessThanOrEqual(until - from + 1e-6);
        }
      }),
    );
  });
});

describe('what would fit under a limit', () => {
  const start = at(23);
  const stages: ProfileStage[] = [
    { kind: 'ramp', to: at(92), rate: 2 / 60 },
    { kind: 'hold', lasts: 7200 },
    { kind: 'cool', to: at(35), rate: 1.5 / 60 },
  ];
  const curePoints = [
    { temperature: at(60), time: 36000 },
    { temperature: at(80), time: 11700 },
  ];
  const activationEnergy = 55000;

  it('uses the same cure time at the highest that is allowed', () => {
    const fits = scheduleThatFits({ start, stages, highest: at(82), activationEnergy });
    const used = (of: readonly ProfileStage[]) =>
      cureTimeUsed({ readings: profilePoints({ start, stages: of }), curePoints, activationEnergy });
    expect(used(fits.stages)).toBeCloseTo(used(stages), 6);
    const points = profilePoints({ start, stages: fits.stages });
    expect(Math.max(...points.map((p) => p.temperature))).toBeCloseTo(at(82), 9);
  });

  it('is the schedule itself where it fits', () => {
    expect(scheduleThatFits({ start, stages, highest: at(92), activationEnergy })).toEqual({
      stages,
      longer: 0,
    });
  });

  it('holds where the schedule had no hold, and lengthens the longest where it had two', () => {
    const spike: ProfileStage[] = [
      { kind: 'ramp', to: at(92), rate: 2 / 60 },
      { kind: 'cool', to: at(35), rate: 1.5 / 60 },
    ];
    const kinds = scheduleThatFits({ start, stages: spike, highest: at(82), activationEnergy });
    expect(kinds.stages.map((s) => s.kind)).toEqual(['ramp', 'hold', 'cool']);
    const two: ProfileStage[] = [
      { kind: 'ramp', to: at(85), rate: 2 / 60 },
      { kind: 'hold', lasts: 600 },
      { kind: 'ramp', to: at(92), rate: 2 / 60 },
      { kind: 'hold', lasts: 7200 },
    ];
    const fits = scheduleThatFits({ start, stages: two, highest: at(82), activationEnergy });
    expect(fits.stages[1]).toEqual({ kind: 'hold', lasts: 600 });
    expect(fits.stages[3]).toEqual({ kind: 'hold', lasts: 7200 + fits.longer });
  });

  it('is refused where the schedule begins above the limit', () => {
    expect(() => scheduleThatFits({ start, stages, highest: at(20), activationEnergy })).toThrow(/^highest/);
  });

  it('uses the same cure time for any schedule and any limit above its start', () => {
    const to = fc.integer({ min: 25, max: 150 }).map(at);
    const rate = fc.double({ min: 0.1, max: 5, noNaN: true }).map((r) => r / 60);
    const stage = fc.oneof(
      fc.record({ kind: fc.constant('ramp' as const), to, rate }),
      fc.record({ kind: fc.constant('hold' as const), lasts: fc.integer({ min: 60, max: 40_000 }) }),
      fc.record({ kind: fc.constant('cool' as const), to, rate }),
    );
    fc.assert(
      fc.property(fc.array(stage, { minLength: 1, maxLength: 8 }), to, (some, highest) => {
        const fits = scheduleThatFits({ start, stages: some, highest, activationEnergy });
        const used = (of: readonly ProfileStage[]) =>
          cureTimeUsed({ readings: profilePoints({ start, stages: of }), curePoints, activationEnergy });
        const [before, after] = [used(some), used(fits.stages)];
        expect(after).toBeGreaterThanOrEqual(before * (1 - 1e-6));
        if (fits.longer > 0) expect(after).toBeLessThanOrEqual(before * (1 + 1e-6));
        for (const s of fits.stages) if (s.kind !== 'hold') expect(s.to).toBeLessThanOrEqual(highest);
      }),
    );
  });
});
