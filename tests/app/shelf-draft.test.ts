import { describe, expect, it } from 'vitest';
import { hardenerPerResin } from '#app/laying-up/mix/recipe.ts';
import { energyOf, lifeEnergy } from '#app/laying-up/mix/resin-energy.ts';
import { settings } from '#app/state/settings.ts';
import { moved } from '#app/stock/shelf/checklist-draft.ts';
import {
  askedFields,
  bodyOf,
  chooseWord,
  curePointInput,
  isGood,
  itemDraft,
  pairProblem,
} from '#app/stock/shelf/item-draft.ts';
import { type ItemType, isItemType } from '#app/stock/shelf/kinds.ts';
import { ownNote } from '#app/stock/shelf/own-note.ts';
import { gramsWords } from '#app/stock/shelf/ratio-line.tsx';
import { resinDoubts } from '#app/stock/shelf/resin-doubts.ts';
import { fitWords, massCheck } from '#app/stock/shelf/resin-fit.tsx';
import type { ResinSystem } from '#shared/record/resin-system.ts';
import type { Body } from '#shared/record/revision.ts';
import { starterResins } from '#shared/reference/starter-resins.ts';
import { starterShelf } from '#shared/reference/starter-shelf.ts';
import { starterTapes } from '#shared/reference/starter-tapes.ts';

const items = starterShelf().filter((s) => isItemType(s.type)) as {
  type: ItemType;
  doc: string;
  body: Body<ItemType>;
}[];
const slow: ResinSystem = starterResins['starter-resin-laminating-slow'];
const tape = starterTapes['starter-tape-polyester-25'];

describe('the fiber of a new cloth', () => {
  const density = (draft: ReturnType<typeof itemDraft>) => draft.numbers.get('fiberDensity')?.si.value;

  it('brings its usual density, until another is typed', () => {
    const draft = itemDraft('cloth');
    expect(density(draft)).toBe(1790);
    chooseWord(draft, 'fiber', 'glass');
    expect(density(draft)).toBe(2540);
    chooseWord(draft, 'fiber', 'other');
    expect(density(draft)).toBeUndefined();
    chooseWord(draft, 'fiber', 'aramid');
    expect(density(draft)).toBe(1450);
    const input = draft.numbers.get('fiberDensity');
    if (input) input.text.value = '1.76 g/cm3';
    chooseWord(draft, 'fiber', 'carbon');
    expect(density(draft)).toBeCloseTo(1760, 9);
  });
});

