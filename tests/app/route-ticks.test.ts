import { expect, test } from 'vitest';
import { allSteps } from '#app/laying-up/build/position.ts';
import {
  enoughWords,
  factsOfStep,
  forgottenDrafts,
  roleTick,
  stillWaiting,
  tickDrafts,
  waitOf,
} from '#app/laying-up/build/ticks.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { StepRole } from '#shared/record/checklist.ts';
import { starterChecklists } from '#shared/reference/starter-checklists.ts';
import { buildOf, type Event, minutes, ticksOf } from './shop-of.ts';

const newId = () => 'new-clock';
const stepOf = (state: BuildState, id: string, round = 1) => {
  const step = allSteps(state).find((s) => s.step.id === id && s.round === round);
  if (!step) throw new Error(`no step ${id}`);
  return step;
};
const wax = { route: starterChecklists['starter-checklist-wax-pva'].stages };
const coat = (minute: number, step: string, clock: string, lasts = 1800): Event[] => [
  { minute, kind: 'tick', step, round: 1 },
  { minute, kind: 'clockStarted', clock, purpose: 'dry', label: step, lasts, warns: 0, step, round: 1 },
];

test('a plain step is one tick and nothing else', () => {
  const state = buildOf([]);
  expect(tickDrafts(state, stepOf(state, 'mandrel-straight'), newId)).toEqual([
    { kind: 'tick', subject: 'build-1', step: 'mandrel-straight', round: 1 },
  ]);
});

test('a step that waits starts its clock with its tick', () => {
  const state = buildOf([], wax);
  const [, clock] = tickDrafts(state, stepOf(state, 'wax-1'), newId);
  expect(clock).toEqual({
    kind: 'clockStarted',
    subject: 'build-1',
    clock: 'new-clock',
    purpose: 'dry',
    label: 'Wax coat 1 on, hazed and buffed',
    lasts: 1800,
    warns: 0,
    step: 'wax-1',
    round: 1,
  });
});

test('a soak of wet cloth is a soak, not a drying', () => {
  const state = buildOf([]);
  const [, clock] = tickDrafts(state, stepOf(state, 'wet-soak'), newId);
  expect(clock).toMatchObject({ kind: 'clockStarted', purpose: 'soak', lasts: 180 });
});

test('going on to the next coat answers the clock of the last', () => {
  const state = buildOf(coat(0, 'wax-1', 'c1'), wax);
  const answers = tickDrafts(state, stepOf(state, 'wax-2'), newId).filter((d) => d.kind === 'clockAnswered');
  expect(answers).toEqual([{ kind: 'clockAnswered', subject: 'build-1', clock: 'c1' }]);
});

test('a clock that was answered, and one further up, are left alone', () => {
  const answered: Event = { minute: 40, kind: 'clockAnswered', clock: 'c1' };
  const done = buildOf([...coat(0, 'wax-1', 'c1'), answered], wax);
  expect(tickDrafts(done, stepOf(done, 'wax-2'), newId).map((d) => d.kind)).toEqual(['tick', 'clockStarted']);
  const running = buildOf(coat(0, 'wax-1', 'c1'), wax);
  expect(tickDrafts(running, stepOf(running, 'wax-3'), newId).map((d) => d.kind)).toEqual([
    'tick',
    'clockStarted',
  ]);
});

test('gelled at a tape edge is a check as well as a tick', () => {
  const state = buildOf([]);
  expect(tickDrafts(state, stepOf(state, 'cure-gelled'), newId)).toEqual([
    { kind: 'tick', subject: 'build-1', step: 'cure-gelled', round: 1 },
    { kind: 'check', subject: 'build-1', what: 'gel', outcome: 'gelled' },
  ]);
});

test('a step shows the latest wait it started, in its own round', () => {
  const state = buildOf([...coat(0, 'wax-1', 'c1'), ...coat(10, 'wax-1', 'c2')], wax);
  expect(waitOf(state, stepOf(state, 'wax-1'))?.clock).toBe('c2');
  expect(waitOf(state, stepOf(state, 'wax-2'))).toBeUndefined();
});

