import { expect, test } from 'vitest';
import { filmCount } from '#app/laying-up/build/films.ts';
import { keptSize } from '#app/laying-up/build/picture.ts';
import { allSteps } from '#app/laying-up/build/position.ts';
import { allHard, sampleDraft, samplesOf, softSentence } from '#app/laying-up/build/samples.ts';
import { aboutStep } from '#app/laying-up/build/step-about.ts';
import { actionLabel, type OpenOven, stepAction } from '#app/laying-up/build/step-action.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { StepRole } from '#shared/record/checklist.ts';
import { buildOf, cupOf, type Event } from './shop-of.ts';

const stepWith = (state: BuildState, role: StepRole, at = 0) => {
  const step = allSteps(state).filter((s) => s.step.role === role)[at];
  if (!step) throw new Error(`no step with ${role}`);
  return step;
};
const actionOf = (events: Event[], role: StepRole, oven?: OpenOven, at = 0) => {
  const state = buildOf(events);
  return stepAction(state, stepWith(state, role, at), () => oven);
};
const about = (events: Event[], role: StepRole) => {
  const state = buildOf(events);
  return aboutStep(state, stepWith(state, role))?.replace(/\s/g, ' ');
};
const joined: Event = { minute: 1, kind: 'joinedOvenLoad', build: 'build-1', ovenLoad: 'oven-1', round: 1 };
const weight = (what: 'wetCloth' | 'cured' | 'trimmed'): Event => ({
  minute: 1,
  kind: 'weight',
  what,
  mass: 0.3,
});
const felt = (cup: string, what: 'tack' | 'hardness', outcome: 'hard' | 'soft' | 'tacky'): Event => ({
  minute: 90,
  kind: 'check',
  what,
  outcome,
  cup,
});

test('a step without a role opens nothing and wants only its tick', () => {
  const state = buildOf([]);
  const [first] = allSteps(state);
  expect(first && stepAction(state, first, () => undefined)).toEqual({ met: true });
});

test.each<[StepRole, string]>([
  ['mix', '/mix/build-1'],
  ['weighWet', '/weigh/build-1/wetCloth'],
  ['weighCured', '/weigh/build-1'],
  ['measure', '/measure/build-1'],
  ['oven', '/oven/new'],
])('%s leads to its own screen until what it asks for is there', (role, to) => {
  expect(actionOf([], role)).toMatchObject({ met: false, opens: { kind: 'screen', to } });
});

test('a hold is not ticked by one press while its oven is at it, and is once the oven is off', () => {
  expect(actionOf([joined], 'oven', 'notOff', 1)).toMatchObject({
    met: false,
    opens: { to: '/oven/oven-1', label: 'To its oven load' },
  });
  expect(actionOf([joined], 'oven', 'off', 1).met).toBe(true);
  expect(actionOf([joined], 'oven', undefined, 1).met).toBe(true);
});

test.each<[StepRole, string]>([
  ['surroundings', 'surroundings'],
  ['filmsIn', 'films'],
  ['filmsOut', 'films'],
  ['samples', 'samples'],
  ['judge', 'judge'],
])('%s opens a sheet until what it asks for is there', (role, sheet) => {
  expect(actionOf([], role)).toMatchObject({ met: false, opens: { kind: 'sheet', sheet } });
});

test('what a step asks for leaves only its tick', () => {
  expect(actionOf([weight('wetCloth')], 'weighWet').met).toBe(true);
  expect(actionOf([weight('trimmed')], 'weighCured').met).toBe(true);
  expect(actionOf([{ minute: 1, kind: 'surroundings', air: 293.15 }], 'surroundings').met).toBe(true);
  expect(actionOf([{ minute: 1, kind: 'disposition', outcome: 'scrap' }], 'judge').met).toBe(true);
});

test('a joined oven load that still runs is gone to; one that is out leads to a new one', () => {
  expect(actionOf([joined], 'oven', 'notOff')).toMatchObject({ met: true, opens: { to: '/oven/oven-1' } });
  expect(actionOf([joined], 'oven')).toMatchObject({ met: true, opens: { to: '/oven/new' } });
});

test('mixing names the cup that comes next', () => {
  expect(actionOf([], 'mix').opens?.label).toBe('Mix cup 1');
  const [started] = cupOf('a', 1, 10);
  expect(started && actionOf([started], 'mix').opens?.label).toBe('Back to cup 1');
  expect(actionOf(cupOf('a', 1, 10), 'mix').opens?.label).toBe('Mix cup 2');
});

