import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  mirrorShape,
  type Shape,
  type StartingKind,
  sampleShape,
  scaleShape,
  shapeAt,
  startingShape,
} from '#calc';
import { shapes, straight } from './wall-pieces.ts';

const smooth = (...pairs: [number, number][]): Shape => ({ ...straight(...pairs), between: 'smooth' });
const step = (...pairs: [number, number][]): Shape => ({ ...straight(...pairs), between: 'step' });

describe('a shape along the tube', () => {
  it('goes through its stations; a step holds until the next one', () => {
    fc.assert(
      fc.property(shapes(0.5, 8), (shape) => {
        shape.stations.slice(0, -1).forEach(({ at, value }) => {
          expect(shapeAt({ shape, at })).toBeCloseTo(value, 12);
        });
        const end =
          shape.stations[shape.between === 'step' ? shape.stations.length - 2 : shape.stations.length - 1];
        expect(shapeAt({ shape, at: 3 })).toBe(end?.value);
      }),
    );
  });

  it('never goes past the two stations it is between', () => {
    fc.assert(
      fc.property(shapes(0.5, 8), fc.double({ min: 0, max: 3, noNaN: true }), (shape, at) => {
        const next = Math.max(
          1,
          shape.stations.findIndex((one) => one.at > at),
        );
        const [a, b] = [shape.stations[next - 1]?.value ?? 0, shape.stations[next]?.value ?? 0];
        const last = shape.stations.length - 1;
        if (at > (shape.stations[last]?.at ?? 0) - 1e-9) return;
        expect(shapeAt({ shape, at })).toBeGreaterThanOrEqual(Math.min(a, b));
        expect(shapeAt({ shape, at })).toBeLessThanOrEqual(Math.max(a, b));
      }),
    );
  });

  it('stays monotone when its stations are', () => {
    fc.assert(
      fc.property(shapes(0.5, 8), (drawn) => {
        const values = drawn.stations.map(({ value }) => value).sort((a, b) => b - a);
        const shape = {
          ...drawn,
          stations: drawn.stations.map(({ at }, k) => ({ at, value: values[k] ?? 0 })),
        };
        const read = sampleShape({ shape, from: 0, to: 3, step: 0.003 });
        const rises = read.filter((value, k) => value > (read[k - 1] ?? value) + 1e-12);
        expect([...rises]).toEqual([]);
      }),
    );
  });

  it('has no corner when it is smooth: over half the way its slope changes by half', () => {
    const shape = smooth([0, 6], [1, 5], [1.2, 2], [3, 1.9]);
    const steepest = (step: number): number => {
      const read = sampleShape({ shape, from: 0, to: 3, step });
      return read.reduce((most, b, k) => {
        const [a = b, c = b] = [read[k - 1], read[k + 1]];
        return k === 0 || k >= read.length - 2 ? most : Math.max(most, Math.abs(a - 2 * b + c) / step);
      }, 0);
    };
    expect(steepest(0.0005) / steepest(0.001)).toBeCloseTo(0.5, 2);
  });

  it('is what it is at its ends beyond them', () => {
    expect(shapeAt({ shape: straight([1, 5], [2, 3]), at: 0 })).toBe(5);
    expect(shapeAt({ shape: straight([1, 5], [2, 3]), at: 9 })).toBe(3);
  });

  it('is what comes after where it steps', () => {
    expect(shapeAt({ shape: step([0, 6], [1, 2], [3, 9]), at: 1 })).toBe(2);
    expect(shapeAt({ shape: step([0, 6], [1, 2], [3, 9]), at: 0.999 })).toBe(6);
    expect(shapeAt({ shape: step([0, 6], [1, 2], [3, 9]), at: 3 })).toBe(2);
  });

  it('is sampled at even steps with the end among them, and at one place when there is no way to go', () => {
    const shape = straight([0, 0], [1, 10]);
    expect([...sampleShape({ shape, from: 0, to: 1, step: 0.4 })]).toEqual([0, 4, 8, 10]);
    expect([...sampleShape({ shape, from: 0, to: 0.3, step: 0.1 })]).toHaveLength(4);
    expect([...sampleShape({ shape, from: 0.5, to: 0.5, step: 0.1 })]).toEqual([5]);
  });

  it('takes 200 stations', () => {
    const shape = smooth(
      ...Array.from({ length: 200 }, (_, k): [number, number] => [k * 0.06, 2 + Math.sin(k)]),
    );
    expect(shapeAt({ shape, at: 6 })).toBeCloseTo(2 + Math.sin(100), 12);
  });
});

