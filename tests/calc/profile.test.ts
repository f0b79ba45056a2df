import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { interpolateProfile, type ProfileStage, profilePoints } from '#calc';

const kelvin = fc.double({ min: 263.15, max: 473.15, noNaN: true });
const rate = fc.double({ min: 0.001, max: 0.2, noNaN: true });
const stage: fc.Arbitrary<ProfileStage> = fc.oneof(
  fc.record({ kind: fc.constant('ramp' as const), to: kelvin, rate }),
  fc.record({ kind: fc.constant('cool' as const), to: kelvin, rate }),
  fc.record({ kind: fc.constant('hold' as const), lasts: fc.integer({ min: 0, max: 36000 }) }),
);
const cure: ProfileStage[] = [
  { kind: 'ramp', to: 333.15, rate: 2 / 60 },
  { kind: 'hold', lasts: 14400 },
  { kind: 'cool', to: 313.15, rate: 1 / 60 },
];

describe('a cure schedule', () => {
  it('goes through each of its corners, in order of time', () => {
    fc.assert(
      fc.property(kelvin, fc.array(stage, { maxLength: 8 }), (start, stages) => {
        const corners = profilePoints({ start, stages });
        expect(corners[0]).toEqual({ time: 0, temperature: start });
        corners.forEach(({ time, temperature }, index) => {
          expect(interpolateProfile({ start, stages, time })).toBeCloseTo(temperature, 9);
          expect(time).toBeGreaterThanOrEqual(corners[index - 1]?.time ?? 0);
        });
      }),
    );
  });

  it('never changes faster than the fastest of its rates', () => {
    fc.assert(
      fc.property(
        kelvin,
        fc.array(stage),
        fc.double({ min: 0, max: 1e5, noNaN: true }),
        (start, stages, time) => {
          const fastest = Math.max(0, ...stages.map((one) => (one.kind === 'hold' ? 0 : one.rate)));
          const now = interpolateProfile({ start, stages, time });
          const soon = interpolateProfile({ start, stages, time: time + 10 });
          expect(Math.abs(soon - now)).toBeLessThanOrEqual(10 * fastest + 1e-6);
        },
      ),
    );
  });

  it('ramps, holds and cools', () => {
    const at = (time: number): number => interpolateProfile({ start: 293.15, stages: cure, time });
    expect([0, 600, 1200, 8000, 15600, 16200, 16800].map(at)).toEqual(
      [293.15, 313.15, 333.15, 333.15, 333.15, 323.15, 313.15].map((value) => expect.closeTo(value, 9)),
    );
  });

  it('is at its start before it starts and at its last temperature after it ends', () => {
    expect(interpolateProfile({ start: 293.15, stages: cure, time: -600 })).toBe(293.15);
    expect(interpolateProfile({ start: 293.15, stages: cure, time: 1e6 })).toBe(313.15);
    expect(interpolateProfile({ start: 293.15, stages: [], time: 60 })).toBe(293.15);
    expect(profilePoints({ start: 293.15, stages: [] })).toEqual([{ time: 0, temperature: 293.15 }]);
  });

  it('makes no corner of a stage that takes no time', () => {
    const stages: ProfileStage[] = [
      { kind: 'ramp', to: 293.15, rate: 0.03 },
      { kind: 'hold', lasts: 0 },
    ];
    expect(profilePoints({ start: 293.15, stages })).toHaveLength(1);
  });

  it('goes to a target on the other side all the same: a shop warmer than the first ramp', () => {
    const stages: ProfileStage[] = [{ kind: 'ramp', to: 298.15, rate: 0.01 }];
    expect(profilePoints({ start: 303.15, stages })[1]).toEqual({ time: 500, temperature: 298.15 });
  });

  it('names the stage that it cannot follow', () => {
    const bad = [
      { kind: 'hold', lasts: 60 },
      { kind: 'ramp', to: 333.15, rate: 0 },
    ] as ProfileStage[];
    expect(() => profilePoints({ start: 293.15, stages: bad })).toThrow(
      'stages[1].rate must be greater than 0 K/s',
    );
    const unknown = [{ kind: 'soak', lasts: 60 }] as unknown as ProfileStage[];
    expect(() => profilePoints({ start: 293.15, stages: unknown })).toThrow('stages[0].kind');
  });
});
