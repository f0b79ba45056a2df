import { describe, expect, test } from 'vitest';
import { fittingDraft, fittingIsGood, fittingOfDraft } from '#app/planning/loads/fitting-draft.ts';
import { loadDraft, loadIsGood, loadOfDraft, reachProblem } from '#app/planning/loads/load-draft.ts';
import { withLoad, withoutLoad, withSupport } from '#app/planning/loads/loads-edits.ts';
import { supportDraft, supportIsGood, supportOfDraft } from '#app/planning/loads/support-draft.ts';
import type { LoadRecord } from '#shared/record/load-plan.ts';
import { caseOfLoads, foot, force, rest, tipPulled } from './loads-of.ts';

const tube = 3;
const plain = (text: string | undefined) => text?.replace(/\s/g, ' ');

describe('a load as it is typed', () => {
  test('takes pounds as well as newtons, and keeps what was written beside the newtons', () => {
    const draft = loadDraft(undefined, tube);
    draft.force.text.value = '9 lbf';
    const load = loadOfDraft(draft, 'a', tube);
    if (load?.kind !== 'point') throw new Error('no force');
    // 9 lbf at 4.4482216152605 N
    expect(load.force).toBeCloseTo(9 * 4.4482216152605, 9);
    expect(load).toMatchObject({ at: 3, typed: '9 lbf' });
  });

  test('that nobody changes stays as it was written', () => {
    const before = force(3, 40.0339945, { typed: '9 lbf' });
    expect(loadOfDraft(loadDraft(before, tube), before.id, tube)).toBe(before);
    const moved = loadDraft(before, tube);
    moved.at.text.value = '2 m';
    expect(loadOfDraft(moved, before.id, tube)).toMatchObject({ at: 2, force: 40.0339945 });
  });

  test('comes back from its draft as it went in, whatever its kind', () => {
    const loads: LoadRecord[] = [
      force(1, -30),
      { id: 'b', kind: 'axial', at: 3, force: -200 },
      { id: 'c', kind: 'spread', from: 0.5, to: 2, atFrom: 40, atTo: 40 },
      { id: 'd', kind: 'spread', from: 0, to: 3, atFrom: 40, atTo: -10 },
      { id: 'e', kind: 'torque', at: 2, torque: -8 },
      { id: 'f', kind: 'spreadTorque', from: 1, to: 3, torque: 4 },
      {
        id: 'g',
        kind: 'table',
        stations: [
          { at: 0, value: 10 },
          { at: 1, value: 30 },
          { at: 3, value: 0 },
        ],
      },
    ];
    for (const load of loads) {
      const { typed: _, ...made } = loadOfDraft(loadDraft(load, tube), load.id, tube) ?? {};
      expect(made).toEqual(load);
    }
  });

  test('off the tube is told with where the tube ends, and nothing is saved', () => {
    const draft = loadDraft(undefined, tube);
    draft.force.text.value = '40';
    draft.at.text.value = '3.2 m';
    expect(loadIsGood(draft)).toBe(false);
    expect(plain(draft.at.problem.value)).toBe(
      'That is off the tube, which goes from 0 to 3000 mm: write a place between.',
    );
    expect(loadOfDraft(draft, 'a', tube)).toBeUndefined();
  });

  test('that ends where it begins is told so', () => {
    const draft = loadDraft(undefined, tube);
    draft.kind.value = 'even';
    draft.even.text.value = '40 N/m';
    draft.from.text.value = '2 m';
    draft.to.text.value = '2 m';
    expect(reachProblem(draft)).toMatch(/^It ends where it begins/);
    expect(loadIsGood(draft)).toBe(false);
    draft.to.text.value = '2.5 m';
    expect(loadIsGood(draft)).toBe(true);
  });

  test('a table is kept from end 0 on, in whatever order it was written', () => {
    const draft = loadDraft(undefined, tube);
    draft.kind.value = 'table';
    const [first, second] = draft.stations.value;
    if (!first || !second) throw new Error('no stations');
    first.at.text.value = '2 m';
    first.value.text.value = '10';
    second.at.text.value = '1 m';
    second.value.text.value = '30';
    expect(loadOfDraft(draft, 'a', tube)).toMatchObject({
      stations: [
        { at: 1, value: 30 },
        { at: 2, value: 10 },
      ],
    });
  });
});

describe('supports and fittings as they are typed', () => {
  test('a second support begins as a rest at the end that nothing holds', () => {
    const begun = (...at: number[]) => {
      const others = at.map((place, i) => ({ id: `held-${i}`, holds: 'rests' as const, at: place }));
      const draft = supportDraft(undefined, tube, others);
      return [draft.holds.value, draft.at.si.value];
    };
    expect(begun()).toEqual(['builtIn', 0]);
    expect(begun(0)).toEqual(['rests', tube]);
    expect(begun(0, tube / 3)).toEqual(['rests', tube]);
    expect(begun(tube)).toEqual(['rests', 0]);
  });

  test('a sleeve needs its length, and what else it holds is kept', () => {
    const draft = supportDraft(undefined, tube);
    draft.holds.value = 'sleeve';
    expect(supportIsGood(draft)).toBe(false);
    draft.length.text.value = '300 mm';
    draft.holdsAxial.value = true;
    expect(supportIsGood(draft)).toBe(true);
    expect(supportOfDraft(draft, 's', tube)).toEqual({
      id: 's',
      holds: 'sleeve',
      at: 0,
      length: expect.closeTo(0.3, 12),
      holdsAxial: true,
    });
  });

  test('a clamp that does not squeeze is told so, and one without a name is called what it is', () => {
    const draft = fittingDraft(undefined, tube);
    draft.at.text.value = '1 m';
    draft.width.text.value = '40 mm';
    draft.squeeze.text.value = '0';
    expect(fittingIsGood(draft)).toBe(false);
    expect(draft.squeeze.problem.value).toMatch(/^Zero will not do here/);
    draft.squeeze.text.value = '400 N';
    expect(fittingIsGood(draft)).toBe(true);
    expect(fittingOfDraft(draft, 'c', tube)).toMatchObject({ kind: 'clamp', name: 'Clamp', force: 400 });
  });
});

describe('changes of what a plan carries', () => {
  test('supports stand from end 0 on, and the last one typed takes the place of the old', () => {
    const plan = withSupport(tipPulled(tube, { supports: [rest(2)] }), foot);
    expect(plan.supports.map((s) => s.at)).toEqual([0, 2]);
    const moved = withSupport(plan, { ...rest(2), at: 1 });
    expect(moved.supports.map((s) => s.at)).toEqual([0, 1]);
  });

  test('a load goes into its case as the plan has it now, and the first one brings its case', () => {
    const plan = tipPulled(tube);
    const stale = caseOfLoads([]);
    const next = withLoad(plan, stale, force(1, 20));
    expect(next.cases[0]?.loads).toHaveLength(2);
    const fresh = withLoad({ supports: [], cases: [] }, stale, force(1, 20));
    expect(fresh.cases.map((c) => c.loads.length)).toEqual([1]);
    expect(withoutLoad(next, 'gust', 'force-1').cases[0]?.loads).toHaveLength(1);
  });
});
