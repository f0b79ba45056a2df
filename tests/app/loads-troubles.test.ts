import { describe, expect, test } from 'vitest';
import { mixedUnits, unitsOf } from '#app/planning/loads/mixed-units.ts';
import { beamLoad, supportsOfPlan } from '#app/planning/loads/of-plan.ts';
import { loadTroublesOf } from '#app/planning/loads/troubles.ts';
import { troublesOf } from '#app/planning/loads/troubles-of.ts';
import { beamColumn } from '#calc';
import type { LoadPlan, LoadRecord } from '#shared/record/load-plan.ts';
import { caseOfLoads, foot, force, rest, sleeve, tipPulled } from './loads-of.ts';
import { pieceOf, shape, shelf, wallOf } from './wall-of.ts';

const length = 3;
const plain = (text: string) => text.replace(/\s/g, ' ');
const says = (loads: LoadPlan) => loadTroublesOf(loads, length).map((t) => plain(t.says));
const twist: LoadRecord = { id: 'twist', kind: 'torque', at: 3, torque: 12 };
const press: LoadRecord = { id: 'press', kind: 'axial', at: 3, force: -200 };
const two = [rest(0), rest(2)];
const { safetyFactor: _, ...noSafety } = tipPulled(length);
const { loadFactor: __, ...noFactor } = caseOfLoads([force(3, 50)]);

/** What is wrong, and the one sentence about it. */
const wrong: [what: string, loads: LoadPlan, sentence: string][] = [
  [
    'nothing holds it',
    tipPulled(length, { supports: [] }),
    'Nothing holds the tube yet: say where it is built in, or where it rests.',
  ],
  [
    'it would swing about its one rest',
    tipPulled(length, { supports: [rest(1)] }),
    'It rests at 1000 mm alone and would swing: add a second place, or build it in.',
  ],
  [
    'two supports are one',
    tipPulled(length, { supports: [foot, rest(0)] }),
    'Two supports lie on each other at 0 mm: move one of them, or take it out.',
  ],
  [
    'a support is off the tube',
    tipPulled(length, { supports: [foot, rest(3.2)] }),
    'The rest at 3200 mm is off the tube, which ends at 3000 mm: move it onto the tube.',
  ],
  [
    'a sleeve goes past its end',
    tipPulled(length, { supports: [sleeve(2.9, 0.3)] }),
    'The sleeve at 2900 to 3200 mm is off the tube, which ends at 3000 mm: move it onto the tube.',
  ],
  [
    'nothing keeps it from turning',
    tipPulled(length, { supports: two, cases: [caseOfLoads([twist])] }),
    'Gust twists the tube and no support keeps it from turning: build it in, or say which one holds it.',
  ],
  [
    'nothing keeps it from sliding',
    tipPulled(length, { supports: two, cases: [caseOfLoads([press])] }),
    'Gust pulls along the tube and no support keeps it from sliding: build it in, or say which one holds it.',
  ],
  [
    'two supports hold it along',
    tipPulled(length, {
      supports: [foot, rest(2, { holdsAxial: true })],
      cases: [caseOfLoads([press])],
    }),
    'Gust pulls along the tube and more than one support would hold that: let all but one slide.',
  ],
  ['there is no load', tipPulled(length, { cases: [] }), 'Nothing pulls on it yet: add the first load.'],
  [
    'a case is empty',
    tipPulled(length, { cases: [caseOfLoads([])] }),
    'Nothing pulls on it in Gust yet: add a load, or take the case out.',
  ],
  [
    'a load is off the tube',
    tipPulled(length, { cases: [caseOfLoads([force(3.1, 50)])] }),
    'The force of 50 N at 3100 mm in Gust is off the tube, which ends at 3000 mm: move it, or make the tube longer.',
  ],
  [
    'a spread load ends where it begins',
    tipPulled(length, {
      cases: [caseOfLoads([{ id: 's', kind: 'spread', from: 1, to: 1, atFrom: 5, atTo: 5 }])],
    }),
    'Spread load at 1000 mm in Gust is spread over no length: let it end farther on.',
  ],
  [
    'a spread load ends before it begins',
    tipPulled(length, {
      cases: [caseOfLoads([{ id: 's', kind: 'spread', from: 2, to: 1, atFrom: 5, atTo: 5 }])],
    }),
    'Spread load from 2000 to 1000 mm in Gust ends before it begins: write its places from end 0 on.',
  ],
  [
    'there is no load factor',
    tipPulled(length, { cases: [noFactor] }),
    'Gust has no load factor: write how many times these loads it may meet, 1 for no more than them.',
  ],
  ['there is no safety factor', noSafety, 'There is no safety factor: nothing is checked until you set it.'],
  [
    'the safety factor is below 1',
    tipPulled(length, { safetyFactor: 0.8 }),
    'A safety factor below 1 counts on a tube that has failed: write 1 or more.',
  ],
];

