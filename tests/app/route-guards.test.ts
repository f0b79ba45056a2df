import { expect, test } from 'vitest';
import {
  filmsWarning,
  guardsBefore,
  guardWords,
  missingFor,
  overrideDrafts,
  stageFor,
} from '#app/laying-up/build/guards.ts';
import { overrideReasons } from '#shared/record/entry.ts';
import { buildHeader } from '../record/arbitraries.ts';
import { buildOf, cupOf, type Event, ticksOf } from './shop-of.ts';

const films = (direction: 'in' | 'out', count: number, round = 1): Event => ({
  minute: 1,
  kind: 'filmCount',
  direction,
  count,
  round,
});
const ready = [...ticksOf('release', 1), ...ticksOf('setUp', 2)];
const only = (role: string): Event[] =>
  buildHeader.route
    .flatMap((s) => s.steps)
    .filter((s) => s.role === role)
    .map((s) => ({ minute: 3, kind: 'tick', step: s.id, round: 1 }));
const overridden = (guard: 'dryRun' | 'films', round = 1): Event => ({
  minute: 4,
  kind: 'override',
  guard,
  round,
  reason: 'notNeeded',
});

test('a fresh build is stopped before its first cup for the dry run', () => {
  expect(guardsBefore(buildOf([]), 'startCup', 1)).toEqual(['dryRun']);
  expect(guardsBefore(buildOf(only('dryRun')), 'startCup', 1)).toEqual([]);
});

test('hardener waits for the whole release and for the turning stand', () => {
  expect(guardsBefore(buildOf([]), 'hardener', 1)).toEqual(['release', 'rotation']);
  expect(guardsBefore(buildOf(only('rotation')), 'hardener', 1)).toEqual(['release']);
  expect(guardsBefore(buildOf(ticksOf('release', 1).slice(1)), 'hardener', 1)).toEqual([
    'release',
    'rotation',
  ]);
  expect(guardsBefore(buildOf(ready), 'hardener', 1)).toEqual([]);
});

test('tape waits for as many films out as in, both counted', () => {
  const before = (events: Event[]) => guardsBefore(buildOf(events), 'tape', 1);
  expect(before([])).toEqual(['films']);
  expect(before([films('in', 3)])).toEqual(['films']);
  expect(before([films('out', 3)])).toEqual(['films']);
  expect(before([films('in', 3), films('out', 2)])).toEqual(['films']);
  expect(before([films('in', 3), films('out', 4)])).toEqual(['films']);
  expect(before([films('in', 3), films('out', 3)])).toEqual([]);
});

test('a guard stops once in a round, and again in the next', () => {
  const again: Event = { minute: 5, kind: 'roundStarted', round: 2 };
  const state = buildOf([overridden('dryRun'), overridden('films'), again]);
  expect(guardsBefore(state, 'startCup', 1)).toEqual([]);
  expect(guardsBefore(state, 'tape', 1)).toEqual([]);
  expect(guardsBefore(state, 'startCup', 2)).toEqual(['dryRun']);
  expect(guardsBefore(state, 'tape', 2)).toEqual(['films']);
});

test('a dry run done once holds for every round', () => {
  const state = buildOf([...ready, { minute: 5, kind: 'roundStarted', round: 2 }]);
  expect(guardsBefore(state, 'startCup', 2)).toEqual([]);
});

test('once hardener is in, nothing blocks', () => {
  const state = buildOf(cupOf('a', 1, 10));
  for (const act of ['startCup', 'hardener', 'tape'] as const)
    expect(guardsBefore(state, act, 1)).toEqual([]);
});

test('resin alone in a cup does not lift the guard before hardener', () => {
  const [started, poured] = cupOf('a', 1, 10);
  if (!started || !poured) throw new Error('a cup has a start and a pour');
  expect(guardsBefore(buildOf([started, poured]), 'hardener', 1)).toEqual(['release', 'rotation']);
});

test('hardener of one round does not lift the guards of the next', () => {
  const state = buildOf([...cupOf('a', 1, 10), { minute: 20, kind: 'roundStarted', round: 2 }]);
  expect(guardsBefore(state, 'startCup', 2)).toEqual(['dryRun']);
});

test('a route without such a step is not asked for it', () => {
  const route = [{ stage: 'mix' as const, steps: [{ id: 'm', text: 'Mixed', role: 'mix' as const }] }];
  const state = buildOf([], { route });
  for (const act of ['startCup', 'hardener', 'tape'] as const)
    expect(guardsBefore(state, act, 1)).toEqual([]);
});

test('with hardener in, films not accounted for are said until they are counted or let be', () => {
  const wet = cupOf('a', 1, 10);
  expect(filmsWarning(buildOf([films('in', 3), films('out', 2)]), 1)).toBeUndefined();
  expect(filmsWarning(buildOf(wet), 1)).toBe('Films: neither counted in nor out.');
  expect(filmsWarning(buildOf([...wet, films('in', 3)]), 1)).toBe('Films: 3 went in, none counted out yet.');
  expect(filmsWarning(buildOf([...wet, films('in', 3), films('out', 2)]), 1)).toBe('Films: 2 of 3 are out.');
  expect(filmsWarning(buildOf([...wet, films('in', 3), films('out', 1)]), 1)).toBe('Films: 1 of 3 is out.');
  expect(filmsWarning(buildOf([...wet, films('in', 2), films('out', 3)]), 1)).toContain('only 2 counted in');
  expect(filmsWarning(buildOf([...wet, films('out', 3)]), 1)).toContain('nobody counted them in');
  expect(filmsWarning(buildOf([...wet, films('in', 3), films('out', 3)]), 1)).toBeUndefined();
  expect(filmsWarning(buildOf([...wet, overridden('films')]), 1)).toBeUndefined();
});

test('an override says which guard, which round and why; only what was done gets ticked with it', () => {
  const state = buildOf(only('rotation'));
  for (const reason of overrideReasons) {
    const [override, ...ticks] = overrideDrafts(state, 'release', 1, reason);
    expect(override).toEqual({ kind: 'override', subject: 'build-1', guard: 'release', round: 1, reason });
    const open = reason === 'doneNotTicked' ? missingFor(state, 'release') : [];
    expect(ticks.map((t) => t.kind === 'tick' && t.timeNotSeen && t.step)).toEqual(
      open.map((s) => s.step.id),
    );
  }
});

test('going back leads to the stage that does what is missing', () => {
  const state = buildOf([]);
  expect(stageFor(state, 'dryRun', 1)?.stage).toBe('setUp');
  expect(stageFor(state, 'release', 1)?.stage).toBe('release');
  expect(stageFor(state, 'rotation', 1)?.stage).toBe('setUp');
  expect(stageFor(state, 'films', 1)?.stage).toBe('mix');
  expect(stageFor(buildOf([films('in', 3)]), 'films', 1)?.stage).toBe('wrap');
});

test('the release guard counts what is left', () => {
  const all = ticksOf('release', 1);
  expect(guardWords(buildOf(all.slice(1)), 'release', 1).what).toBe('Release is not through: 1 step left');
  expect(guardWords(buildOf(all.slice(2)), 'release', 1).what).toBe('Release is not through: 2 steps left');
});
