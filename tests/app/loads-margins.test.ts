import { describe, expect, test } from 'vitest';
import { greatest, reactionRows, sayAt } from '#app/planning/loads/line-series.ts';
import { linesOf, marginsOfPlan } from '#app/planning/loads/margins-of-plan.ts';
import { failingOf, leastOf, marginWords, rulingsOf, rulingWords } from '#app/planning/loads/ruling.ts';
import { farthest, shearFlow } from '#app/planning/loads/station-margins.ts';
import { beamLine, type CheckName, clampCrush, tubeChecks } from '#calc';
import type { LoadPlan } from '#shared/record/load-plan.ts';
import { caseOfLoads, foot, force, tipPulled } from './loads-of.ts';
import { pieceOf, shape, shelf, wallOf } from './wall-of.ts';

const plain = (text: string) => text.replace(/\s/g, ' ');
const even = shape([
  [0, 4],
  [2.4, 4],
]);
const planWith = (loads: LoadPlan) => ({ ...wallOf([pieceOf(even)]), loads });

function checkedOf(loads: LoadPlan, from = shelf) {
  const found = marginsOfPlan('plan-1', planWith(loads), from);
  if (!found.ok) throw new Error(found.troubles.map((t) => t.says).join(' '));
  return found.checked;
}

/** Stations that are ruled as told, every 100 mm. */
const ruled = (...of: [CheckName, number][]) => ({
  stations: of.map(([check, margin], i) => ({
    at: i / 10,
    of: 0,
    least: { check, margin, reserve: margin + 1 },
  })),
});

describe('which check rules, in words', () => {
  test('a check that rules all along needs no places', () => {
    const [only] = rulingsOf(ruled(['ovalization', 1], ['ovalization', 0.5], ['ovalization', 2]));
    expect(only && rulingWords(only, 0.2)).toBe('Ovalization rules all along.');
    expect(only?.margin).toBe(0.5);
  });

  test('several are told from where to where, without a gap', () => {
    const rulings = rulingsOf(
      ruled(
        ['largest stress', 0.4],
        ['Tsai-Wu', 0.3],
        ['wall buckling', 0.2],
        ['wall buckling', 0.6],
        ['ovalization', 30],
      ),
    );
    expect(rulings.map((r) => plain(rulingWords(r, 0.4)))).toEqual([
      'Between 0 and 200 mm stress in a ply rules.',
      'Between 200 and 400 mm wall buckling rules.',
    ]);
  });

  test('where nothing comes near, no check is blamed', () => {
    const rulings = rulingsOf(ruled(['wall buckling', 2], ['wall buckling', 40], ['ovalization', 1e6]));
    expect(rulings.map((r) => plain(rulingWords(r, 0.2)))).toEqual([
      'Between 0 and 100 mm wall buckling rules.',
      'Between 100 and 200 mm nothing comes near to what the wall bears.',
    ]);
  });

  test('a margin is signed, and one just below 0 never reads as if it held', () => {
    expect(marginWords(0)).toBe('+0.00');
    expect(marginWords(0.424)).toBe('+0.42');
    expect(marginWords(-0.153)).toBe('−0.15');
    expect(marginWords(-0.001)).toBe('−0.01');
    expect(marginWords(1e6)).toBe('over 99');
  });

  test('where it does not hold are its stretches below 0', () => {
    const { stations } = ruled(
      ['ovalization', -0.1],
      ['ovalization', -0.2],
      ['ovalization', 0.1],
      ['ovalization', -0.3],
    );
    expect(failingOf(stations)).toEqual([
      { from: 0, to: 0.1 },
      { from: expect.closeTo(0.3, 9), to: expect.closeTo(0.3, 9) },
    ]);
  });
});

describe('the margins of a plan', () => {
  test('are what the computation finds for its tube, supports and cases', () => {
    const loads = tipPulled(2.4);
    const { sections, checks } = checkedOf(loads);
    const direct = tubeChecks({
      stations: sections,
      supports: [{ kind: 'clamp', at: 0 }],
      cases: [{ loads: [{ kind: 'point', at: 2.4, force: 50 }], loadFactor: 1 }],
      safetyFactor: 2,
      freeLength: 2.4,
    });
    expect(leastOf(checks)).toEqual(leastOf(direct));
    expect(leastOf(checks)?.at).toBe(0);
  });

  test('halve with the load, and the reserve with the safety factor', () => {
    const one = leastOf(checkedOf(tipPulled(2.4)).checks)?.margin ?? 0;
    const more = leastOf(
      checkedOf(tipPulled(2.4, { cases: [caseOfLoads([force(2.4, 100)])] })).checks,
    )?.margin;
    const safer = leastOf(checkedOf(tipPulled(2.4, { safetyFactor: 4 })).checks)?.margin;
    expect(more).toBeCloseTo((one + 1) / 2 - 1, 6);
    expect(safer).toBeCloseTo((one + 1) / 2 - 1, 6);
  });

  test('without strengths are of stiffness and buckling only', () => {
    const own = { fiberVolumeFraction: 0.35, e1: 60e9, e2: 6e9, g12: 2.5e9, nu12: 0.3 };
    const unknown = {
      ...shelf,
      cloth: (id: string | undefined) => {
        const cloth = shelf.cloth(id);
        return cloth && { ...cloth, lamina: own };
      },
    };
    const { checks, tube } = checkedOf(tipPulled(2.4), unknown);
    expect(checks.strengthsKnown).toBe(false);
    expect(tube.withoutStrengths).toHaveLength(1);
    const names = new Set(checks.cases[0]?.stations.flatMap((s) => s.margins.map((m) => m.check)));
    expect([...names].sort()).toEqual(['ovalization', 'wall buckling']);
  });

  test('of what is missing there are none, only what to do', () => {
    const found = marginsOfPlan('plan-1', planWith({ supports: [foot], cases: [] }), shelf);
    expect(found.ok).toBe(false);
    expect(!found.ok && found.troubles[0]?.to).toBe('/plan/plan-1/loads/case/first/new');
  });

  test('past column buckling the column rules, and no line is drawn as if it held', () => {
    const press = { id: 'p', kind: 'axial', at: 2.4, force: -50_000 } as const;
    const loads = tipPulled(2.4, { cases: [caseOfLoads([force(2.4, 5), press])] });
    const { checks } = checkedOf(loads);
    expect(checks.cases[0]?.column.margin).toBeLessThan(-0.5);
    const [one] = loads.cases;
    expect(one && linesOf(planWith(loads), one, shelf)?.buckles).toBe(true);
  });
});

