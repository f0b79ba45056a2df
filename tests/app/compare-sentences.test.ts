import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Group, sentenceOf, type Telling } from '#app/made/compare/sentences.ts';
import { sentencesOf } from '#app/made/compare/tellings.ts';
import { madeFrom } from './summary-of.ts';

const grams = (value: number) => `${value}\u00a0g`;
const film = (...groups: Group[]): Telling => ({
  joined: 'on',
  groups,
  did: 'left {} inside',
  none: 'left none',
  matters: 0.5,
  shown: grams,
});
const group = (name: string, ...values: number[]): Group => ({ name, values });

describe('a plain sentence about builds', () => {
  it('says the figures of each group with its count, the larger first and the unit once', () => {
    expect(sentenceOf(film(group('wax', 0, 0), group('film A', 18, 26, 21)))).toBe(
      '3 builds on film A left 18 to 26\u00a0g inside; 2 on wax left none.',
    );
  });

  it('is not said from two points, nor from two of each', () => {
    expect(sentenceOf(film(group('wax', 0), group('film A', 18)))).toBeUndefined();
    expect(sentenceOf(film(group('wax', 0, 0), group('film A', 18, 26)))).toBeUndefined();
  });

  it('is not said against one build alone, however many stand on the other side', () => {
    expect(sentenceOf(film(group('wax', 0), group('film A', 18, 19, 20, 21)))).toBeUndefined();
  });

  it('is not said of one group alone', () => {
    expect(sentenceOf(film(group('film A', 18, 19, 20)))).toBeUndefined();
    expect(sentenceOf(film())).toBeUndefined();
  });

  it('is not said where one build of a group lies among the other', () => {
    expect(sentenceOf(film(group('wax', 0, 19), group('film A', 18, 26, 21)))).toBeUndefined();
  });

  it('is not said where the groups stand no further apart than what a scale or an eye tells', () => {
    expect(sentenceOf(film(group('wax', 17.6, 17.5), group('film A', 18, 26, 21)))).toBeUndefined();
    expect(sentenceOf(film(group('wax', 17.4, 17.4), group('film A', 18, 26, 21)))).toBeDefined();
  });

  it('is never said of groups that overlap, and names every group with two builds', () => {
    const figures = fc.array(fc.integer({ min: 0, max: 40 }), { maxLength: 5 });
    fc.assert(
      fc.property(fc.array(figures, { maxLength: 4 }), (lists) => {
        const groups = lists.map((values, i) => group(`release ${i}`, ...values));
        const said = sentenceOf(film(...groups));
        if (said === undefined) return;
        const spoken = groups.filter((g) => g.values.length > 1);
        for (const g of spoken) expect(said).toContain(`${g.values.length} `);
        for (const a of spoken) {
          for (const b of spoken) {
            if (a === b) continue;
            const apart =
              Math.min(...a.values) > Math.max(...b.values) || Math.min(...b.values) > Math.max(...a.values);
            expect(apart, said).toBe(true);
          }
        }
      }),
    );
  });
});

describe('the sentences of builds side by side', () => {
  const onFilm = (filmLeft: number, number: number) =>
    madeFrom({ release: 'Film A', releaseKind: 'filmSleeve', filmLeft, curedMass: 0.22 + filmLeft }, number);
  const onWax = (number: number) => madeFrom({ release: 'Wax and PVA', releaseKind: 'waxAndPva' }, number);

  it('count a release without a film as none left, though nobody weighed it', () => {
    const made = [onFilm(0.018, 1), onFilm(0.026, 2), onFilm(0.02, 3), onWax(4), onWax(5)];
    expect(sentencesOf(made)).toEqual([
      '3 builds on Film A left 18.0 to 26.0\u00a0g of film inside; 2 on Wax and PVA left none.',
    ]);
  });

  it('are silent about a figure that nobody weighed', () => {
    const unknown = (number: number) =>
      madeFrom({ release: 'Other', releaseKind: 'other', curedMass: undefined } as never, number);
    expect(sentencesOf([onFilm(0.02, 1), onFilm(0.02, 2), onFilm(0.02, 3), unknown(4), unknown(5)])).toEqual(
      [],
    );
  });
});
