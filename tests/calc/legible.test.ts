import { describe, expect, it } from 'vitest';
import { digitHeight, readableFrom } from '#calc';

describe('how tall a digit has to be', () => {
  it('is 20 mm at 4 m', () => {
    expect(digitHeight({ distance: 4 })).toBeCloseTo(0.02, 12);
  });

  it('is what it is read from, taken back', () => {
    for (const distance of [0.4, 2, 4, 11]) {
      expect(readableFrom({ height: digitHeight({ distance }) })).toBeCloseTo(distance, 12);
    }
  });

  it('is more than the 16 minutes of arc that ISO 9241-303 asks for at least (from memory)', () => {
    const arc = 2 * Math.atan(digitHeight({ distance: 4 }) / 2 / 4);
    expect((arc * 180 * 60) / Math.PI).toBeGreaterThan(16);
    expect((arc * 180 * 60) / Math.PI).toBeLessThan(22);
  });

  it('says which field is wrong', () => {
    expect(() => digitHeight({ distance: 0 })).toThrow(/distance/);
    expect(() => readableFrom({ height: Number.NaN })).toThrow(/height/);
  });
});
