import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  blendEquivalentWeight,
  cupsFor,
  massRatioFromVolumeRatio,
  resinForCloth,
  resinMassFraction,
  resinToMix,
  stoichiometricPhr,
  wetResinFraction,
} from '#calc';

const mass = fc.double({ min: 0.001, max: 10, noNaN: true });
const share = fc.double({ min: 0, max: 0.95, noNaN: true });

describe('resin kept', () => {
  it('is found again in the cured part and in the wet cloth', () => {
    fc.assert(
      fc.property(mass, share, fc.double({ min: 0, max: 0.1, noNaN: true }), (clothMass, fraction, film) => {
        const kept = resinForCloth({ clothMass, resinMassFraction: fraction });
        const partMass = clothMass + kept + film;
        expect(resinMassFraction({ clothMass, partMass, filmLeft: film })).toBeCloseTo(fraction, 9);
        expect(wetResinFraction({ clothMass, wetMass: partMass, filmMass: film })).toBeCloseTo(fraction, 9);
      }),
    );
  });

  it('is none at a resin share of 0, and as much as the cloth at 50:50', () => {
    expect(resinForCloth({ clothMass: 0.1, resinMassFraction: 0 })).toBe(0);
    expect(resinForCloth({ clothMass: 0.1, resinMassFraction: 0.5 })).toBe(0.1);
    expect(() => resinForCloth({ clothMass: 0.1, resinMassFraction: 1 })).toThrow('resinMassFraction');
  });

  it('takes film left out of the weight only when there is any', () => {
    expect(resinMassFraction({ clothMass: 0.1, partMass: 0.2 })).toBe(0.5);
    expect(resinMassFraction({ clothMass: 0.1, partMass: 0.2, filmLeft: 0 })).toBe(0.5);
    expect(resinMassFraction({ clothMass: 0.1, partMass: 0.21, filmLeft: 0.01 })).toBeCloseTo(0.5, 12);
  });

  it('cannot be less than none: a part lighter than its cloth is a weighing slip', () => {
    expect(resinMassFraction({ clothMass: 0.1, partMass: 0.1 })).toBe(0);
    expect(() => resinMassFraction({ clothMass: 0.1, partMass: 0.0999 })).toThrow(
      'partMass must be at least 0.1 kg',
    );
    expect(() => resinMassFraction({ clothMass: 0.1, partMass: 0.11, filmLeft: 0.02 })).toThrow('partMass');
    expect(() => wetResinFraction({ clothMass: 0.1, wetMass: 0.13, filmMass: 0.04 })).toThrow('wetMass');
  });
});