describe('a shape that cannot be', () => {
  const at = (shape: Shape) => () => shapeAt({ shape, at: 0 });

  it('names the two stations that are out of order or on top of each other', () => {
    expect(at(straight([0, 1], [2, 1], [1, 1]))).toThrow(
      'stations[1].at must come before stations[2].at, got 2 m and 1 m',
    );
    expect(at(straight([0, 1], [2, 1], [2, 3]))).toThrow(
      'stations[1].at and stations[2].at must not be on top of each other, got 2 m for both',
    );
  });

  it('has fewer than two stations, or a way between them that is not known', () => {
    expect(at(straight([0, 1]))).toThrow('stations must be a list of at least 2, got 1');
    expect(at({ ...straight([0, 1], [1, 1]), between: 'wavy' as 'step' })).toThrow('between');
  });

  it('asks for a smooth curve through a step', () => {
    expect(at(smooth([0, 6], [1, 6], [1.0004, 2], [3, 2]))).toThrow(
      /stations\[1\].*stations\[2\].*0.4 mm.*no smooth/,
    );
    expect(at(smooth([0, 6], [1, 6], [1.0004, 6], [3, 2]))).not.toThrow();
    expect(at(straight([0, 6], [1, 6], [1.0004, 2], [3, 2]))).not.toThrow();
  });
});

describe('a shape turned round or drawn out', () => {
  it('is from one end what it was from the other', () => {
    fc.assert(
      fc.property(shapes(0.5, 8), fc.double({ min: 0, max: 3, noNaN: true }), (shape, at) => {
        if (shape.stations.some((one) => Math.abs(one.at - at) < 1e-6)) return;
        const turned = mirrorShape({ shape });
        expect(shapeAt({ shape: turned, at: 3 - at })).toBeCloseTo(shapeAt({ shape, at }), 9);
        expect(shapeAt({ shape: mirrorShape({ shape: turned }), at })).toBeCloseTo(shapeAt({ shape, at }), 9);
      }),
    );
  });

  it('is at the same share of another length what it was', () => {
    fc.assert(
      fc.property(
        shapes(0.5, 8),
        fc.double({ min: 0.1, max: 12, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (shape, length, share) => {
          if (shape.stations.some((one) => Math.abs(one.at / 3 - share) < 1e-6)) return;
          const scaled = scaleShape({ shape, length });
          expect(shapeAt({ shape: scaled, at: share * length })).toBeCloseTo(
            shapeAt({ shape, at: share * 3 }),
            6,
          );
        },
      ),
    );
  });

  it('is refused when it would put stations on top of each other', () => {
    expect(() => scaleShape({ shape: straight([0, 1], [0.001, 2], [10, 3]), length: 0.005 })).toThrow(
      'on top of',
    );
  });
});

describe('a starting shape', () => {
  const kinds: StartingKind[] = ['even', 'taper', 'fastThenSlow', 'slowThenFast', 'thickening', 'sleeve'];
  const of = (kind: StartingKind, at?: number) => startingShape({ kind, length: 3, thick: 6, thin: 2, at });

  it.each(kinds)('of kind %s goes from one end to the other, between thick and thin', (kind) => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 12, noNaN: true }),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (length, share) => {
          const shape = startingShape({ kind, length, thick: 6, thin: 2, at: share * length });
          expect(shape.stations[0]?.at).toBe(0);
          expect(shape.stations.at(-1)?.at).toBe(length);
          for (const value of sampleShape({ shape, from: 0, to: length, step: length / 100 })) {
            expect(value).toBeGreaterThanOrEqual(2);
            expect(value).toBeLessThanOrEqual(6);
          }
        },
      ),
    );
  });

  it('is what it is called', () => {
    const at = (kind: StartingKind) => [0, 0.6, 1.5, 2.4, 3].map((x) => shapeAt({ shape: of(kind), at: x }));
    expect(at('even')).toEqual([6, 6, 6, 6, 6]);
    expect(at('taper')[2]).toBe(4);
    expect(at('fastThenSlow')[2]).toBeLessThan(3.2);
    expect(at('slowThenFast')[2]).toBeGreaterThan(4.8);
    expect(at('thickening')).toEqual([2, 2, 6, 2, 2]);
    expect(at('sleeve')).toEqual([6, 6, 2, 2, 2]);
  });

  it('has no two stations in one place where a thickening fades out right at an end', () => {
    expect(of('thickening', 2.25).stations.map((one) => one.at)).toEqual([0, 1.5, 2.25, 3]);
    expect(of('thickening', 0.75).stations.map((one) => one.at)).toEqual([0, 0.75, 1.5, 3]);
    expect(of('sleeve', 2.85).stations.map((one) => one.at)).toEqual([0, 2.85, 3]);
  });

  it('has its middle where it is asked for, and is refused off the tube', () => {
    expect(shapeAt({ shape: of('thickening', 0.6), at: 0.6 })).toBe(6);
    expect(() => of('thickening', 3)).toThrow('at must be');
    expect(() => startingShape({ kind: 'bulb' as 'even', length: 3, thick: 6, thin: 2 })).toThrow('kind');
  });
});
