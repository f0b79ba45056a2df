import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compositeDensity,
  curedPlyThickness,
  diameterFromCircumference,
  fiberMassFraction,
  fiberVolumeFraction,
  fiberVolumeFractionFromMass,
  fiberVolumeFromThickness,
  voidFraction,
  wallFromOutside,
} from '#calc';

const carbon = { fiberDensity: 1800, resinDensity: 1180 };
const share = fc.double({ min: 0, max: 1, noNaN: true });
const density = fc.double({ min: 800, max: 3000, noNaN: true });

describe('fiber fractions', () => {
  it('return to the same volume fraction by way of the mass fraction', () => {
    fc.assert(
      fc.property(share, density, density, (fraction, fiberDensity, resinDensity) => {
        const mass = fiberMassFraction({ fiberVolumeFraction: fraction, fiberDensity, resinDensity });
        const back = fiberVolumeFractionFromMass({ fiberMassFraction: mass, fiberDensity, resinDensity });
        expect(back).toBeCloseTo(fraction, 12);
      }),
    );
  });

  it('return to the same mass fraction by way of the volume fraction', () => {
    fc.assert(
      fc.property(share, density, density, (fraction, fiberDensity, resinDensity) => {
        const volume = fiberVolumeFractionFromMass({
          fiberMassFraction: fraction,
          fiberDensity,
          resinDensity,
        });
        const back = fiberMassFraction({ fiberVolumeFraction: volume, fiberDensity, resinDensity });
        expect(back).toBeCloseTo(fraction, 12);
      }),
    );
  });

  it('agree between masses on the scale and their shares', () => {
    fc.assert(
      fc.property(share, fc.double({ min: 0.001, max: 10, noNaN: true }), (fraction, total) => {
        const masses = { fiberMass: total * fraction, resinMass: total * (1 - fraction) };
        expect(fiberVolumeFraction({ ...masses, ...carbon })).toBeCloseTo(
          fiberVolumeFractionFromMass({ fiberMassFraction: fraction, ...carbon }),
          12,
        );
      }),
    );
  });

  it('are equal by weight and by volume when fiber and resin weigh the same', () => {
    const same = { fiberDensity: 1200, resinDensity: 1200 };
    expect(fiberMassFraction({ fiberVolumeFraction: 0.37, ...same })).toBeCloseTo(0.37, 14);
  });

  it('are 1 for dry cloth and 0 for bare resin, and neither for an empty scale', () => {
    expect(fiberVolumeFraction({ fiberMass: 0.1, resinMass: 0, ...carbon })).toBe(1);
    expect(fiberVolumeFraction({ fiberMass: 0, resinMass: 0.1, ...carbon })).toBe(0);
    expect(() => fiberVolumeFraction({ fiberMass: 0, resinMass: 0, ...carbon })).toThrow('fiberMass');
  });
});

describe('density and voids', () => {
  it('run from the resin to the fiber', () => {
    expect(compositeDensity({ fiberVolumeFraction: 0, ...carbon })).toBe(1180);
    expect(compositeDensity({ fiberVolumeFraction: 1, ...carbon })).toBe(1800);
  });

  it('find the voids that were put in', () => {
    fc.assert(
      fc.property(share, fc.double({ min: 0, max: 0.3, noNaN: true }), (fraction, voids) => {
        const solid = compositeDensity({ fiberVolumeFraction: fraction, ...carbon });
        const mass = fiberMassFraction({ fiberVolumeFraction: fraction, ...carbon });
        const found = voidFraction({
          measuredDensity: solid * (1 - voids),
          fiberMassFraction: mass,
          ...carbon,
        });
        expect(found).toBeCloseTo(voids, 12);
      }),
    );
  });

  it('go below 0 when the part is denser than its parts, rather than hide a wrong density', () => {
    expect(voidFraction({ measuredDensity: 1420, fiberMassFraction: 0.451, ...carbon })).toBeLessThan(0);
  });
});

describe('thickness', () => {
  it('returns to the same fiber volume by way of the ply', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 0.99, noNaN: true }),
        fc.integer({ min: 1, max: 40 }),
        (fraction, plies) => {
          const cloth = { arealWeight: 0.193, fiberDensity: 1800 };
          const wall = plies * curedPlyThickness({ ...cloth, fiberVolumeFraction: fraction });
          expect(fiberVolumeFromThickness({ plies, ...cloth, wall })).toBeCloseTo(fraction, 12);
        },
      ),
    );
  });

  it('refuses a wall thinner than its own fiber, and takes one that is all fiber', () => {
    const cloth = { plies: 4, arealWeight: 0.18, fiberDensity: 1800 };
    expect(fiberVolumeFromThickness({ ...cloth, wall: (4 * 0.18) / 1800 })).toBe(1);
    expect(() => fiberVolumeFromThickness({ ...cloth, wall: 0.00039 })).toThrow(
      'wall must be at least 0.0004 m, got 0.00039',
    );
  });

  it('comes from the outside by caliper or by tape', () => {
    const outsideDiameter = diameterFromCircumference({ circumference: Math.PI * 0.0406 });
    expect(wallFromOutside({ outsideDiameter, innerDiameter: 0.0381 })).toBeCloseTo(0.00125, 12);
    expect(() => wallFromOutside({ outsideDiameter: 0.0381, innerDiameter: 0.0381 })).toThrow(
      'outsideDiameter must be greater than 0.0381 m',
    );
  });
});
