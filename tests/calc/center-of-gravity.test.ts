import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import '../property-seed.ts';
import { centerOfGravity } from '#calc';

const part = fc.record({
  mass: fc.double({ min: 1e-4, max: 1e3, noNaN: true }),
  // To a tenth of a millimeter: what is smaller than rounding comes back as 0.
  position: fc.integer({ min: -500_000, max: 500_000 }).map((tenths) => tenths / 1e4),
});
const parts = fc.array(part, { minLength: 1, maxLength: 20 });

describe('where a structure balances', () => {
  it('is the mean of equal weights, and nearer to the heavier of two', () => {
    const equal = [1, 2, 6].map((position) => ({ mass: 0.5, position }));
    expect(centerOfGravity({ parts: equal })).toBeCloseTo(3, 12);
    const two = {
      parts: [
        { mass: 3, position: 0 },
        { mass: 1, position: 4 },
      ],
    };
    expect(centerOfGravity(two)).toBeCloseTo(1, 12);
  });

  // 100 N at 0 and 300 N at 4 m hold a beam up where moments are equal: 100 x 3 = 300 x 1 (any text on statics).
  it('has equal moments on both sides', () => {
    const at = centerOfGravity({
      parts: [
        { mass: 100, position: 0 },
        { mass: 300, position: 4 },
      ],
    });
    expect(100 * at).toBeCloseTo(300 * (4 - at), 9);
  });

  it('lies within the span of the parts', () => {
    fc.assert(
      fc.property(parts, (all) => {
        const at = centerOfGravity({ parts: all });
        expect(at).toBeGreaterThanOrEqual(Math.min(...all.map((p) => p.position)));
        expect(at).toBeLessThanOrEqual(Math.max(...all.map((p) => p.position)));
      }),
    );
  });

  it('moves with the zero, and not with the unit of weight', () => {
    fc.assert(
      fc.property(parts, fc.double({ min: -10, max: 10, noNaN: true }), (all, shift) => {
        const at = centerOfGravity({ parts: all });
        const moved = all.map((p) => ({ mass: 1000 * p.mass, position: p.position + shift }));
        expect(centerOfGravity({ parts: moved })).toBeCloseTo(at + shift, 8);
      }),
    );
  });

  it('is that of its halves, each as one part', () => {
    fc.assert(
      fc.property(parts, parts, (left, right) => {
        const whole = (list: typeof left) => ({
          mass: list.reduce((sum, p) => sum + p.mass, 0),
          position: centerOfGravity({ parts: list }),
        });
        const both = centerOfGravity({ parts: [...left, ...right] });
        expect(centerOfGravity({ parts: [whole(left), whole(right)] })).toBeCloseTo(both, 8);
      }),
    );
  });

  it('is asked of at least one part', () => {
    expect(() => centerOfGravity({ parts: [] })).toThrow(RangeError);
  });
});
