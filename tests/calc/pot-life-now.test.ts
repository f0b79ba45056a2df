import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitActivation, heaviestCoolCup, lifeEnd, lifeUsed, potLifeNow } from '#calc';

const kelvin = (celsius: number) => celsius + 273.15;
const sheets = [
  { time: 1200, mass: 0.1, temperature: kelvin(25), ends: 'peakExotherm' },
  { time: 4500, mass: 0.15, temperature: kelvin(25), ends: 'gel' },
  { time: 9000, mass: 0.15, temperature: kelvin(23), ends: 'viscosityDoubled' },
] as const;
const sheet = fc.constantFrom(...sheets);
const celsius = (min: number, max: number) => fc.integer({ min, max }).map(kelvin);
const heat = { activationEnergy: 55_000 };
/** What the solver may be off by. */
const hair = 1 + 1e-6;

describe('pot life now', () => {
  it.each(sheets)('gives the data sheet’s own point back: $ends', (potLife) => {
    const own = { resinTemperature: potLife.temperature, shopTemperature: potLife.temperature };
    const { time, usable } = potLifeNow({ potLife, ...heat, mass: potLife.mass, ...own });
    expect(time / potLife.time).toBeCloseTo(1, 4);
    expect(usable / time).toBeCloseTo(potLife.ends === 'viscosityDoubled' ? 1 : 0.65, 9);
  });

  it.each([40_000, 55_000, 80_000])(
    'shows the activation energy it was given: %i J/mol',
    (activationEnergy) => {
      const at = (temperature: number) =>
        potLifeNow({
          potLife: sheets[1],
          activationEnergy,
          mass: 0.15,
          resinTemperature: temperature,
          shopTemperature: temperature,
        }).time;
      const points = [20, 30].map((c) => ({ temperature: kelvin(c), time: at(kelvin(c)) }));
      expect(fitActivation(points).energy / activationEnergy).toBeCloseTo(1, 2);
    },
  );

  it('never lasts longer when resin or shop is warmer', () => {
    fc.assert(
      fc.property(
        sheet,
        fc.double({ min: 0.02, max: 3, noNaN: true }),
        celsius(-5, 45),
        celsius(-5, 45),
        fc.integer({ min: 0, max: 20 }),
        fc.boolean(),
        (potLife, mass, resinTemperature, shopTemperature, more, ofShop) => {
          const cool = { potLife, ...heat, mass, resinTemperature, shopTemperature };
          const warm = ofShop
            ? { ...cool, shopTemperature: shopTemperature + more }
            : { ...cool, resinTemperature: resinTemperature + more };
          expect(potLifeNow(warm).usable).toBeLessThanOrEqual(potLifeNow(cool).usable * hair);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('never lasts longer in a bigger cup while the resin is no colder than the shop', () => {
    fc.assert(
      fc.property(
        sheet,
        fc.double({ min: 0.02, max: 3, noNaN: true }),
        fc.double({ min: 1, max: 10, noNaN: true }),
        celsius(-5, 45),
        fc.integer({ min: 0, max: 20 }),
        (potLife, mass, times, shopTemperature, more) => {
          const cup = { potLife, ...heat, shopTemperature, resinTemperature: shopTemperature + more };
          const small = potLifeNow({ ...cup, mass });
          const big = potLifeNow({ ...cup, mass: mass * times });
          expect(big.usable).toBeLessThanOrEqual(small.usable * hair);
          expect(big.riseShare).toBeGreaterThanOrEqual(small.riseShare - 1e-3);
        },
      ),
      { numRuns: 40 },
    );
  });

  it.each(sheets)('of 3 kg at -5 C and at 45 C is a number: $ends', (potLife) => {
    for (const shop of [-5, 45]) {
      for (const resin of [-5, 20, 45]) {
        const cup = { potLife, ...heat, resinTemperature: kelvin(resin), shopTemperature: kelvin(shop) };
        const { usable, riseShare } = potLifeNow({ ...cup, mass: 3 });
        expect(usable).toBeGreaterThan(10);
        expect(usable).toBeLessThan(30 * 86_400);
        expect(riseShare).toBeGreaterThanOrEqual(0);
        expect(riseShare).toBeLessThanOrEqual(1.01);
      }
    }
  });

  it('refuses what no shop is, by name', () => {
    const cup = { potLife: sheets[0], ...heat, resinTemperature: 300, shopTemperature: 300, mass: 0.1 };
    expect(() => potLifeNow({ ...cup, resinTemperature: 420 })).toThrow('resinTemperature');
    expect(() => potLifeNow({ ...cup, potLife: { ...sheets[0], ends: 'never' as 'gel' } })).toThrow('ends');
  });
});

describe('the heaviest cup that does not run away', () => {
  it('is just short of running away, and all that is asked about when that stays below', () => {
    const shop = { potLife: sheets[1], ...heat, resinTemperature: kelvin(25), shopTemperature: kelvin(25) };
    const heaviest = heaviestCoolCup({ ...shop, heaviest: 3 });
    expect(heaviest).toBeLessThan(3);
    expect(potLifeNow({ ...shop, mass: heaviest }).riseShare).toBeCloseTo(0.3, 2);
    expect(heaviestCoolCup({ ...shop, heaviest: 0.05 })).toBe(0.05);
  });
});

const history = fc
  .array(
    fc.record({ lasts: fc.integer({ min: 0, max: 3600 }), life: fc.integer({ min: 60, max: 20_000 }) }),
    {
      minLength: 1,
      maxLength: 6,
    },
  )
  .map((parts) => {
    let from = 0;
    return parts.map(({ lasts, life }) => {
      const span = { from, life };
      from += lasts;
      return span;
    });
  });

describe('a life that changes on the way', () => {
  it('is the same however its history is split', () => {
    fc.assert(
      fc.property(history, fc.integer({ min: 0, max: 20_000 }), (spans, cut) => {
        const before = spans.filter((s) => s.from <= cut);
        const split = [
          ...before,
          { from: cut, life: before.at(-1)?.life ?? 1 },
          ...spans.slice(before.length),
        ];
        expect(lifeEnd({ spans: split })).toBeCloseTo(lifeEnd({ spans }), 6);
        expect(lifeUsed({ spans: split, until: 9000 })).toBeCloseTo(lifeUsed({ spans, until: 9000 }), 9);
      }),
    );
  });

  it('is used up at its end, neither before nor after', () => {
    fc.assert(
      fc.property(history, (spans) => {
        expect(lifeUsed({ spans, until: lifeEnd({ spans }) })).toBeCloseTo(1, 9);
      }),
    );
  });

  it('ends no later when any part of it was warmer', () => {
    fc.assert(
      fc.property(history, fc.nat(), fc.double({ min: 0.1, max: 1, noNaN: true }), (spans, pick, share) => {
        const warm = spans.map((s, i) => (i === pick % spans.length ? { ...s, life: s.life * share } : s));
        expect(lifeEnd({ spans: warm })).toBeLessThanOrEqual(lifeEnd({ spans }) + 1e-6);
      }),
    );
  });

  it('refuses spans that are out of order', () => {
    const spans = [
      { from: 10, life: 100 },
      { from: 5, life: 100 },
    ];
    expect(() => lifeEnd({ spans })).toThrow('spans[1].from');
  });
});
