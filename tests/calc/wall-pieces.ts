import fc from 'fast-check';
import { type MandrelShape, type PieceSpec, type Roll, rollPieces, type Shape } from '#calc';

/** Common carbon cloth of 193 g/m2, laid by hand. */
export const carbon = { thickness: 0.0003, arealWeight: 0.193, density: 1800 };

const plain = { kind: 'cloth', start: 0, clock: 0, angle: 0, overlap: 0, ...carbon } as const;

export function straight(...pairs: readonly (readonly [at: number, value: number])[]): Shape {
  return { between: 'straight', stations: pairs.map(([at, value]) => ({ at, value })) };
}

export function cylinder(diameter: number, length: number): MandrelShape {
  return straight([0, diameter], [length, diameter]);
}

/** A piece of plies wanted, of common carbon unless told otherwise. */
export function plies(
  wraps: Shape,
  other: Partial<Omit<PieceSpec, 'wraps' | 'width' | 'wall'>> = {},
): PieceSpec {
  return { ...plain, ...other, wraps };
}

export function wide(
  width: Shape,
  other: Partial<Omit<PieceSpec, 'wraps' | 'width' | 'wall'>> = {},
): PieceSpec {
  return { ...plain, ...other, width };
}

export function rolledOn(diameter: number, length: number, ...pieces: readonly PieceSpec[]): Roll {
  return rollPieces({ mandrel: cylinder(diameter, length), pieces, length, step: 0.01, mayBeOpen: true });
}

/** Shapes a builder could draw, first station at 0. */
export function shapes(least: number, most: number, length = 3): fc.Arbitrary<Shape> {
  return fc
    .record({
      between: fc.constantFrom('straight', 'smooth', 'step'),
      steps: fc.array(fc.double({ min: 0.05, max: 1, noNaN: true }), { minLength: 1, maxLength: 11 }),
      values: fc.array(fc.double({ min: least, max: most, noNaN: true }), { minLength: 12, maxLength: 12 }),
    })
    .map(({ between, steps, values }) => {
      const whole = steps.reduce((sum, step) => sum + step, 0);
      let at = 0;
      const stations = [0, ...steps].map((step, k) => {
        at += step;
        return { at: k === steps.length ? length : (at / whole) * length, value: values[k] ?? least };
      });
      return { between, stations };
    });
}