describe('shear round the tube', () => {
  test('is V/(pi R) and T/(2 pi R^2) at the neutral axis', () => {
    const [first] = checkedOf(tipPulled(2.4)).sections;
    if (!first) throw new Error('no section');
    const { section } = first;
    const r = section.radius;
    expect(shearFlow(section, { moment: 0, shear: -100, torque: 0, axial: 0 })).toBeCloseTo(
      100 / Math.PI / r,
      6,
    );
    expect(shearFlow(section, { moment: 9, shear: 0, torque: 12, axial: 3 })).toBeCloseTo(
      12 / (2 * Math.PI * r * r),
      6,
    );
  });
});

describe('fittings', () => {
  const clamp = { id: 'c', kind: 'clamp', name: 'Band', at: 1, width: 0.05, force: 200 } as const;
  const bond = {
    id: 'b',
    kind: 'bond',
    name: 'Ferrule',
    at: 2.3,
    length: 0.05,
    glue: 0.0003,
    shearModulus: 1e9,
    shearStrength: 20e6,
    modulus: 70e9,
    wall: 0.0015,
    force: 2000,
  } as const;

  test('a clamp has the margin of what it crushes, by the safety factor', () => {
    const { fittings, tube, sections } = checkedOf(tipPulled(2.4, { fittings: [clamp] }));
    const near = sections.find(({ at }) => at >= 1);
    if (!near || tube.length !== 2.4) throw new Error('no section');
    const { reserve } = clampCrush({ section: near.section, force: 200, width: 0.05 });
    expect(fittings[0]?.margin).toBeCloseTo((reserve ?? 0) / 2 - 1, 6);
  });

  test('a bond longer than useful peaks no less, and a twist adds to a pull square to it', () => {
    const checks = (change: object) => {
      const [check] = checkedOf(tipPulled(2.4, { fittings: [{ ...bond, ...change }] })).fittings;
      if (!check || !('peak' in check)) throw new Error('no bond');
      return check;
    };
    const enough = checks({ length: checks({}).usefulLength });
    const twice = checks({ length: 2 * checks({}).usefulLength });
    expect(twice.peak / enough.peak).toBeGreaterThan(0.985);
    const pull = checks({});
    const turn = checks({ force: 0, torque: 20 });
    expect(checks({ torque: 20 }).peak).toBeCloseTo(Math.hypot(pull.peak, turn.peak), 0);
  });
});

describe('lines along the tube', () => {
  const solution = beamLine({
    stations: [
      { at: 0, ei: 2000, gj: 800 },
      { at: 3, ei: 2000, gj: 800 },
    ],
    supports: [
      { kind: 'rest', at: 0 },
      { kind: 'rest', at: 3 },
    ],
    loads: [{ kind: 'point', at: 1.5, force: 100 }],
    loadFactor: 1,
  });

  test('the greatest moment of a pole on two rests is F L/4 in its middle', () => {
    const most = greatest(solution.at, solution.moment);
    expect(most.at).toBeCloseTo(1.5, 9);
    expect(Math.abs(most.value)).toBeCloseTo(75, 9);
  });

  test('the shear under a force is told before and after it', () => {
    expect(plain(sayAt(solution, 'shear', 1.5))).toMatch(/^−?50 N, then −?50 N$/);
    expect(plain(sayAt(solution, 'moment', 0))).toBe('0 N·m');
  });

  test('the rests give back half of it each', () => {
    expect(reactionRows(solution).map((row) => row.map(plain))).toEqual([
      ['0 mm', '−50 N'],
      ['3000 mm', '−50 N'],
    ]);
  });

  test('it goes farthest aside in its middle, by F L^3/(48 E I)', () => {
    const { at, far } = farthest(solution);
    expect(at).toBeCloseTo(1.5, 9);
    expect(far).toBeCloseTo((100 * 27) / (48 * 2000), 9);
  });
});
