import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foldBuild } from '#shared/record/build-state.ts';
import { repeating, stageNames } from '#shared/record/checklist.ts';
import { unrollRoute } from '#shared/record/route-state.ts';
import { buildHeader, entryOf } from './arbitraries.ts';

const { route } = buildHeader;
const rounds = (...ns: number[]) => ns.map((round) => entryOf({ kind: 'roundStarted', round }));

describe('a route of several rounds', () => {
  it('repeats mix to cure and keeps what comes before and after single', () => {
    const names = unrollRoute(route, 2).map((s) => `${s.stage.stage} ${s.round}`);
    expect(names).toEqual([
      'mandrelPrep 1',
      'release 1',
      'cut 1',
      'setUp 1',
      'mix 1',
      'wetOut 1',
      'wrap 1',
      'shrinkTape 1',
      'cure 1',
      'mix 2',
      'wetOut 2',
      'wrap 2',
      'shrinkTape 2',
      'cure 2',
      'demold 1',
      'weigh 1',
      'trim 1',
      'measure 1',
    ]);
  });

  it('without any repeating stage is itself, whatever the rounds', () => {
    const dry = route.filter((s) => !repeating.includes(s.stage));
    expect(unrollRoute(dry, 3).map((s) => s.stage)).toEqual(dry);
    expect(unrollRoute([], 3)).toEqual([]);
  });

  it('holds every repeating stage once a round and every other once, for any route', () => {
    const anyRoute = fc
      .shuffledSubarray([...stageNames])
      .map((names) => names.map((stage) => ({ stage, steps: [] })));
    fc.assert(
      fc.property(anyRoute, fc.integer({ min: 1, max: 6 }), (any, n) => {
        const unrolled = unrollRoute(any, n);
        for (const { stage } of any) {
          const times = unrolled.filter((s) => s.stage.stage === stage).map((s) => s.round);
          expect(times).toEqual(repeating.includes(stage) ? Array.from({ length: n }, (_, i) => i + 1) : [1]);
        }
      }),
    );
  });

  it('has as many rounds as the highest that was started, also when one between is missing', () => {
    expect(foldBuild(buildHeader, []).rounds).toBe(1);
    expect(foldBuild(buildHeader, rounds(2)).rounds).toBe(2);
    expect(foldBuild(buildHeader, rounds(3)).rounds).toBe(3);
  });

  it('ticks a step of one round only', () => {
    const tick = entryOf({ kind: 'tick', step: 'mix-cups', round: 2 });
    const done = foldBuild(buildHeader, [...rounds(2), tick])
      .stages.flatMap((s) => s.steps)
      .filter((s) => s.done)
      .map((s) => s.key);
    expect(done).toEqual(['mix-cups#2']);
  });
});

describe('ticks', () => {
  const ticks = (steps: readonly { id: string }[]) =>
    steps.map((step) => entryOf({ kind: 'tick', step: step.id, round: 1 }));

  it('lead to the first step not done, wherever it stands', () => {
    const steps = route.flatMap((s) => s.steps);
    fc.assert(
      fc.property(fc.subarray(steps), (done) => {
        const state = foldBuild(buildHeader, ticks(done));
        expect(state.next?.step.id).toBe(steps.find((s) => !done.includes(s))?.id);
      }),
    );
  });

  it('finish a stage with its last step', () => {
    const first = route[0]?.steps ?? [];
    expect(foldBuild(buildHeader, ticks(first.slice(1))).stages[0]?.done).toBe(false);
    expect(foldBuild(buildHeader, ticks(first)).stages[0]?.done).toBe(true);
  });

  it('of a step that the checklist does not have change nothing', () => {
    const state = foldBuild(buildHeader, ticks([{ id: 'no-such-step' }]));
    expect(state.stages.flatMap((s) => s.steps).some((s) => s.done)).toBe(false);
  });

  it('twice for one step count from the first', () => {
    const [one, two] = ticks([{ id: 'cut-cut' }, { id: 'cut-cut' }]);
    if (!one || !two) throw new Error('two ticks');
    const step = foldBuild(buildHeader, [two, one])
      .stages.flatMap((s) => s.steps)
      .find((s) => s.step.id === 'cut-cut');
    expect(step?.done).toMatchObject({ at: one.happenedAt, root: one.id, timeNotSeen: false });
  });

  it('made later for work done keep that nobody saw the time', () => {
    const tick = entryOf({ kind: 'tick', step: 'cut-cut', round: 1, timeNotSeen: true });
    const step = foldBuild(buildHeader, [tick])
      .stages.flatMap((s) => s.steps)
      .find((s) => s.done);
    expect(step?.done?.timeNotSeen).toBe(true);
  });
});
