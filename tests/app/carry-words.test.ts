import { beforeEach, describe, expect, test } from 'vitest';
import {
  alongQuantities,
  besidesWords,
  rough,
  softnessOf,
  softnessWords,
} from '#app/planning/along/along-quantities.ts';
import { assumedWords, knownWords, stopWords } from '#app/planning/carry/carry-words.ts';
import { sectionsAlong } from '#app/planning/carry/sections-along.ts';
import { type Tube, tubeOfPlan } from '#app/planning/carry/tube-of-plan.ts';
import type { WallShelf } from '#app/planning/wall/wall-model.ts';
import { settings } from '#app/state/settings.ts';
import type { Cloth } from '#shared/record/cloth.ts';
import type { Plan } from '#shared/record/plan.ts';
import { handbookLaminas } from '#shared/reference/strengths.ts';
import { carbon, pieceOf, shape, shelf, wallOf } from './wall-of.ts';

const cloth = shelf.cloth(carbon);
if (!cloth) throw new Error('no carbon on the shelf');

const even = (plies: number, to = 2.4) =>
  shape([
    [0, plies],
    [to, plies],
  ]);

const shelfWith = (change: Partial<Cloth>): WallShelf => ({
  ...shelf,
  cloth: (id) => (id === carbon ? { ...cloth, ...change } : shelf.cloth(id)),
});

function tubeOf(plan: Plan, from = shelf): Tube {
  const found = tubeOfPlan(plan, from);
  if (!found.ok) throw new Error(found.stops.map((s) => s.why).join());
  return found.tube;
}

const stopped = (plan: Plan, from = shelf) => {
  const found = tubeOfPlan(plan, from);
  return found.ok ? [] : found.stops.map(stopWords);
};

const units = (to: 'metric' | 'inchPound') => {
  settings.value = { ...settings.value, units: to };
};

beforeEach(() => units('metric'));

describe('figures along a tube', () => {
  test('are told in three figures, in the units of the shop', () => {
    expect(rough(5128.4, 'stiffness')).toEqual({ figure: '5130', unit: 'N·m²' });
    expect(rough(8.456, 'stiffness').figure).toBe('8.46');
    units('inchPound');
    // 1 N m2 is 348.46 lbf in2 (NIST SP 811)
    expect(rough(1000, 'stiffness')).toEqual({ figure: '348000', unit: 'lbf·in²' });
  });

  test('measure how it gives against the thicker end, whichever that is', () => {
    const thick = tubeOf(
      wallOf([
        pieceOf(
          shape([
            [0, 2],
            [2.4, 4],
          ]),
        ),
      ]),
    );
    const sections = sectionsAlong(thick);
    const softness = softnessOf(sections);
    const [first, last] = [sections[0]?.section, sections.at(-1)?.section];
    if (!first || !last) throw new Error('no sections');
    expect(softness(last)).toBeCloseTo(1, 12);
    // Rings of twice the wall are about eight times as stiff: t^3 (Roark, circular rings)
    expect(softness(first)).toBeGreaterThan(6);
    expect(softness(first)).toBeLessThan(9);
    expect(softnessWords(softness(first), sections)).toBe('that of the far end, so softer');
    expect(besidesWords('squeezed', last, { sections, mass: undefined })).toBe('that of the far end');
  });

  test('are never below what is told to be the least', () => {
    const sections = sectionsAlong(
      tubeOf(
        wallOf([
          pieceOf(
            shape([
              [0, 3.5],
              [2.4, 1.2],
            ]),
          ),
        ]),
      ),
    );
    for (const of of Object.values(alongQuantities(sections)))
      for (const { section } of sections) {
        const least = of.least(section) ?? Number.NaN;
        expect(least).toBeGreaterThan(0);
        if (of.most) expect(of.most(section)).toBeGreaterThanOrEqual(least);
      }
  });
});

describe('what was assumed', () => {
  test('is said once each, and whose figure the knockdown is', () => {
    const plan = wallOf([pieceOf(even(2)), pieceOf(even(1))]);
    const says = assumedWords(tubeOf(plan));
    expect(new Set(says).size).toBe(says.length);
    expect(says[0]).toBe(`${cloth.name}: a handbook’s figures, typical, not for design.`);
    expect(says.join(' ')).toMatch(/65\s% is kept, common practice/);
    const loads = { supports: [], cases: [], compressionKept: 0.8 };
    expect(assumedWords(tubeOf({ ...plan, loads })).join(' ')).toMatch(/80\s% is kept, as the plan says/);
  });

  test('leaves out what nobody had to assume', () => {
    const { strengths: _, ...stiff } = handbookLaminas.glass;
    const says = assumedWords(
      tubeOf(wallOf([pieceOf(even(2))]), shelfWith({ weave: 'unidirectional', lamina: stiff })),
    ).join(' ');
    expect(says).toContain('stiffness and buckling only');
    expect(says).not.toMatch(/handbook|Woven|is kept/);
  });

  test('says that no wall is drawn', () => {
    const { wall: _, ...plan } = wallOf([]);
    expect(assumedWords(tubeOf(plan)).join(' ')).toContain('No wall is drawn');
  });
});

describe('what keeps a tube from being reckoned', () => {
  test('is said with where it is put right', () => {
    const other = shelfWith({ fiber: 'other', name: 'Flax' });
    expect(stopped(wallOf([pieceOf(even(2))]), other)).toEqual([
      {
        title: 'Nobody knows how stiff Flax is',
        says: expect.stringContaining('Write down its stiffness on the shelf'),
        cloth: carbon,
      },
    ]);
    expect(stopped(wallOf([pieceOf(even(2, 2))]))[0]?.title).toMatch(/^The tube is open at 200\d\smm/);
    expect(stopped(wallOf([pieceOf(even(2), { thickness: 0.0001 })]))[0]?.title).toContain(
      'as thin as planned',
    );
    expect(stopped(wallOf([pieceOf(even(2), { material: 'gone' })]))[0]?.says).toContain(
      'not on the shelf any more',
    );
  });

  test('is seen on the shelf before that', () => {
    expect(knownWords(cloth)).toBe('Stiffness and strength: handbook’s, typical');
    expect(knownWords({ ...cloth, fiber: 'other' })).toBe('Not known: write what its data sheet says');
    const { strengths: _, ...stiff } = handbookLaminas.carbon;
    expect(knownWords({ ...cloth, lamina: stiff })).toBe('Stiffness only: your own');
  });
});
