import { expect, test } from 'vitest';
import {
  allSteps,
  missedFrom,
  notTickedBefore,
  presentStage,
  presentStep,
  roundBegun,
  routeAddress,
  stageAt,
  stageSlug,
} from '#app/laying-up/build/position.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { buildHeader } from '../record/arbitraries.ts';
import { buildOf, cupOf, type Event, ticksOf } from './shop-of.ts';

const stageOf = (state: BuildState, slug: string) => {
  const stage = stageAt(state, slug);
  if (!stage) throw new Error(`no stage ${slug}`);
  return stage;
};
const everything = buildHeader.route.flatMap((s, i) => ticksOf(s.stage, i));

test('a fresh build stands at its first stage and first step', () => {
  const state = buildOf([]);
  const stage = presentStage(state);
  expect(stage?.stage).toBe('mandrelPrep');
  expect(stage && presentStep(stage)?.step.id).toBe('mandrel-measured');
});

test('a stage that is through hands on to the next', () => {
  expect(presentStage(buildOf(ticksOf('mandrelPrep', 1)))?.stage).toBe('release');
});

test('a tick forgotten further up does not pull the builder back', () => {
  const state = buildOf([...ticksOf('mandrelPrep', 1).slice(1), ...ticksOf('wetOut', 5).slice(0, 2)]);
  expect(presentStage(state)?.stage).toBe('wetOut');
});

test('when nothing is left further on, the forgotten stage comes up', () => {
  const state = buildOf(everything.slice(1));
  expect(presentStage(state)?.stage).toBe('mandrelPrep');
});

test('ticks whose time nobody saw do not say where the builder stands', () => {
  const late = ticksOf('cut', 9).map((t) => ({ ...t, timeNotSeen: true }));
  expect(presentStage(buildOf([...ticksOf('mandrelPrep', 1), ...late]))?.stage).toBe('release');
});

test('a route that is through has no present stage', () => {
  expect(presentStage(buildOf(everything))).toBeUndefined();
});

test('a second round begins at mix once the first is cured', () => {
  const cured = ['mandrelPrep', 'release', 'cut', 'setUp', 'mix', 'wetOut', 'wrap', 'shrinkTape', 'cure'];
  const events: Event[] = cured.flatMap((s, i) => ticksOf(s, i));
  const state = buildOf([...events, { minute: 50, kind: 'roundStarted', round: 2 }]);
  const present = presentStage(state);
  expect([present?.stage, present?.round]).toEqual(['mix', 2]);
});

test('every stage has an address of its own that leads back to it', () => {
  const state = buildOf([{ minute: 1, kind: 'roundStarted', round: 2 }]);
  const slugs = state.stages.map(stageSlug);
  expect(new Set(slugs).size).toBe(state.stages.length);
  for (const stage of state.stages) expect(stageAt(state, stageSlug(stage))).toBe(stage);
  expect(routeAddress('b', stageOf(state, 'wetOut-2'))).toBe('/build/b/wetOut-2');
  expect(routeAddress('b')).toBe('/build/b');
  expect(stageAt(state, '')).toBeUndefined();
  expect(stageAt(state, 'wetOut-3')).toBeUndefined();
});

test('what is open before a step is named in working order', () => {
  const state = buildOf(ticksOf('mandrelPrep', 1).slice(2));
  const third = allSteps(state)[2];
  if (!third) throw new Error('no third step');
  expect(notTickedBefore(state, third).map((s) => s.step.id)).toEqual([
    'mandrel-measured',
    'mandrel-straight',
  ]);
});

test('nothing is forgotten while steps are done in order', () => {
  const state = buildOf([...ticksOf('mandrelPrep', 1), ...ticksOf('release', 2).slice(0, 3)]);
  expect(missedFrom(state, stageOf(state, 'release-1'))).toBeUndefined();
  expect(missedFrom(buildOf([]), stageOf(buildOf([]), 'mandrelPrep-1'))).toBeUndefined();
});

test('a step passed over inside a stage is forgotten', () => {
  const ticks = ticksOf('mandrelPrep', 1);
  const state = buildOf([...ticks.slice(0, 1), ...ticks.slice(2, 4)]);
  const missed = missedFrom(state, stageOf(state, 'mandrelPrep-1'));
  expect(missed?.steps.map((s) => s.step.id)).toEqual(['mandrel-straight']);
  expect(missed?.before.step.id).toBe('mandrel-polished');
});

test('looking ahead offers to tick all before that stage', () => {
  const state = buildOf([]);
  const missed = missedFrom(state, stageOf(state, 'cut-1'));
  const before = buildHeader.route.slice(0, 2).flatMap((s) => s.steps);
  expect(missed?.steps.map((s) => s.step.id)).toEqual(before.map((s) => s.id));
});

test('films counted out short are not among the ticks that were only forgotten', () => {
  const filmsOut = allSteps(buildOf([])).find((s) => s.step.role === 'filmsOut');
  const tape = allSteps(buildOf([])).find((s) => s.stage === 'shrinkTape');
  if (!filmsOut || !tape) throw new Error('the route counts no films');
  const counted = (out: number): Event[] => [
    { minute: 1, kind: 'filmCount', direction: 'in', count: 2, round: 1 },
    { minute: 2, kind: 'filmCount', direction: 'out', count: out, round: 1 },
  ];
  const missed = (out: number) => notTickedBefore(buildOf(counted(out)), tape).map((s) => s.key);
  expect(missed(1)).not.toContain(filmsOut.key);
  expect(missed(2)).toContain(filmsOut.key);
});

test('a round has begun with its first cup, or the first step ticked from mix to cure', () => {
  expect(roundBegun(buildOf(ticksOf('setUp', 1)))).toBe(false);
  expect(roundBegun(buildOf(cupOf('a', 1, 10)))).toBe(true);
  expect(roundBegun(buildOf(ticksOf('wetOut', 1).slice(0, 1)))).toBe(true);
  const second: Event = { minute: 90, kind: 'roundStarted', round: 2 };
  expect(roundBegun(buildOf([...cupOf('a', 1, 10), ...ticksOf('wetOut', 20), second]))).toBe(false);
});