describe('a thing on the shelf that is opened and saved', () => {
  for (const { type, doc, body } of items) {
    it(`keeps every figure of ${doc} to the last digit, and is no longer typical`, () => {
      const draft = itemDraft(type, body);
      expect(isGood(draft)).toBe(true);
      const { typical: _, note, ...rest } = body;
      const own = ownNote(note ?? '');
      const woven = type === 'cloth' && { weave: 'woven' };
      expect(bodyOf(draft, body)).toEqual({ ...woven, ...rest, ...(own && { note: own }) });
    });
  }

  it('is saved without the lines that were added and never written on, and not with one that is half written', () => {
    const { typical: _, note: __, ...rest } = slow;
    const draft = itemDraft('resin', slow);
    draft.curePoints.value = [curePointInput(), ...draft.curePoints.value, curePointInput()];
    expect(isGood(draft)).toBe(true);
    expect(bodyOf(draft, slow)).toEqual(rest);
    const [first] = draft.curePoints.value;
    if (first) first.time.text.value = '3 h';
    expect(isGood(draft)).toBe(false);
  });

  it('keeps the pull of a tape from cold to hot, in whatever order it is written, and no list when there is none', () => {
    const draft = itemDraft('tape', tape);
    const points = draft.pullPoints;
    points.value = [...points.value].reverse();
    expect((bodyOf(draft, tape) as typeof tape).shrinkForce).toEqual(tape.shrinkForce);
    points.value = points.value.slice(0, 1);
    const only = points.value[0];
    if (only) only.force.text.value = '2.3 lbf/in';
    // 1 lbf/in is 175.127 N/m by definition.
    expect((bodyOf(draft, tape) as typeof tape).shrinkForce?.[0]?.force).toBeCloseTo(402.79, 2);
    points.value = [];
    expect(bodyOf(draft, tape)).not.toHaveProperty('shrinkForce');
  });

  it('says in a sentence that two pulls at one temperature cannot both be right, and what cannot be read', () => {
    const draft = itemDraft('tape', tape);
    const [first] = draft.pullPoints.value;
    if (!first) throw new Error('the starter has pulls');
    draft.pullPoints.value = [first, ...draft.pullPoints.value];
    expect(isGood(draft)).toBe(false);
    expect(pairProblem(draft, 'shrinkForce')).toContain('Two pulls at one temperature');
    draft.pullPoints.value = [first];
    expect(isGood(draft)).toBe(true);
    first.force.text.value = 'strong';
    expect(isGood(draft)).toBe(false);
    expect(first.force.problem.value).toContain('strong');
    expect(first.force.text.value).toBe('strong');
  });

  it('keeps what a newer version wrote into it', () => {
    const newer = { ...slow, pourOrder: 'resinFirst', potLife: { ...slow.potLife, stirred: true } };
    const saved = bodyOf(itemDraft('resin', newer), newer);
    expect(saved).toMatchObject({ pourOrder: 'resinFirst', potLife: { stirred: true, time: 4500 } });
  });

  it('asks only for the ratio that the data sheet gives, and keeps no other', () => {
    const draft = itemDraft('resin', slow);
    const by = draft.texts.get('ratio.by');
    if (by) by.value = 'equivalents';
    expect(isGood(draft)).toBe(false);
    const paths = askedFields(draft).map((f) => f.path);
    expect(paths).toContain('ratio.epoxide');
    expect(paths).not.toContain('ratio.phr');
    draft.numbers.get('ratio.epoxide')?.set(0.19);
    draft.numbers.get('ratio.amineHydrogen')?.set(0.06);
    expect(isGood(draft)).toBe(true);
    const saved = bodyOf(draft, slow) as ResinSystem;
    expect(saved.ratio).toEqual({ by: 'equivalents', epoxide: 0.19, amineHydrogen: 0.06 });
    // phr = 100 AHEW/EEW, from memory: 100 x 60 / 190
    expect(gramsWords(hardenerPerResin(saved))).toBe('100 g resin : 31.6 g hardener');
  });

  it('is not saved while a needed field is empty, and says nothing before the first press', () => {
    const draft = itemDraft('mandrel');
    expect(draft.pressed.value).toBe(false);
    expect(isGood(draft)).toBe(false);
    expect(draft.pressed.value).toBe(true);
    expect(bodyOf(draft)).toBeUndefined();
  });

  it('leaves what may stay empty out of the record', () => {
    const draft = itemDraft('resin', slow);
    draft.numbers.get('glassTransition')?.set(undefined);
    expect(isGood(draft)).toBe(true);
    expect(bodyOf(draft, slow)).not.toHaveProperty('glassTransition');
  });

  it('can lose its last cure point, and gain one only with both of its figures', () => {
    const draft = itemDraft('resin', slow);
    draft.curePoints.value = [];
    expect(isGood(draft)).toBe(true);
    expect(bodyOf(draft, slow)).toMatchObject({ curePoints: [] });
  });

  it('says so when a tape would pull before it shrinks, or fail before it pulls', () => {
    const draft = itemDraft('tape', tape);
    expect(pairProblem(draft, 'pullsFrom')).toBeUndefined();
    draft.numbers.get('pullsFrom')?.set(330);
    expect(pairProblem(draft, 'pullsFrom')).toContain('before it begins to shrink');
    expect(isGood(draft)).toBe(false);
    draft.numbers.get('pullsFrom')?.set(430);
    expect(pairProblem(draft, 'highestTemperature')).toContain('fail before it pulls');
  });
});

describe('a note of a typical value', () => {
  it('keeps what is true of the builder’s own too', () => {
    expect(
      ownNote('Typical values, not a data sheet. Check them against the one that came with yours.'),
    ).toBe('');
    expect(
      ownNote('Typical values. Weigh a square of your own cloth. Aramid takes up water: dry it 0.5 h first.'),
    ).toBe('Aramid takes up water: dry it 0.5 h first.');
    expect(ownNote('')).toBe('');
  });
});

describe('a step that is moved', () => {
  it('goes one place up or down and takes nothing with it', () => {
    expect(moved(['a', 'b', 'c'], 1, -1)).toEqual(['b', 'a', 'c']);
    expect(moved(['a', 'b', 'c'], 1, 1)).toEqual(['a', 'c', 'b']);
  });

  it('stays at either end', () => {
    expect(moved(['a', 'b'], 0, -1)).toEqual(['a', 'b']);
    expect(moved(['a', 'b'], 1, 1)).toEqual(['a', 'b']);
    expect(moved([], 0, 1)).toEqual([]);
  });
});

