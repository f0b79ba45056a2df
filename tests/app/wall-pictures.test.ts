import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { apart, sampleNear, turn, within } from '#app/planning/wall/pictures/angles.ts';
import { stretchOf } from '#app/planning/wall/pictures/flat-shape.tsx';
import { fitLabels } from '#app/planning/wall/pictures/labels.ts';
import { arcPath, onCircle } from '#app/planning/wall/pictures/rings.ts';
import { linear, ticksToEnd } from '#app/planning/wall/pictures/scale.ts';
import { linePath, thinned } from '#app/planning/wall/pictures/thin-line.ts';
import { handleAt } from '#app/planning/wall/station-drag.ts';
import { rollOf } from '#app/planning/wall/wall-model.ts';
import { lowerMastPlies, pieceOf, shape, shelf, wallOf } from './wall-of.ts';

describe('labels of a picture', () => {
  const label = fc.record({
    x: fc.double({ min: -20, max: 340, noNaN: true }),
    text: fc.string({ minLength: 1, maxLength: 12 }),
    weight: fc.integer({ min: 0, max: 3 }),
  });

  test('never lie on each other nor outside, at 320 px', () => {
    fc.assert(
      fc.property(fc.array(label, { maxLength: 40 }), fc.integer({ min: 1, max: 3 }), (labels, rows) => {
        const placed = fitLabels(labels, { from: 0, to: 288, rows });
        for (const p of placed) {
          expect(p.left).toBeGreaterThanOrEqual(0);
          expect(p.left + p.width).toBeLessThanOrEqual(288 + 1e-9);
          const others = placed.filter((o) => o !== p && o.row === p.row);
          for (const o of others) {
            expect(p.left + p.width <= o.left || o.left + o.width <= p.left).toBe(true);
          }
        }
      }),
    );
  });

  test('keep the heaviest where two do not fit', () => {
    const two = [
      { x: 100, text: '472' },
      { x: 104, text: '948', weight: 1 },
    ];
    expect(fitLabels(two, { from: 0, to: 288, rows: 1 }).map((p) => p.text)).toEqual(['948']);
    expect(fitLabels(two, { from: 0, to: 288, rows: 2 })).toHaveLength(2);
  });
});

describe('figures along the foot', () => {
  test('end evenly where they can', () => {
    expect(ticksToEnd('length', 2.4, 4).map((t) => t.label)).toEqual(['0', '600', '1200', '1800', '2400']);
  });

  test('show the end besides where they cannot', () => {
    const ticks = ticksToEnd('length', 1.905, 4);
    expect(ticks.at(-1)).toEqual({ si: 1.905, label: '1905' });
    expect(ticks.slice(0, -1).map((t) => t.label)).toEqual(['0', '500', '1000', '1500']);
  });
});

describe('a thinned line', () => {
  test('stays within a third of a pixel of all its points, jumps and all', () => {
    const step = fc.tuple(
      fc.double({ min: 0, max: 2, noNaN: true }),
      fc.double({ min: -3, max: 3, noNaN: true }),
    );
    fc.assert(
      fc.property(fc.array(step, { minLength: 2, maxLength: 200 }), (steps) => {
        const xs = [0];
        const ys = [0];
        steps.forEach(([dx, y], i) => {
          // Every fifth step goes straight up or down.
          xs.push((xs[i] ?? 0) + (i % 5 === 4 ? 0 : dx + 0.01));
          ys.push(y);
        });
        const kept = thinned(xs, ys);
        for (let k = 1; k < kept.length; k += 1) {
          const [a, b] = [kept[k - 1] ?? 0, kept[k] ?? 0];
          const line = linear(xs[a] ?? 0, xs[b] ?? 0, ys[a] ?? 0, ys[b] ?? 0);
          for (let i = a + 1; i < b; i += 1) {
            if (xs[i] === xs[a] || xs[i] === xs[b]) continue;
            expect(Math.abs(line(xs[i] ?? 0) - (ys[i] ?? 0))).toBeLessThan(0.301);
          }
        }
        expect(kept[0]).toBe(0);
        expect(kept.at(-1)).toBe(xs.length - 1);
      }),
    );
  });

  test('of a straight one is its two ends', () => {
    const xs = Array.from({ length: 2400 }, (_, i) => i / 8);
    expect(
      thinned(
        xs,
        xs.map((x) => 10 + x / 3),
      ),
    ).toEqual([0, 2399]);
    expect(linePath([0, 10], [5, 5])).toBe('M0 5L10 5');
  });

  test('keeps both ends of a jump', () => {
    expect(thinned([0, 1, 2, 2, 3], [0, 0, 0, 9, 9])).toEqual([0, 2, 3, 4]);
  });

  test('of nothing is nothing, and of one point that point', () => {
    expect(thinned([], [])).toEqual([]);
    expect(thinned([1], [1])).toEqual([0]);
  });
});

describe('a long narrow piece', () => {
  test('is drawn wider than long until it can be read, and no higher than its room', () => {
    expect(stretchOf(300 / 2.4, 0.948, 110)).toBe(1);
    expect(stretchOf(300 / 12, 0.2, 110)).toBe(15);
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 12, noNaN: true }),
        fc.double({ min: 0.05, max: 1.2, noNaN: true }),
        (length, across) => {
          const factor = stretchOf(300 / length, across, 110);
          expect(factor === 1 || across * (300 / length) * factor <= 110).toBe(true);
        },
      ),
    );
  });
});

describe('angles', () => {
  test('come back into one turn', () => {
    expect(within(-Math.PI / 2)).toBeCloseTo(1.5 * Math.PI, 12);
    expect(within(5 * turn)).toBeCloseTo(0, 12);
    expect(apart(0.1, turn - 0.1)).toBeCloseTo(0.2, 12);
  });

  test('stand at the top for 0 and go clockwise', () => {
    expect(onCircle(10, 0)).toEqual({ x: 0, y: -10 });
    expect(onCircle(10, Math.PI / 2).x).toBeCloseTo(10, 2);
    expect(arcPath(10, 0, turn).match(/A/g)).toHaveLength(2);
  });

  test('a place finds its sample, after a jump where there are two', () => {
    const sleeve = pieceOf(
      shape([
        [0, 1],
        [0.2, 1],
      ]),
      { start: 0.5 },
    );
    const roll = rollOf(wallOf([pieceOf(lowerMastPlies), sleeve]), shelf);
    const i = sampleNear(roll, 0.7);
    expect(roll.at[i]).toBeCloseTo(0.7, 9);
    expect(roll.before[i]).toBe(0);
    expect(sampleNear(roll, 0)).toBe(0);
    expect(sampleNear(roll, 2.4)).toBe(roll.at.length - 1);
  });
});

describe('a thumb on the picture', () => {
  const handles = [
    { x: 100, y: 50 },
    { x: 107, y: 50 },
    { x: 300, y: 50 },
  ];

  test('takes the nearest handle, but of two close ones the chosen', () => {
    expect(handleAt(handles, { x: 106, y: 60 }, 2)).toBe(1);
    expect(handleAt(handles, { x: 106, y: 60 }, 0)).toBe(0);
  });

  test('that is on none takes none', () => {
    expect(handleAt(handles, { x: 200, y: 50 }, 0)).toBeUndefined();
  });
});
