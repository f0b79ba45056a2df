import { expect, it } from 'vitest';
import { doubtAbout, nextWeighing } from '#app/laying-up/weigh/weights.ts';
import { curedByWeight } from '#app/made/results/by-weight.ts';
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

it('a tube cut before it was weighed tells nothing of its resin until its offcuts are on the scale too', () => {
  const demolded = through(...names.slice(0, names.indexOf('weigh')));
  const cut = [...demolded, weight('trimmed', 1.9 * begun)];
  expect(curedByWeight(buildOf(cut))).toEqual({ ok: false, why: 'notWeighed' });
  expect(nextWeighing(buildOf(cut))).toBe('offcut');
  const both = buildOf([...cut, weight('offcut', 0.1 * begun)]);
  const whole = buildOf([...demolded, weight('cured', 2 * begun)]);
  expect(curedByWeight(both)).toEqual(curedByWeight(whole));
  expect(nextWeighing(both)).not.toBe('offcut');
  expect(curedByWeight(buildOf([...cut, weight('offcut', 0)]))).toMatchObject({ ok: true });
});

it('a trimmed tube of less than half its cloth, or of six times it, is asked about', () => {
  expect(doubtAbout(buildOf([]), 'trimmed', 0.49 * begun)).toContain('Less than half its dry cloth');
  expect(doubtAbout(buildOf([]), 'trimmed', begun)).toBeUndefined();
  expect(doubtAbout(buildOf([]), 'trimmed', 6.1 * begun)).toContain('mandrel');
});