describe('more from the data sheet of a resin', () => {
  const rich: ResinSystem = {
    ...slow,
    morePotLives: [{ time: 2400, mass: 0.15, temperature: 308.15, ends: 'gel' }],
    thinFilm: { time: 7200, temperature: 298.15 },
    gelTimes: [{ time: 9000, temperature: 298.15 }],
    glassAfter: [{ time: 10_800, temperature: 339.15, glassTransition: 350.15 }],
    epoxideEquivalent: 0.19,
    amineEquivalent: 0.057,
    reactionHeat: 420_000,
    specificHeat: 1900,
  };

  it('is kept to the last digit when it is opened and saved', () => {
    const draft = itemDraft('resin', rich);
    expect(isGood(draft)).toBe(true);
    const { typical: _, note: __, ...rest } = rich;
    expect(bodyOf(draft, rich)).toMatchObject(rest);
  });

  it('leaves nothing behind when it is emptied', () => {
    const draft = itemDraft('resin', rich);
    for (const path of ['thinFilm.time', 'thinFilm.temperature']) draft.numbers.get(path)?.set(undefined);
    const list = draft.lists.get('gelTimes');
    if (list) list.value = [];
    const saved = bodyOf(draft, rich) as ResinSystem;
    expect(saved).not.toHaveProperty('thinFilm');
    expect(saved).not.toHaveProperty('gelTimes');
  });

  it('opens when something in it is wrong, and asks for both halves of a thin film', () => {
    const draft = itemDraft('resin', slow);
    draft.numbers.get('thinFilm.time')?.set(7200);
    expect(isGood(draft)).toBe(false);
    expect(pairProblem(draft, 'thinFilm.temperature')).toContain('both');
    expect(draft.moreOpen.value).toBe(true);
  });
});

describe('what reads like a slip in a data sheet', () => {
  const at = (celsius: number, time: number) => ({ temperature: celsius + 273.15, time });

  it('is nothing on the starter shelf', () => {
    for (const resin of Object.values(starterResins)) expect(resinDoubts(resin)).toEqual([]);
  });

  it('is a cure that takes longer when it is hotter', () => {
    const doubts = resinDoubts({ ...slow, curePoints: [at(25, 10_800), at(66, 172_800)] });
    expect(doubts.join()).toContain('Hotter should be quicker');
  });

  it('is one point twice', () => {
    const doubts = resinDoubts({ ...slow, curePoints: [at(25, 172_800), at(25, 172_800)] });
    expect(doubts.join()).toContain('one point twice');
    const lives = resinDoubts({ ...slow, morePotLives: [{ ...slow.potLife }] });
    expect(lives.join()).toContain('one point twice');
  });

  it('is Fahrenheit typed for Celsius, and the reverse', () => {
    expect(resinDoubts({ ...slow, highestTemperature: 212 + 273.15 }).join()).toContain('212 °F');
    expect(resinDoubts({ ...slow, curePoints: [at(150, 10_800)] }).join()).toContain('150 °F');
    const before = settings.value;
    settings.value = { ...before, units: 'inchPound' };
    const cool = { ...slow, curePoints: [{ temperature: (66 + 459.67) / 1.8, time: 10_800 }] };
    expect(resinDoubts(cool).join()).toContain('66 °C');
    expect(resinDoubts({ ...slow, highestTemperature: (100 + 459.67) / 1.8 }).join()).toContain('100 °C');
    settings.value = before;
  });
});

describe('the activation energy of a resin', () => {
  const life = (celsius: number, minutes: number, mass = 0.15) =>
    ({ time: minutes * 60, mass, temperature: celsius + 273.15, ends: 'gel' }) as const;

  it('is assumed from one pot life, and fitted from two of the same mass', () => {
    expect(lifeEnergy(slow)).toEqual({ energy: 55_000, residual: 0, points: 1 });
    const two = { ...slow, morePotLives: [life(35, 35), life(25, 40, 0.5)] };
    expect(lifeEnergy(two)).toMatchObject({ points: 2, residual: 0 });
    expect(lifeEnergy(two).energy / 1000).toBeCloseTo(58.2, 1);
    expect(fitWords(lifeEnergy(two))).toBe('two points, no check');
  });

  it('is called strange outside of 40 to 90 kJ/mol', () => {
    const steep = energyOf([life(25, 75), life(35, 20)]);
    expect(steep && fitWords(steep)).toContain('outside 40\u00a0kJ/mol to 90\u00a0kJ/mol');
  });

  it('says how far three points are off the line', () => {
    const three = energyOf([life(20, 110), life(25, 75), life(35, 40)]);
    expect(three && fitWords(three)).toMatch(/^3 points, .* off the line$/);
  });

  it('is checked by a second mass, which is not fitted', () => {
    const sheet = life(25, 12, 0.5);
    const check = massCheck({ ...slow, potLife: life(25, 20, 0.1), morePotLives: [sheet] });
    expect(check?.sheet).toBe(sheet);
    expect(Math.abs((check?.reckoned ?? 0) / 720 - 1)).toBeLessThan(0.25);
  });
});
