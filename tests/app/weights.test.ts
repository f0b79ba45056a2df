import { expect, it } from 'vitest';
import { doubtAbout, nextWeighing } from '#app/laying-up/weigh/weights.ts';
import { buildHeader } from '../record/arbitraries.ts';
import { buildOf, type Event, ticksOf } from './shop-of.ts';

const weight = (what: string, mass: number) =>
  ({ minute: 5, kind: 'weight', what, mass, typed: String(mass) }) as Event;
const begun = buildHeader.clothMass;
const dry = ['mandrelPrep', 'release', 'cut', 'setUp'];
const through = (...stages: string[]) => stages.flatMap((s, i) => ticksOf(s, i + 1));
const names = buildHeader.route.map((s) => s.stage as string);

it.each([0.1, 0.49, 2.01, 10])('cut cloth of %d times what was begun with is asked about', (times) => {
  expect(doubtAbout(buildOf([]), 'cutCloth', times * begun)).toContain('Started with');
});

it.each([0.5, 1, 2])('cut cloth of %d times what was begun with is taken', (times) => {
  expect(doubtAbout(buildOf([]), 'cutCloth', times * begun)).toBeUndefined();
});

it('cloth weighed again is held against what was begun with, not against the slip', () => {
  expect(doubtAbout(buildOf([weight('cutCloth', begun / 10)]), 'cutCloth', begun)).toBeUndefined();
});

it('nothing that is not made yet is to be weighed next', () => {
  for (const [i, stage] of names.entries()) {
    const state = buildOf([weight('filmIn', 0.012), ...through(...names.slice(0, i))]);
    if (['mandrelPrep', 'release', 'setUp', 'cure'].includes(stage)) {
      expect(nextWeighing(state), stage).toBeUndefined();
    }
    if (dry.includes(stage)) expect(nextWeighing(state), stage).not.toBe('filmOut');
  }
});
