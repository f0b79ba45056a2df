// arithmetic, measured, prescribed, practice: as explained in laminate.test.ts.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoldClearance, hoopPressure, looseTemperature, windTape } from '#calc';

describe('a mandrel that shrinks out of a tube that does not', () => {
  // Callister, Materials Science and Engineering, table B.6 (from memory): 6061 23.6, 304 17.2, 1020 11.7 e-6/K.
  // 25 mm over 60 K, free: mm on the diameter.
  it.each([
    ['6061 aluminum', 23.6e-6, 0.0354],
    ['304 stainless', 17.2e-6, 0.0258],
    ['1020 steel', 11.7e-6, 0.0176],
  ])('arithmetic: of %s leaves what the handbook gives', (_, mandrelExpansion, room) => {
    const clearance = demoldClearance({
      diameter: 0.025,
      mandrelExpansion,
      laminateHoopExpansion: 0,
      setTemperature: 353.15,
      temperature: 293.15,
    });
    expect(Math.abs(clearance * 1000 - room)).toBeLessThan(0.00006);
  });
});

describe('clearance', () => {
  const fit = fc.record({
    mandrelExpansion: fc.double({ min: 15e-6, max: 30e-6, noNaN: true }),
    laminateHoopExpansion: fc.double({ min: -2e-6, max: 12e-6, noNaN: true }),
    setTemperature: fc.double({ min: 300, max: 420, noNaN: true }),
    cureShrinkage: fc.double({ min: 0, max: 3e-4, noNaN: true }),
  });
  const diameter = fc.double({ min: 0.005, max: 0.3, noNaN: true });

  it('is none at the temperature where the tube comes loose', () => {
    fc.assert(
      fc.property(fit, diameter, (input, d) => {
        const temperature = looseTemperature(input);
        if (temperature === null) throw new Error('this metal always comes loose somewhere');
        expect(Math.abs(demoldClearance({ ...input, diameter: d, temperature })) / d).toBeLessThan(
          1e-15 + 1e-12,
        );
      }),
    );
  });

  it('grows as it cools, and with a mandrel that shrinks more', () => {
    fc.assert(
      fc.property(fit, diameter, fc.double({ min: 1, max: 100, noNaN: true }), (input, d, colder) => {
        const temperature = input.setTemperature - colder;
        const now = demoldClearance({ ...input, diameter: d, temperature });
        expect(demoldClearance({ ...input, diameter: d, temperature: temperature - 1 })).toBeGreaterThan(now);
        const mandrelExpansion = input.mandrelExpansion + 1e-6;
        expect(demoldClearance({ ...input, mandrelExpansion, diameter: d, temperature })).toBeGreaterThan(
          now,
        );
      }),
    );
  });

  it('never comes where the mandrel shrinks no more than the tube', () => {
    const fit = { mandrelExpansion: 11.7e-6, laminateHoopExpansion: 16e-6, setTemperature: 333.15 };
    expect(looseTemperature(fit)).toBeNull();
    expect(looseTemperature({ ...fit, laminateHoopExpansion: 11.7e-6 })).toBeNull();
    expect(looseTemperature({ ...fit, laminateHoopExpansion: 11e-6, cureShrinkage: 3e-3 })).toBeNull();
  });

  it('without cure shrinkage is that with a shrinkage of 0', () => {
    const input = { diameter: 0.03, mandrelExpansion: 2e-5, laminateHoopExpansion: 4e-6 };
    const heat = { setTemperature: 330, temperature: 300 };
    expect(demoldClearance({ ...input, ...heat })).toBe(
      demoldClearance({ ...input, ...heat, cureShrinkage: 0 }),
    );
  });
});

describe('tape', () => {
  it('arithmetic: of 15 mm at 50 N on a radius of 12.5 mm presses with 266.7 kPa a layer', () => {
    const pressure = hoopPressure({ tensionPerWidth: 50 / 0.015, radius: 0.0125, layers: 1 });
    expect(pressure / 1000).toBeCloseTo(266.7, 1);
  });

  // The curve itself, by many short chords in three dimensions: another model of the same tape.
  it('on a cone is as long as its curve in space', () => {
    const [long, r0, r1, advance] = [0.8, 0.02, 0.008, 0.0127];
    const steps = 400_000;
    let length = 0;
    let before = [r0, 0, 0];
    for (let k = 1; k <= steps; k += 1) {
      const x = (long * k) / steps;
      const r = r0 + ((r1 - r0) * k) / steps;
      const turn = (2 * Math.PI * x) / advance;
      const here = [r * Math.cos(turn), r * Math.sin(turn), x];
      length += Math.hypot(...here.map((value, i) => value - (before[i] ?? 0)));
      before = here;
    }
    const wound = windTape({
      outside: [
        { at: 0, diameter: 2 * r0 },
        { at: long, diameter: 2 * r1 },
      ],
      width: 2 * advance,
      thickness: 0,
      overlapFraction: 0.5,
      passes: 1,
    });
    expect(Math.abs(wound.length / length - 1)).toBeLessThan(1e-7);
    expect(wound.turns).toBeCloseTo(long / advance, 9);
  });
});
