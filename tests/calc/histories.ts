import fc from 'fast-check';

export type Reading = { time: number; temperature: number };

/** Cure histories as an oven and a forgetful builder make them: uneven times, steps, long gaps. */
export const history: fc.Arbitrary<Reading[]> = fc
  .array(
    fc.record({
      after: fc.oneof(
        fc.constant(0),
        fc.double({ min: 1, max: 900, noNaN: true }),
        fc.integer({ min: 1, max: 36000 }),
      ),
      temperature: fc.double({ min: 263.15, max: 473.15, noNaN: true }),
    }),
    { minLength: 2, maxLength: 12 },
  )
  .map((steps) => {
    let time = 0;
    return steps.map(({ after, temperature }) => {
      time += after;
      return { time, temperature };
    });
  });

export const celsius = (...pairs: readonly (readonly [minutes: number, celsius: number])[]): Reading[] =>
  pairs.map(([minutes, degrees]) => ({ time: minutes * 60, temperature: degrees + 273.15 }));