test('the way to the next cup leads past one that still stands', () => {
  expect(actionOf([], 'mix').opens).toMatchObject({ to: '/mix/build-1' });
  const [started] = cupOf('a', 1, 10);
  expect(started && actionOf([started], 'mix').opens).toMatchObject({ to: '/mix/build-1' });
  expect(actionOf(cupOf('a', 1, 10), 'mix').opens).toMatchObject({ to: '/mix/build-1/cups' });
});

test('films are even only when both were counted and agree', () => {
  const count = (direction: 'in' | 'out', n: number): Event => ({
    minute: 1,
    kind: 'filmCount',
    direction,
    count: n,
    round: 1,
  });
  expect(filmCount(buildOf([]), 1)).toEqual({ even: false, counts: true });
  expect(filmCount(buildOf([count('in', 2)]), 1)).toMatchObject({ in: 2, even: false });
  expect(filmCount(buildOf([count('in', 2), count('out', 2)]), 1).even).toBe(true);
  expect(filmCount(buildOf([count('in', 0), count('out', 0)]), 1).even).toBe(true);
  expect(filmCount(buildOf([], { route: [] }), 1).counts).toBe(false);
  expect(about([count('in', 3), count('out', 2)], 'filmsOut')).toBe('2 of 3 films');
  expect(about([count('in', 1)], 'filmsIn')).toBe('1 film');
});

test('every cup that took hardener has a sample, one thrown out has none', () => {
  const cups = [
    ...cupOf('a', 1, 10),
    ...cupOf('b', 2, 20),
    { minute: 21, kind: 'cupDiscarded', cup: 'b' } as Event,
  ];
  expect(samplesOf(buildOf(cups), 1)).toEqual([{ cup: 'a', name: 'Cup 1' }]);
});

test('a build whose cups were not written down still has a sample to feel', () => {
  expect(samplesOf(buildOf([]), 1)).toEqual([{ name: 'The sample' }]);
});

test('the last touch of a sample holds, whatever it was called before', () => {
  const events = [...cupOf('a', 1, 10), felt('a', 'hardness', 'soft'), felt('a', 'tack', 'tacky')];
  expect(samplesOf(buildOf(events), 1)[0]?.feel).toBe('tacky');
  const hard = samplesOf(buildOf([...events, felt('a', 'hardness', 'hard')]), 1);
  expect(allHard(hard)).toBe(true);
  expect(softSentence(hard)).toBeUndefined();
});

test('a seen gel says nothing of a sample', () => {
  const gel: Event = { minute: 60, kind: 'check', what: 'gel', outcome: 'notYet' };
  expect(samplesOf(buildOf([gel]), 1)[0]?.feel).toBeUndefined();
  expect(about([gel], 'rotationOff')).toMatch(/^Not gelled at 9:00 AM$/);
});

test('samples not hard are named', () => {
  const events = [...cupOf('a', 1, 10), ...cupOf('b', 2, 20), felt('a', 'hardness', 'hard')];
  const state = buildOf([...events, felt('b', 'hardness', 'soft')]);
  expect(allHard(samplesOf(state, 1))).toBe(false);
  expect(softSentence(samplesOf(state, 1))).toMatch(/^Cup 2 not hard yet/);
});

test('tacky is a check of tack, hard and soft are checks of hardness', () => {
  const sample = { cup: 'a', name: 'Cup 1' };
  expect(sampleDraft('b', sample, 'tacky')).toMatchObject({ what: 'tack', outcome: 'tacky', cup: 'a' });
  expect(sampleDraft('b', sample, 'hard')).toMatchObject({ what: 'hardness', outcome: 'hard' });
  expect(sampleDraft('b', { name: 'The sample' }, 'soft')).toEqual({
    kind: 'check',
    subject: 'b',
    what: 'hardness',
    outcome: 'soft',
  });
});

test("the main action speaks the step's own words, cut at a word when they are long", () => {
  expect(actionLabel('Half the resin spread on the film')).toBe('Half the resin spread on the film');
  const long = 'Every roller, brush and squeegee washed and laid out in the order in which it is used';
  expect(actionLabel(long)).toBe('Done: Every roller, brush and squeegee washed and laid out in…');
  expect(actionLabel('x'.repeat(300)).length).toBeLessThan(70);
});

test('a photo is scaled to 1600 px on its longest side, and never up', () => {
  expect(keptSize(4000, 3000)).toEqual({ width: 1600, height: 1200 });
  expect(keptSize(3000, 4000)).toEqual({ width: 1200, height: 1600 });
  expect(keptSize(800, 600)).toEqual({ width: 800, height: 600 });
  expect(keptSize(10000, 1)).toEqual({ width: 1600, height: 1 });
});
