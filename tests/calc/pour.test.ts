import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  correctionForOvershoot,
  filmDeadline,
  hardenerForResin,
  potLifeUsed,
  ratioError,
  resinForHardener,
  scaleRatioError,
  smallestCupForScale,
} from '#calc';

const mass = fc.double({ min: 0.001, max: 2, noNaN: true });
const ratio = fc.double({ min: 0.05, max: 1.2, noNaN: true });

describe('a pour', () => {
  it('asks for hardener by what was poured, and for resin by the way back', () => {
    fc.assert(
      fc.property(mass, ratio, (resinPoured, hardenerPerResin) => {
        const hardenerPoured = hardenerForResin({ resinPoured, hardenerPerResin });
        expect(resinForHardener({ hardenerPoured, hardenerPerResin })).toBeCloseTo(resinPoured, 12);
        expect(ratioError({ resinPoured, hardenerPoured, hardenerPerResin })).toBeCloseTo(0, 12);
      }),
    );
  });

  it('is put right by one part only, and is then on ratio', () => {
    fc.assert(
      fc.property(mass, mass, ratio, (resinPoured, hardenerPoured, hardenerPerResin) => {
        const fix = correctionForOvershoot({ resinPoured, hardenerPoured, hardenerPerResin });
        expect(Math.min(fix.addResin, fix.addHardener)).toBe(0);
        expect(fix.addResin).toBeGreaterThanOrEqual(0);
        const after = {
          resinPoured: resinPoured + fix.addResin,
          hardenerPoured: hardenerPoured + fix.addHardener,
        };
        expect(ratioError({ ...after, hardenerPerResin })).toBeCloseTo(0, 9);
        expect(fix.total).toBeCloseTo(after.resinPoured + after.hardenerPoured, 12);
      }),
    );
  });

  it('says rich above 0 and lean below it', () => {
    const cup = { resinPoured: 0.1, hardenerPerResin: 0.3 };
    expect(ratioError({ ...cup, hardenerPoured: 0.033 })).toBeCloseTo(0.1, 12);
    expect(ratioError({ ...cup, hardenerPoured: 0.027 })).toBeCloseTo(-0.1, 12);
    expect(ratioError({ ...cup, hardenerPoured: 0 })).toBe(-1);
  });

  it('on ratio needs nothing', () => {
    const fix = correctionForOvershoot({ resinPoured: 0.1, hardenerPoured: 0.03, hardenerPerResin: 0.3 });
    expect(fix.addResin).toBeCloseTo(0, 12);
    expect(fix.addHardener).toBeCloseTo(0, 12);
  });
});

describe('a scale', () => {
  it('holds the tolerance at its smallest cup exactly', () => {
    fc.assert(
      fc.property(ratio, fc.double({ min: 0.001, max: 0.2, noNaN: true }), (hardenerPerResin, tolerance) => {
        const cup = smallestCupForScale({ scaleStep: 0.001, hardenerPerResin, tolerance });
        expect(scaleRatioError({ cup, scaleStep: 0.001, hardenerPerResin })).toBeCloseTo(tolerance, 12);
      }),
    );
  });

  it('is never further off in a whole pour than it says, but for the second order', () => {
    const cup = { cup: 0.1, scaleStep: 0.001, hardenerPerResin: 0.3 };
    const resin = 0.1 / 1.3;
    const said = scaleRatioError(cup);
    for (const [onResin, onHardener] of [
      [1, 1],
      [1, -1],
      [-1, 1],
      [-1, -1],
    ] as const) {
      const resinPoured = resin + (onResin * cup.scaleStep) / 2;
      const hardenerPoured = resin * 0.3 + (onHardener * cup.scaleStep) / 2;
      const off = Math.abs(ratioError({ resinPoured, hardenerPoured, hardenerPerResin: 0.3 }));
      expect(off).toBeLessThan(said * (1 + said));
    }
  });

  it('errs least where both parts are the same', () => {
    const cup = { cup: 0.1, scaleStep: 0.001 };
    const even = scaleRatioError({ ...cup, hardenerPerResin: 1 });
    expect(even).toBeCloseTo(0.02, 12);
    expect(scaleRatioError({ ...cup, hardenerPerResin: 0.5 })).toBeGreaterThan(even);
    expect(scaleRatioError({ ...cup, hardenerPerResin: 2 })).toBeGreaterThan(even);
  });
});

describe('pot life', () => {
  it('is used up at the deadline, to the second', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 60, max: 36000, noNaN: true }),
        fc.double({ min: 1, max: 5, noNaN: true }),
        (share, usableLife, filmFactor) => {
          const inCup = share * usableLife;
          const onFilm = Math.max(0, filmDeadline({ inCup, usableLife, filmFactor }) - inCup);
          expect(potLifeUsed({ inCup, onFilm, usableLife, filmFactor })).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  it('comes due at the end of the cup when the cup was never emptied in time', () => {
    expect(filmDeadline({ inCup: 1800, usableLife: 1800, filmFactor: 2 })).toBe(1800);
    expect(filmDeadline({ inCup: 5000, usableLife: 1800, filmFactor: 2 })).toBe(1800);
    expect(potLifeUsed({ inCup: 2700, onFilm: 0, usableLife: 1800, filmFactor: 2 })).toBe(1.5);
  });

  it('is longest when the cup is poured out at once, and no longer at all when a film gains nothing', () => {
    expect(filmDeadline({ inCup: 0, usableLife: 1800, filmFactor: 2 })).toBe(3600);
    expect(filmDeadline({ inCup: 600, usableLife: 1800, filmFactor: 1 })).toBe(1800);
    expect(() => filmDeadline({ inCup: 0, usableLife: 1800, filmFactor: 0.9 })).toThrow('filmFactor');
  });
});
