import { describe, expect, it } from 'vitest';
import { mixingOf } from '#app/laying-up/mix/cup-phase.ts';
import { mixOf, mixStep, planOf, scaleDoubt } from '#app/laying-up/mix/mix-of-build.ts';
import { buildHeader } from '../record/arbitraries.ts';
import { slow } from './mix-cups.ts';
import { buildOf, cupOf, type Event } from './shop-of.ts';

const hardenerOf = (cup: string, mass: number, minute: number): Event => ({
  minute,
  kind: 'pour',
  cup,
  part: 'hardener',
  mass,
});
/** Started, resin in; its hardener has touched and is not weighed yet. */
const begun = (cup: string, number: number, minute: number, round = 1): Event[] =>
  cupOf(cup, number, minute, 30, round).filter((e) => !(e.kind === 'pour' && e.part === 'hardener'));

describe('the cups of a build', () => {
  it('are one on the scale and the others in their pot life, oldest first', () => {
    const { weighing, inCup } = mixOf(
      buildOf([
        ...begun('a', 1, 10),
        hardenerOf('a', 0.03, 11),
        ...begun('b', 2, 14),
        hardenerOf('b', 0.03, 15),
        ...begun('c', 3, 18),
      ]),
    );
    expect(weighing?.cup.cup).toBe('c');
    expect(weighing?.phase).toBe('pour');
    expect(inCup.map((c) => c.cup)).toEqual(['a', 'b']);
  });

  it('leave the pot life when they are empty or thrown out', () => {
    const { inCup, cups } = mixOf(
      buildOf([
        ...begun('a', 1, 10),
        hardenerOf('a', 0.03, 11),
        { minute: 14, kind: 'cupEmpty', cup: 'a' },
        ...begun('b', 2, 15),
        { minute: 17, kind: 'cupDiscarded', cup: 'b' },
      ]),
    );
    expect(inCup).toEqual([]);
    expect(cups.map((c) => c.phase)).toEqual(['empty', 'thrownOut']);
  });

  it('are those of the present round only', () => {
    const state = buildOf([
      ...begun('a', 1, 10),
      { minute: 20, kind: 'roundStarted', round: 2 },
      ...begun('b', 1, 25, 2),
    ]);
    expect(mixOf(state).cups.map((c) => c.cup.cup)).toEqual(['b']);
  });
});

describe('the plan of a build', () => {
  it('goes by the cloth as it was cut, once that is weighed', () => {
    const asStarted = planOf(buildOf([]));
    const asCut = planOf(buildOf([{ minute: 5, kind: 'weight', what: 'cutCloth', mass: 0.26 }]));
    expect(asStarted.ok && asCut.ok && asCut.plan.kept / asStarted.plan.kept).toBeCloseTo(2, 9);
  });

  it('says in a sentence why no cups can do it', () => {
    const goal = { ...buildHeader.goal, lossPerCup: 1 };
    const planned = planOf(buildOf([], { goal }));
    expect(planned.ok).toBe(false);
    expect(!planned.ok && planned.says).toMatch(/loses as much as it may hold/);
  });
});

describe('a scale too coarse for a cup', () => {
  const mixing = mixingOf(slow);

  it('is told with the smallest cup it can do, and not from that cup on', () => {
    const doubt = scaleDoubt(0.09, 0.001, mixing);
    expect(doubt?.smallest).toBeCloseTo(0.0939, 4);
    expect(doubt?.error).toBeGreaterThan(slow.tolerance);
    expect(scaleDoubt((doubt?.smallest ?? 0) * 1.0001, 0.001, mixing)).toBeUndefined();
    expect(scaleDoubt(0.09, 0.0001, mixing)).toBeUndefined();
  });
});

describe('the step that mixing answers', () => {
  it('is that of this round, until it is ticked', () => {
    const step = mixStep(buildOf([]));
    expect(step?.step.role).toBe('mix');
    const ticked = buildOf([{ minute: 5, kind: 'tick', step: step?.step.id ?? '', round: 1 }]);
    expect(mixStep(ticked)).toBeUndefined();
  });
});
