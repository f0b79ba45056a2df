import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { beamLoad, caseOf, casesOfPlan, reachOf, supportOf } from '#app/planning/loads/of-plan.ts';
import { beamLine } from '#calc';
import type { LoadRecord } from '#shared/record/load-plan.ts';
import { loadPlan, load as loadSchema, support as supportSchema } from '#shared/record/load-plan.ts';
import { caseOfLoads, foot, force, rest, sleeve, tipPulled } from './loads-of.ts';

const even = [
  { at: 0, ei: 2000, gj: 800 },
  { at: 3, ei: 2000, gj: 800 },
];

describe('what the plan says, as the computation takes it', () => {
  test('built in is a clamp, a rest a rest, a sleeve holds from its beginning to its end', () => {
    expect(supportOf(foot)).toEqual({ kind: 'clamp', at: 0 });
    expect(supportOf(rest(0.6))).toEqual({ kind: 'rest', at: 0.6 });
    expect(supportOf(sleeve(0.1, 0.3, { holdsAxial: true }))).toEqual({
      kind: 'sleeve',
      from: 0.1,
      to: 0.4,
      holdsAxial: true,
    });
  });

  test('a spread load, even or growing, and a table are one kind', () => {
    const growing: LoadRecord = { id: 'a', kind: 'spread', from: 0.5, to: 2, atFrom: 60, atTo: 20 };
    const table: LoadRecord = {
      id: 'b',
      kind: 'table',
      stations: [
        { at: 0.5, value: 60 },
        { at: 2, value: 20 },
      ],
    };
    const stations = [
      { at: 0.5, value: 60 },
      { at: 2, value: 20 },
    ];
    expect(beamLoad(growing)).toEqual({ kind: 'spread', stations });
    expect(beamLoad(table)).toEqual({ kind: 'spread', stations });
    expect(reachOf(growing)).toEqual(reachOf(table));
  });

  test('a spread twist comes to as much as its length takes up', () => {
    const twist: LoadRecord = { id: 'a', kind: 'spreadTorque', from: 1, to: 3, torque: 4 };
    const asked = caseOf(caseOfLoads([twist]));
    if (!asked) throw new Error('no load factor');
    const { torque } = beamLine({ stations: even, supports: [supportOf(foot)], ...asked });
    // 4 N m for each of 2 m, held at the foot
    expect(Math.abs(torque[0] ?? 0)).toBeCloseTo(8, 9);
  });

  test('above 0 goes down, to the far end and pulls: the tip goes aside by F L^3/(3 E I), and the foot is pulled', () => {
    const pull: LoadRecord = { id: 'a', kind: 'axial', at: 3, force: 70 };
    const asked = caseOf(caseOfLoads([force(3, 100), pull], { loadFactor: 2 }));
    if (!asked) throw new Error('no load factor');
    const { deflection, axial } = beamLine({ stations: even, supports: [supportOf(foot)], ...asked });
    expect(deflection.at(-1)).toBeCloseTo((200 * 27) / 6000, 9);
    expect(axial[0]).toBeCloseTo(140, 9);
  });

  test('there is no load factor to fall back on', () => {
    const { loadFactor: _, ...without } = caseOfLoads([force(3, 50)]);
    expect(caseOf(without)).toBeUndefined();
    expect(casesOfPlan(tipPulled(3, { cases: [caseOfLoads([]), without] }))).toBeUndefined();
    expect(casesOfPlan(tipPulled(3, { cases: [] }))).toBeUndefined();
    expect(casesOfPlan(tipPulled(3))).toHaveLength(1);
  });

  test('what a support holds besides and what was written stay through the gate', () => {
    const held = rest(0.6, { holdsTwist: true });
    const written = force(3, 266.9, { typed: '60 lbf' });
    expect(supportSchema.parse(held)).toEqual(held);
    expect(loadSchema.parse(written)).toEqual(written);
    const plan = tipPulled(3, { supports: [held], cases: [caseOfLoads([written])] });
    expect(loadPlan.parse(plan)).toEqual(plan);
  });

  test('every load reaches where its computation begins and ends', () => {
    const place = fc.double({ min: 0, max: 3, noNaN: true });
    fc.assert(
      fc.property(place, place, fc.double({ min: -500, max: 500, noNaN: true }), (a, b, value) => {
        const [from, to] = [Math.min(a, b), Math.max(a, b)];
        const made = beamLoad({ id: 'a', kind: 'spread', from, to, atFrom: value, atTo: -value });
        if (made.kind !== 'spread') throw new Error('another kind');
        expect(made.stations.map((s) => s.at)).toEqual([from, to]);
      }),
    );
  });
});
