import { describe, expect, it } from 'vitest';
import { listClocks } from '#app/laying-up/clocks/clock-list.ts';
import { isMixed, lastsInCup, lastsOnFilm, whyOf } from '#app/laying-up/clocks/cup-clock.ts';
import { cupsInstead, heatAdvice, shopWords } from '#app/laying-up/mix/cup-heat-words.ts';
import { cupLife, lifeOfCup } from '#app/laying-up/mix/cup-life.ts';
import { planCups } from '#app/laying-up/mix/cup-planner.ts';
import { celsius } from '#shared/reference/quantities.ts';
import { starterResins } from '#shared/reference/starter-resins.ts';
import { buildOf as bareBuild, type Event, minutes } from './shop-of.ts';

const slow = starterResins['starter-resin-laminating-slow'];
/** A tube of 400 g of cloth with the starter shelf's SLOW. */
const buildOf = (events: readonly Event[]) => bareBuild(events, { resin: slow, clothMass: 0.4 });
const basis = { mass: 0.15, resin: celsius(25), air: celsius(25), energy: 55_000, sheet: 2925, film: 5850 };
const wet = (entries: readonly Event[]) => {
  const state = buildOf(entries);
  const cup = state.cups.find(isMixed);
  if (!cup) throw new Error('no cup is mixed');
  return { state, cup };
};
const started = (basisOf?: typeof basis): Event[] => [
  {
    minute: 0,
    kind: 'cupStarted',
    cup: 'c1',
    number: 1,
    of: 2,
    round: 1,
    resin: 0.115,
    hardener: 0.035,
    holds: 0.15,
  },
  {
    minute: 1,
    kind: 'clockStarted',
    clock: 'k1',
    purpose: 'potLife',
    label: 'Cup 1',
    lasts: 2925,
    warns: 585,
    cup: 'c1',
    round: 1,
    ...(basisOf && { basis: basisOf }),
  },
];

describe('the clock of a cup', () => {
  it('that an older version started stays as it was, whatever is entered since', () => {
    const { state, cup } = wet([...started(), { minute: 10, kind: 'surroundings', resin: celsius(40) }]);
    expect(lastsInCup(state, cup)).toBe(2925);
    expect(lastsOnFilm(state, cup, minutes(11))).toBe(600 + 2 * (2925 - 600));
    expect(whyOf(state, cup)).toBeUndefined();
  });

  it('is shortened by a warmer reading, from that moment on', () => {
    const { state, cup } = wet([...started(basis), { minute: 11, kind: 'surroundings', resin: celsius(35) }]);
    const lasts = lastsInCup(state, cup);
    // Ten degrees warmer is 2.05 times as quick at 55 kJ/mol.
    expect(lasts).toBeCloseTo(600 + (2925 - 600) / 2.054, -1);
    const [clock] = listClocks({ builds: [state], ovenLoads: [], clocks: [] }, minutes(12));
    expect(clock?.lasts).toBe(lasts);
    expect(clock?.warns).toBeCloseTo(lasts / 5, 6);
    expect(clock?.why).toMatchObject({ temperature: celsius(35), mass: 0.15, sheet: 2925 });
  });

  it('does not move when the same reading is entered twice', () => {
    const once = wet([...started(basis), { minute: 11, kind: 'surroundings', air: celsius(30) }]);
    const twice = wet([
      ...started(basis),
      { minute: 11, kind: 'surroundings', air: celsius(30) },
      { minute: 15, kind: 'surroundings', air: celsius(30) },
    ]);
    expect(lastsInCup(twice.state, twice.cup)).toBeCloseTo(lastsInCup(once.state, once.cup), 9);
    expect(lastsOnFilm(twice.state, twice.cup, minutes(13))).toBeCloseTo(
      lastsOnFilm(once.state, once.cup, minutes(13)),
      6,
    );
  });

  it('takes the air for the resin where only the air was read again', () => {
    const { state, cup } = wet([...started(basis), { minute: 11, kind: 'surroundings', air: celsius(30) }]);
    expect(whyOf(state, cup)?.temperature).toBeCloseTo(celsius(30), 9);
  });

  it('goes on on the film from what was used in the cup, at the warmth of the shop', () => {
    const cool = wet([...started(basis), { minute: 11, kind: 'cupEmpty', cup: 'c1' }]);
    const warm = wet([
      ...started(basis),
      { minute: 11, kind: 'cupEmpty', cup: 'c1' },
      { minute: 20, kind: 'surroundings', air: celsius(35) },
    ]);
    expect(lastsOnFilm(cool.state, cool.cup, minutes(11))).toBeCloseTo(600 + (1 - 600 / 2925) * 5850, 6);
    expect(lastsOnFilm(warm.state, warm.cup, minutes(11))).toBeLessThan(
      lastsOnFilm(cool.state, cool.cup, minutes(11)) - 600,
    );
  });
});

