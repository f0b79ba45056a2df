import { expect, test } from 'vitest';
import { judgeSurroundings } from '#app/laying-up/build/surroundings.ts';
import { concernSentence, surroundingsLine, typedWithUnit } from '#app/laying-up/build/surroundings-words.ts';

const celsius = (t: number) => t + 273.15;
const what = (read: Parameters<typeof judgeSurroundings>[0]) =>
  judgeSurroundings(read).concerns.map((c) => c.what);

test('20 °C and 65 % give a dew point of 13.2 °C', () => {
  // ASHRAE Handbook, Fundamentals (2021), chapter 1: 13.2 C, from memory.
  const { dewPoint } = judgeSurroundings({ air: celsius(20), humidity: 0.65 });
  expect(dewPoint).toBeCloseTo(celsius(13.2), 1);
});

test('without air or humidity there is no dew point and no guess', () => {
  expect(judgeSurroundings({ air: celsius(20) })).toEqual({ concerns: [] });
  expect(judgeSurroundings({ humidity: 0.5, mandrel: celsius(1) })).toEqual({ concerns: [] });
  expect(judgeSurroundings({})).toEqual({ concerns: [] });
  expect(judgeSurroundings({ air: celsius(20), humidity: 0 }).dewPoint).toBeUndefined();
});

test('a mandrel or resin within 3 K of the dew point is a concern, at 3 K and over it is not', () => {
  // Margin of 3 K: ISO 8502-4.
  const air = { air: celsius(20), humidity: 0.65 };
  const dew = judgeSurroundings(air).dewPoint ?? 0;
  expect(what({ ...air, mandrel: dew + 2.99 })).toEqual(['mandrelNearDew']);
  expect(what({ ...air, mandrel: dew + 3 })).toEqual([]);
  expect(what({ ...air, resin: dew + 1 })).toEqual(['resinNearDew']);
  expect(what({ ...air, mandrel: dew - 1 })).toEqual(['mandrelNearDew']);
});

test('over 70 % and under 15 °C are concerns, at the limit they are not', () => {
  // Common practice, no source.
  expect(what({ humidity: 0.7 })).toEqual([]);
  expect(what({ humidity: 0.71 })).toEqual(['damp']);
  expect(what({ air: celsius(15) })).toEqual([]);
  expect(what({ air: celsius(14.9) })).toEqual(['cold']);
});

test('every concern says what is read and what would be right', () => {
  const { concerns } = judgeSurroundings({
    air: celsius(14),
    humidity: 0.9,
    mandrel: celsius(13),
    resin: celsius(11),
  });
  const sentences = concerns.map(concernSentence);
  expect(sentences).toHaveLength(4);
  expect(sentences[0]).toMatch(/^Mandrel is 0\.6\s°C above the dew point.*Warm it to 15\.4\s°C or more/);
  expect(sentences[1]).toMatch(/^Resin is 1\.4\s°C below the dew point/);
  expect(sentences[2]).toMatch(/^Air holds 90\s% .* over 70\s%/);
  expect(sentences[3]).toMatch(/^Shop is 14\.0\s°C, under 15\s°C/);
});

test('a line of readings names only what was read', () => {
  expect(surroundingsLine({ air: celsius(20), humidity: 0.65 }).replace(/\s/g, ' ')).toBe(
    'Air 20 °C · humidity 65 % · dew point 13.2 °C',
  );
  expect(surroundingsLine({ mandrel: celsius(18) }).replace(/\s/g, ' ')).toBe('Mandrel 18 °C');
});

test('a figure is kept with its unit, and one that has its own stays as typed', () => {
  expect(typedWithUnit('21', '°C')).toBe('21 °C');
  expect(typedWithUnit('20.5', '°C')).toBe('20.5 °C');
  expect(typedWithUnit('70 F', '°C')).toBe('70 F');
  expect(typedWithUnit('65%', '%')).toBe('65%');
});
