import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import '../property-seed.ts';
import { type PartFacts, reckonPart, reckonStructure } from '#app/planning/ledger/reckon.ts';
import type { StructurePart } from '#shared/record/structure.ts';

const part = (more: Partial<StructurePart> = {}): StructurePart => ({
  id: 'boom',
  name: 'Boom',
  plan: 'plan-boom',
  quantity: 2,
  budget: 0.25,
  builds: [],
  ...more,
});
const made = (mass: number | undefined, more = {}) => ({
  build: `build-${mass}`,
  title: 'Boom no. 1',
  ...(mass !== undefined && { mass }),
  ...more,
});

describe('one part of a structure', () => {
  it('is what is weighed, and the rest by plan', () => {
    const sum = reckonPart({ part: part(), planned: 0.24, made: [made(0.262)] });
    expect(sum).toMatchObject({ actual: 0.262, weighed: 1, toGo: 1, budget: 0.5, planned: 0.48 });
    expect(sum.expected).toBeCloseTo(0.502, 12);
    expect(sum.over).toBeCloseTo(0.002, 12);
  });

  it('says where its weight went: film left in, resin over plan, and the rest', () => {
    const sum = reckonPart({
      part: part(),
      planned: 0.24,
      made: [made(0.262, { filmLeft: 0.004, resinOver: 0.011 })],
    });
    expect([sum.film, sum.resin]).toEqual([0.004, 0.011]);
    expect(sum.other).toBeCloseTo(0.007, 12);
  });

  it('holds what was made against the plan of its time, and what is to go against today’s', () => {
    const sum = reckonPart({ part: part(), planned: 0.2, made: [made(0.262, { planned: 0.25 })] });
    expect(sum).toMatchObject({ plannedThen: 0.25, planned: 0.45 });
    expect(sum.expected).toBeCloseTo(0.462, 12);
    expect(sum.other).toBeCloseTo(0.012, 12);
  });

  it('counts a tube that is assigned and not weighed as still to go', () => {
    expect(reckonPart({ part: part(), planned: 0.24, made: [made(undefined)] })).toMatchObject({
      weighed: 0,
      toGo: 2,
      expected: 0.48,
    });
  });

  it('that is no tube is weighed once for all its pieces', () => {
    const { plan: _, ...fitting } = part({ weighed: 0.03 });
    expect(reckonPart({ part: fitting, made: [] })).toMatchObject({ actual: 0.06, weighed: 2, toGo: 0 });
  });

  it('that nothing is known of has no weight, instead of none', () => {
    expect(reckonPart({ part: part(), made: [] })).not.toHaveProperty('expected');
  });

  it('that was made more often than planned counts every one', () => {
    const three = [made(0.2), made(0.21), made(0.22)];
    const sum = reckonPart({ part: part(), planned: 0.2, made: three });
    expect(sum.toGo).toBe(0);
    expect(sum.expected).toBeCloseTo(0.63, 12);
  });
});

describe('a whole structure', () => {
  const boom: PartFacts = { part: part({ quantity: 1, position: 1 }), planned: 0.24, made: [made(0.26)] };
  const mast: PartFacts = {
    part: part({ id: 'mast', name: 'Mast', quantity: 1, budget: 0.5, position: 3 }),
    planned: 0.52,
    made: [],
    saved: 0.08,
  };

  it('has left of its budget what is neither weighed nor to go', () => {
    const sum = reckonStructure({ budget: 0.9, parts: [boom, mast] });
    expect(sum).toMatchObject({ actual: 0.26, budget: 0.9 });
    expect(sum.toGo).toBeCloseTo(0.52, 12);
    expect(sum.left).toBeCloseTo(0.12, 12);
  });

  it('takes the budgets of its parts where it has none, once each of them has one', () => {
    expect(reckonStructure({ parts: [boom, mast] }).budget).toBeCloseTo(0.75, 12);
    const { budget: _, ...without } = mast.part;
    expect(reckonStructure({ parts: [boom, { ...mast, part: without }] })).not.toHaveProperty('budget');
  });

  it('names the parts whose weight nobody knows', () => {
    const { planned: _, ...unknown } = mast;
    expect(reckonStructure({ parts: [boom, unknown] }).unknown).toEqual(['Mast']);
  });

  it('says what shaped walls saved as a share of what it would weigh without', () => {
    const sum = reckonStructure({ parts: [boom, mast] });
    expect(sum.saved).toBe(0.08);
    expect(sum.savedShare).toBeCloseTo(0.08 / 0.86, 12);
  });

  it('balances where its placed parts do, and says what is not placed', () => {
    const fitting = {
      part: { id: 'f', name: 'Foot', quantity: 1, planned: 0.05, builds: [] },
      planned: 0.05,
      made: [],
    };
    const sum = reckonStructure({ parts: [boom, mast, fitting] });
    expect(sum.balance).toBeCloseTo((0.26 * 1 + 0.52 * 3) / 0.78, 12);
    expect(sum.notPlaced).toEqual(['Foot']);
  });

  const facts = fc.array(
    fc.record({
      quantity: fc.integer({ min: 1, max: 4 }),
      budget: fc.option(fc.double({ min: 0.01, max: 1, noNaN: true }), { nil: undefined }),
      planned: fc.double({ min: 0.01, max: 1, noNaN: true }),
      weights: fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), { maxLength: 5 }),
    }),
    { maxLength: 6 },
  );
  it('has every gram once: weighed and to go make what is expected, in any order of parts and builds', () => {
    fc.assert(
      fc.property(facts, (all) => {
        const parts = all.map(({ quantity, budget, planned, weights }, i) => ({
          part: { id: `p${i}`, name: `P${i}`, plan: 'x', quantity, builds: [], ...(budget && { budget }) },
          planned,
          made: weights.map((mass) => made(mass)),
        }));
        const sum = reckonStructure({ budget: 2, parts });
        const back = [...parts].reverse().map((p) => ({ ...p, made: [...p.made].reverse() }));
        const again = reckonStructure({ budget: 2, parts: back });
        expect(sum.actual + sum.toGo).toBeCloseTo(sum.expected, 9);
        expect((sum.left ?? 0) + sum.expected).toBeCloseTo(2, 9);
        expect(again.expected).toBeCloseTo(sum.expected, 9);
      }),
    );
  });
});