describe('a cup of this shop', () => {
  const at = (mass: number, resin = 25, air = resin) =>
    lifeOfCup(slow, { mass, resin: celsius(resin), air: celsius(air), assumed: false });

  it('lasts what the data sheet says at its own mass and temperature', () => {
    expect(at(0.15).usable).toBeCloseTo(0.65 * 75 * 60, 0);
    expect(at(0.15).heat).not.toBe('runsAway');
  });

  it('of 3 kg will run away, and says how many cups to mix instead', () => {
    const life = at(3);
    expect(life.heat).toBe('runsAway');
    expect(cupsInstead(slow, life)).toBe('20 cups of 150\u00a0g');
    expect(heatAdvice(slow, life)).toContain('20 cups of 150\u00a0g');
  });

  it('never outlasts a film of the same resin', () => {
    for (const mass of [0.005, 0.05, 0.5]) expect(at(mass).usable).toBeLessThanOrEqual(at(mass).basis.film);
  });

  it('at -5 C and at 45 C has a sentence, not a crash', () => {
    expect(shopWords(at(0.15, -5))).toContain('too thick');
    expect(shopWords(at(0.15, 45))).toContain('slower hardener');
    expect(shopWords(at(0.15, 22))).toBeUndefined();
    expect(at(3, -5).usable).toBeGreaterThan(at(3, 45).usable);
  });

  it('takes the thin-film time of the data sheet where it has one', () => {
    const sheet = { ...slow, thinFilm: { time: 7200, temperature: celsius(25) } };
    expect(
      lifeOfCup(sheet, { mass: 0.1, resin: celsius(25), air: celsius(25), assumed: false }).basis.film,
    ).toBe(7200);
  });

  it('is reckoned from what was entered for the build, else from the data sheet', () => {
    expect(cupLife(buildOf([]), 0.15, minutes(5)).basis).toMatchObject({ resin: celsius(25), assumed: true });
    const read = buildOf([{ minute: 1, kind: 'surroundings', resin: celsius(30), air: celsius(28) }]);
    const life = cupLife(read, 0.15, minutes(5));
    expect(life.basis).toMatchObject({ resin: celsius(30), air: celsius(28) });
    expect(life.usable).toBeLessThan(0.65 * 75 * 60);
    expect(cupLife(read, 0.15, minutes(24 * 60)).basis.assumed).toBe(true);
  });
});

describe('the cup planner', () => {
  it('has nothing to say before it knows how fast one works', () => {
    expect(planCups(buildOf([]), undefined, minutes(1))).toBeUndefined();
  });

  it('mixes one cup after the other, each on the cloth before it is used up', () => {
    const plan = planCups(buildOf([]), 0.01 / 60, minutes(1));
    const cups = plan?.cups ?? [];
    expect(cups.length).toBeGreaterThan(1);
    cups.forEach((cup, i) => {
      if (i > 0) expect(cup.mixAt).toBe(cups[i - 1]?.emptyAt);
      expect((cup.emptyAt - cup.mixAt) / 1000).toBeLessThanOrEqual(plan?.life?.usable ?? 0);
    });
    expect(plan?.tapeBy).toBeGreaterThan(cups[0]?.emptyAt ?? 0);
  });

  it('asks for smaller cups in a warmer shop', () => {
    const warm = buildOf([{ minute: 0, kind: 'surroundings', resin: celsius(38), air: celsius(38) }]);
    const count = (state: ReturnType<typeof buildOf>) =>
      planCups(state, 0.005 / 60, minutes(1))?.cups.length ?? 0;
    expect(count(warm)).toBeGreaterThan(count(buildOf([])));
  });

  it('takes the pace of the cups so far, and moves the rest when one took longer', () => {
    const emptied = (minute: number) =>
      buildOf([
        ...started(basis),
        { minute: 0.5, kind: 'pour', cup: 'c1', part: 'resin', mass: 0.115 },
        { minute: 2, kind: 'pour', cup: 'c1', part: 'hardener', mass: 0.035 },
        { minute, kind: 'cupEmpty', cup: 'c1' },
      ]);
    const quick = planCups(emptied(16), 0.01 / 60, minutes(40));
    const late = planCups(emptied(34), 0.01 / 60, minutes(40));
    expect(quick?.shown).toBe(true);
    expect(late?.rate).toBeLessThan(quick?.rate ?? 0);
    expect(late?.cups.at(-1)?.emptyAt).toBeGreaterThan(quick?.cups.at(-1)?.emptyAt ?? 0);
  });
});