describe('cups', () => {
  const job = { kept: 0.139, squeezeOutShare: 0.1, lossPerCup: 0.014 };

  it('hold together what is to be mixed, none over the limit, and one fewer would not do', () => {
    fc.assert(
      fc.property(
        fc.record({
          kept: fc.double({ min: 0.001, max: 5, noNaN: true }),
          squeezeOutShare: fc.double({ min: 0, max: 0.5, noNaN: true }),
          lossPerCup: fc.double({ min: 0, max: 0.03, noNaN: true }),
          largestCup: fc.double({ min: 0.05, max: 0.5, noNaN: true }),
        }),
        (input) => {
          const { cups, each, total } = cupsFor(input);
          expect(total).toBeCloseTo(resinToMix({ ...input, cups }), 12);
          expect(cups * each).toBeCloseTo(total, 6);
          expect(each).toBeLessThanOrEqual(input.largestCup);
          if (cups === 1) return;
          const fewer = resinToMix({ ...input, cups: cups - 1 }) / (cups - 1);
          expect(fewer).toBeGreaterThan(input.largestCup);
        },
      ),
    );
  });

  it('count the loss of each cup more', () => {
    expect(resinToMix({ ...job, cups: 3 }) - resinToMix({ ...job, cups: 2 })).toBeCloseTo(0.014, 12);
  });

  it('fit a whole number of full cups exactly, without one for the rounding', () => {
    const full = { kept: 0.1 * 3, squeezeOutShare: 0, lossPerCup: 0, largestCup: 0.1 };
    expect(cupsFor(full)).toEqual({ cups: 3, each: 0.1, total: 0.1 * 3 });
    expect(cupsFor({ ...full, kept: 0.301 }).cups).toBe(4);
  });

  it('are one when one holds it all', () => {
    expect(cupsFor({ ...job, largestCup: 1 })).toEqual({
      cups: 1,
      each: 0.139 / 0.9 + 0.014,
      total: 0.139 / 0.9 + 0.014,
    });
  });

  it('are no bigger than can be worked in before they kick', () => {
    const slow = cupsFor({ ...job, largestCup: 0.2, workingRate: 0.00005, usableLife: 1200 });
    expect(slow.cups).toBe(4);
    expect(slow.each).toBeLessThanOrEqual(0.06);
    expect(cupsFor({ ...job, largestCup: 0.05, workingRate: 1, usableLife: 1200 }).each).toBeLessThanOrEqual(
      0.05,
    );
  });

  it('need rate and life together', () => {
    expect(() => cupsFor({ ...job, largestCup: 0.2, workingRate: 0.0001 })).toThrow('usableLife');
    expect(() => cupsFor({ ...job, largestCup: 0.2, usableLife: 1200 })).toThrow('workingRate');
  });

  it('are refused when a cup loses all it may hold, or a thousand would not be enough', () => {
    expect(() => cupsFor({ ...job, largestCup: 0.014 })).toThrow(
      'lossPerCup must be at least 0 and less than 0.014 kg',
    );
    expect(() => cupsFor({ ...job, largestCup: 0.0141 })).toThrow('largestCup');
    expect(() => cupsFor({ ...job, largestCup: 1, workingRate: 0.0000141, usableLife: 1000 })).toThrow(
      'workingRate',
    );
    expect(cupsFor({ ...job, squeezeOutShare: 0, largestCup: 0.014 + 0.139 / 999.5 }).cups).toBe(1000);
  });

  it('come whole', () => {
    expect(() => resinToMix({ ...job, cups: 2.5 })).toThrow('cups must be a whole number, got 2.5');
    expect(() => resinToMix({ ...job, cups: 0 })).toThrow('cups');
  });
});

describe('mixing ratio', () => {
  it('asks for 100 parts when both sides weigh the same per group', () => {
    expect(stoichiometricPhr({ amineHydrogenEquivalentWeight: 190, epoxideEquivalentWeight: 190 })).toBe(100);
  });

  it('keeps the equivalent weight of a blend of one thing, whatever its mass', () => {
    fc.assert(
      fc.property(mass, mass, fc.double({ min: 10, max: 1000, noNaN: true }), (a, b, equivalentWeight) => {
        const blend = blendEquivalentWeight([
          { mass: a, equivalentWeight },
          { mass: b, equivalentWeight },
        ]);
        expect(blend / equivalentWeight).toBeCloseTo(1, 12);
      }),
    );
  });

  it('takes an inert part as Infinity or as null, and refuses a blend that is nothing else', () => {
    const resin = { mass: 80, equivalentWeight: 189 };
    const asNull = blendEquivalentWeight([resin, { mass: 20, equivalentWeight: null }]);
    expect(asNull).toBe(blendEquivalentWeight([resin, { mass: 20, equivalentWeight: Infinity }]));
    expect(asNull).toBeCloseTo((189 * 100) / 80, 12);
    expect(() => blendEquivalentWeight([{ mass: 20, equivalentWeight: null }])).toThrow('equivalentWeight');
    expect(() => blendEquivalentWeight([{ mass: 0, equivalentWeight: 189 }])).toThrow('equivalentWeight');
  });

  it('is the volume ratio when both weigh the same, and moves with the densities', () => {
    const parts = { resinParts: 2, hardenerParts: 1 };
    expect(massRatioFromVolumeRatio({ ...parts, resinDensity: 1000, hardenerDensity: 1000 })).toBe(0.5);
    expect(massRatioFromVolumeRatio({ ...parts, resinDensity: 1000, hardenerDensity: 900 })).toBe(0.45);
  });
});
