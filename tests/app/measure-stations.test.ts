import { expect, test } from 'vitest';
import { allSteps } from '#app/laying-up/build/position.ts';
import { stepAction } from '#app/laying-up/build/step-action.ts';
import { allMeasured, stationsFor, stationsOpen } from '#app/laying-up/measure/stations.ts';
import { buildOf, type Event } from './shop-of.ts';

const tube = { tubeLength: 1 };
const read = (station: number): Event => ({
  minute: 1,
  kind: 'measurement',
  what: 'circumference',
  station,
  value: 0.16,
});
const isMet = (events: Event[], header = {}) => {
  const state = buildOf(events, header);
  const step = allSteps(state).find((s) => s.step.role === 'measure');
  return step && stepAction(state, step, () => undefined).met;
};

test('the usual stations are five along the tube, and none where its length is not known', () => {
  expect(stationsFor(1)).toEqual([0.05, 0.25, 0.5, 0.75, 0.95]);
  expect(stationsFor(undefined)).toEqual([]);
});

test('a station stays open until it has a reading; one elsewhere closes none', () => {
  expect(stationsOpen(buildOf([read(0.25), read(0.4)], tube))).toEqual([0.05, 0.5, 0.75, 0.95]);
});

test('measuring is done with a reading at every usual station, not with the first', () => {
  const four = [0.05, 0.25, 0.5, 0.75].map(read);
  expect(isMet([read(0.05)], tube)).toBe(false);
  expect(isMet(four, tube)).toBe(false);
  expect(isMet([...four, read(0.95)], tube)).toBe(true);
});

test('without a length of the tube the builder says when it is enough', () => {
  expect(allMeasured(buildOf([read(0.3)]))).toBe(false);
});