describe('what keeps a tube from being checked', () => {
  test('a tube built in at its foot with a load at its tip has nothing wrong', () => {
    expect(says(tipPulled(length))).toEqual([]);
  });

  for (const [what, loads, sentence] of wrong) {
    test(`is told in one sentence where ${what}`, () => {
      expect(says(loads)).toContain(sentence);
    });
  }

  test('comes with words for a press and an address, and what is only missing is told apart', () => {
    const [first, second, third] = loadTroublesOf({ supports: [], cases: [] }, length);
    expect([first?.missing, second?.missing, third?.missing]).toEqual([true, true, true]);
    expect([first?.to, second?.to, third?.to]).toEqual(['/support/new', '/case/first/new', '/asked']);
    const [off] = loadTroublesOf(tipPulled(length, { cases: [caseOfLoads([force(3.1, 50)])] }), length);
    expect(off).toMatchObject({ to: '/case/gust/force-3.1', act: 'Put the load right' });
    expect(off?.missing).toBeUndefined();
  });

  test('a rest that was told to hold twist and sliding does', () => {
    const supports = [rest(0, { holdsTwist: true, holdsAxial: true }), rest(2)];
    expect(says(tipPulled(length, { supports, cases: [caseOfLoads([twist, press])] }))).toEqual([]);
  });

  test('whatever is let through is taken by the computation', () => {
    const supports = [
      [foot],
      two,
      [sleeve(0, 0.5)],
      [rest(0, { holdsTwist: true, holdsAxial: true }), rest(2)],
      [foot, rest(3)],
    ];
    const loads = [[force(3, 50)], [twist], [press], [force(0, -20), twist, press]];
    let taken = 0;
    for (const held of supports) {
      for (const pulled of loads) {
        const plan = tipPulled(length, { supports: held, cases: [caseOfLoads(pulled)] });
        const stations = [0, 3].map((at) => ({ at, ei: 2000, gj: 800 }));
        const reckon = () =>
          beamColumn({
            stations,
            supports: supportsOfPlan(plan),
            loads: pulled.map(beamLoad),
            loadFactor: 1,
          });
        if (says(plan).length === 0) {
          expect(reckon).not.toThrow();
          taken += 1;
        } else expect(reckon).toThrow(/supports/);
      }
    }
    expect(taken).toBeGreaterThan(10);
  });
});

describe('what the wall keeps from being checked', () => {
  const even = shape([
    [0, 2],
    [2.4, 2],
  ]);
  const plan = { ...wallOf([pieceOf(even)]), loads: tipPulled(2.4) };

  test('nothing, where its cloth is known', () => {
    expect(troublesOf('plan-1', plan, shelf)).toEqual([]);
  });

  test('a cloth that nobody knows the stiffness of leads to that cloth', () => {
    const unknown = {
      ...shelf,
      cloth: (id: string | undefined) => {
        const cloth = shelf.cloth(id);
        return cloth && { ...cloth, fiber: 'other' as const };
      },
    };
    const [first] = troublesOf('plan-1', plan, unknown);
    expect(first?.says).toMatch(/^Nobody knows how stiff .* is\. Its fiber is none of the usual ones\./);
    expect(first?.to).toMatch(/^\/shelf\/cloth\//);
  });

  test('a tube that is open somewhere leads to its wall', () => {
    const open = {
      ...wallOf([
        pieceOf(
          shape([
            [0, 2],
            [1, 2],
          ]),
        ),
      ]),
      loads: tipPulled(2.4),
    };
    const [first] = troublesOf('plan-1', open, shelf);
    expect(first?.to).toBe('/plan/plan-1/wall');
    expect(first?.says).toContain('Less than one ply of cloth goes all round there');
  });
});

describe('pounds beside newtons', () => {
  test('are told apart by how they were written, with their units or none', () => {
    expect(unitsOf('20 lbf')).toBe('pounds');
    expect(unitsOf('12 ft lb')).toBe('pounds');
    expect(unitsOf('60 N/m, 20 N/m')).toBe('newtons');
    expect(unitsOf('20')).toBeUndefined();
    expect(unitsOf(undefined)).toBeUndefined();
  });

  test('in one case are asked about with both figures, alone they are not', () => {
    const pounds = force(3, 266.893, { typed: '60 lbf' });
    const newtons = force(1, 40, { typed: '40 N' });
    const both = mixedUnits(caseOfLoads([pounds, newtons]));
    expect(plain(both ?? '')).toBe(
      'In Gust the force at 3000 mm was written as 60 lbf, which is 266.9 N; the force at 1000 mm was written as 40 N: check that both are meant.',
    );
    expect(mixedUnits(caseOfLoads([pounds]))).toBeUndefined();
    expect(mixedUnits(caseOfLoads([newtons, force(2, 30)]))).toBeUndefined();
  });
});