test('forgotten ticks say that nobody saw their time, and start no clock', () => {
  const state = buildOf([], wax);
  const drafts = forgottenDrafts(state, [stepOf(state, 'wax-1'), stepOf(state, 'wax-2')]);
  expect(drafts).toEqual(
    ['wax-1', 'wax-2'].map((step) => ({
      kind: 'tick',
      subject: 'build-1',
      step,
      round: 1,
      timeNotSeen: true,
    })),
  );
});

test.each<[StepRole, string]>([
  ['weighWet', 'wet-weighed'],
  ['mix', 'mix-cups'],
  ['samples', 'cure-hard'],
])('a screen that does what %s asks ticks its step', (role, step) => {
  const state = buildOf([]);
  expect(roleTick(state, role, { newId })[0]).toMatchObject({ kind: 'tick', step, round: 1 });
});

test('a step already ticked is not ticked again, and the second of two is next', () => {
  const first = buildOf(ticksOf('cure', 1).slice(0, 1));
  expect(roleTick(first, 'oven', { newId })[0]).toMatchObject({ step: 'cure-held' });
  const both = buildOf(ticksOf('cure', 1));
  expect(roleTick(both, 'oven', { newId })).toEqual([]);
});

test('a round is ticked in its own steps only', () => {
  const state = buildOf([{ minute: 1, kind: 'roundStarted', round: 2 }]);
  expect(roleTick(state, 'mix', { round: 2, newId })[0]).toMatchObject({ step: 'mix-cups', round: 2 });
  expect(roleTick(state, 'mix', { round: 3, newId })).toEqual([]);
});

test('a tick taken back takes its clock with it, and leaves its neighbors', () => {
  const state = buildOf([...coat(0, 'wax-1', 'c1'), ...coat(40, 'wax-2', 'c2')], wax);
  const roots = factsOfStep(state, stepOf(state, 'wax-1'));
  const kinds = state.facts.filter((f) => roots.includes(f.root)).map((f) => f.entry.kind);
  expect(kinds.sort()).toEqual(['clockStarted', 'tick']);
  expect(factsOfStep(state, stepOf(state, 'wax-3'))).toEqual([]);
});

test('a wait of this stage holds the step after it until it is over or answered', () => {
  const soaking = coat(0, 'wet-soak', 'c1', 180);
  const state = buildOf(soaking);
  const next = stepOf(state, 'wet-rest');
  expect(stillWaiting(state, next, minutes(1))?.clock).toBe('c1');
  expect(stillWaiting(state, stepOf(state, 'wet-even'), minutes(1))).toBeUndefined();
  expect(stillWaiting(state, next, minutes(3))).toBeUndefined();
  const answered = buildOf([...soaking, { minute: 1, kind: 'clockAnswered', clock: 'c1' }]);
  expect(stillWaiting(answered, next, minutes(2))).toBeUndefined();
});

test('a wait at the end of a stage holds nothing back in the next', () => {
  const last = wax.route.find((s) => s.stage === 'release')?.steps.at(-1)?.id ?? '';
  const first = wax.route.find((s) => s.stage === 'cut')?.steps[0]?.id ?? '';
  const state = buildOf(coat(0, last, 'c1', 3600), wax);
  expect(stillWaiting(state, stepOf(state, first), minutes(1))).toBeUndefined();
});

test('what ends a wait early says how much of it is left', () => {
  const soak = waitOf(buildOf(coat(0, 'wet-soak', 'c1', 180)), stepOf(buildOf([]), 'wet-soak'));
  if (!soak) throw new Error('no wait');
  const plain = (text: string) => text.replace(/\s/g, ' ');
  expect(plain(enoughWords({ ...soak, purpose: 'soak' }, minutes(1)))).toBe(
    'Soaked enough: 2:00 left of 3 min',
  );
  expect(plain(enoughWords(soak, minutes(2)))).toBe('Dry enough: 1:00 left of 3 min');
});
