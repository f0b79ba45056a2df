import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cureCounting, cureFinish, cureProgress, cureTimeUsed, timeAtTemperature } from '#calc';
import { celsius, history, type Reading } from './histories.ts';

const kelvin = (degrees: number): number => degrees + 273.15;
const two = [
  { temperature: kelvin(25), time: 172800 },
  { temperature: kelvin(66), time: 10800 },
];
const one = [{ temperature: kelvin(65), time: 14400 }];
const held = (degrees: number, seconds: number): Reading[] => celsius([0, degrees], [seconds / 60, degrees]);

const sheets = fc.constantFrom<{ curePoints: typeof two; wanted?: number; own?: number }>(
  { curePoints: two },
  { curePoints: one },
  { curePoints: two, wanted: kelvin(60), own: kelvin(80) },
  { curePoints: one, wanted: kelvin(90), own: kelvin(80) },
  { curePoints: two, wanted: kelvin(110) },
);

describe('how cure time is counted', () => {
  it('is on the safe side of any epoxy, cold and hot, where the sheet gives one time only', () => {
    for (const energy of [45000, 55000, 65000]) {
      for (const degrees of [-5, 22, 50, 64, 66, 75, 79]) {
        const careful = cureTimeUsed({ readings: held(degrees, 3600), curePoints: one });
        const known = cureTimeUsed({
          readings: held(degrees, 3600),
          curePoints: one,
          activationEnergy: energy,
        });
        expect(careful).toBeLessThanOrEqual(known * (1 + 1e-12));
      }
    }
    const cold = timeAtTemperature({
      time: 14400,
      at: kelvin(65),
      temperature: kelvin(22),
      activationEnergy: 65000,
    });
    expect(cureTimeUsed({ readings: held(22, cold), curePoints: one })).toBeCloseTo(1, 9);
  });

  it('fits two points or more, and says how far the worst lies off three', () => {
    expect(cureCounting({ curePoints: two }).misfit).toBe(0);
    expect(cureCounting({ curePoints: two }).below).toBeCloseTo(56_900, -2);
    const onLine = timeAtTemperature({
      time: 10800,
      at: kelvin(66),
      temperature: kelvin(45),
      activationEnergy: cureCounting({ curePoints: two }).below,
    });
    const third = (time: number) => cureCounting({ curePoints: [...two, { temperature: kelvin(45), time }] });
    expect(third(onLine).misfit).toBeCloseTo(0, 9);
    expect(third(2 * onLine).misfit).toBeGreaterThan(0.3);
  });

  it('gives no credit for heat more than 15 K beyond the sheet', () => {
    const used = (degrees: number) => cureProgress({ readings: held(degrees, 600), curePoints: two }).share;
    expect(used(81)).toBeGreaterThan(used(80));
    expect(used(120)).toBeCloseTo(used(81), 12);
    // Through the ceiling and back counts only the part below it as itself.
    const peak = celsius([0, 71], [10, 91], [20, 71]);
    const cut = celsius([0, 71], [5, 81], [15, 81], [20, 71]);
    expect(cureProgress({ readings: peak, curePoints: two }).share).toBeCloseTo(
      cureProgress({ readings: cut, curePoints: two }).share,
      12,
    );
  });
});

describe('cure progress', () => {
  it('agrees with the plain count while nothing is hotter than the sheet and nothing stalls', () => {
    const readings = celsius([0, 22], [30, 66], [120, 70], [200, 40]);
    expect(cureProgress({ readings, curePoints: two }).share).toBeCloseTo(
      cureTimeUsed({ readings, curePoints: two }),
      12,
    );
  });

  it('stalls in a cool shop, goes on when it is warmed, and is whole once it is warm enough', () => {
    const wanted = kelvin(60);
    const cool = cureProgress({ readings: held(22, 30 * 86400), curePoints: two, wanted });
    expect(cool.share).toBeCloseTo(57 / 80, 9);
    const warm = { readings: held(44, 86400), curePoints: two, wanted, before: cool };
    expect(cureProgress(warm).share).toBeCloseTo(79 / 80, 9);
    const enough = cureProgress({ ...warm, readings: held(45, 86400) });
    expect(enough.share).toBeGreaterThan(1);
    // From where it stalled, and not from all the days it stood still.
    expect(enough.share - cool.share).toBeCloseTo(
      cureProgress({ readings: held(45, 86400), curePoints: two }).share,
      9,
    );
  });

  it('goes nowhere in a shop at -5 C, and says a number all the same', () => {
    const frozen = cureProgress({ readings: held(-5, 90 * 86400), curePoints: one, wanted: kelvin(90) });
    expect(frozen.share).toBeGreaterThan(0);
    expect(frozen.share).toBeLessThan(0.3);
    expect(cureProgress({ readings: held(-40, 1e7), curePoints: one, wanted: kelvin(60) }).share).toBe(0);
  });

  it('is never less for more heat', () => {
    fc.assert(
      fc.property(
        history,
        sheets,
        fc.array(fc.double({ min: 0, max: 40, noNaN: true }), { minLength: 12, maxLength: 12 }),
        (readings, sheet, more) => {
          const hotter = readings.map((r, k) => ({ ...r, temperature: r.temperature + (more[k] ?? 0) }));
          const { share } = cureProgress({ readings, ...sheet });
          const warmed = cureProgress({ readings: hotter, ...sheet }).share;
          expect(warmed).toBeGreaterThanOrEqual(share * (1 - 1e-9));
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('is the same when a history is split anywhere, or a reading on the line is added', () => {
    fc.assert(
      fc.property(
        history,
        sheets,
        fc.nat({ max: 10 }),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (readings, sheet, place, part) => {
          const k = place % (readings.length - 1);
          const [a, b] = [readings[k], readings[k + 1]];
          if (!a || !b) return;
          const middle = {
            time: a.time + part * (b.time - a.time),
            temperature: a.temperature + part * (b.temperature - a.temperature),
          };
          const whole = cureProgress({ readings, ...sheet });
          const head = [...readings.slice(0, k + 1), middle];
          const tail = [middle, ...readings.slice(k + 1)];
          const added = cureProgress({ readings: [...head, ...tail], ...sheet });
          const before = cureProgress({ readings: head, ...sheet });
          const joined = cureProgress({ readings: tail, ...sheet, before });
          for (const { share, hottest } of [added, joined]) {
            expect(Math.abs(share - whole.share)).toBeLessThanOrEqual(1e-7 * whole.share + 1e-12);
            expect(hottest).toBe(whole.hottest);
          }
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('agrees with small steps in time, stalling and ceiling and all', () => {
    fc.assert(
      fc.property(history, (readings) => {
        const [wanted, own] = [kelvin(75), kelvin(90)];
        const energy = cureCounting({ curePoints: two }).below;
        let [share, hottest] = [0, 0];
        readings.slice(1).forEach((to, k) => {
          const from = readings[k] ?? to;
          const steps = 4000;
          for (let s = 0; s < steps; s += 1) {
            const t = from.temperature + ((s + 0.5) / steps) * (to.temperature - from.temperature);
            hottest = Math.max(hottest, t);
            const counted = Math.min(t, kelvin(81));
            const full = timeAtTemperature({
              time: 10800,
              at: kelvin(66),
              temperature: counted,
              activationEnergy: energy,
            });
            const more = share + (to.time - from.time) / steps / full;
            const most = hottest + 15 >= wanted ? Number.POSITIVE_INFINITY : (hottest + 35 - 273.15) / 95;
            share = Math.max(share, Math.min(more, most));
          }
        });
        const got = cureProgress({ readings, curePoints: two, wanted, own }).share;
        expect(Math.abs(got - share)).toBeLessThanOrEqual(2e-3 * share + 1e-6);
      }),
      { numRuns: 60 },
    );
  });
});

describe('when it will be done', () => {
  it('is when the count comes to 1, on any history', () => {
    let done = 0;
    fc.assert(
      fc.property(history, sheets, (readings, sheet) => {
        const at = cureFinish({ readings, ...sheet });
        const whole = cureProgress({ readings, ...sheet }).share;
        expect(at === undefined).toBe(whole < 1);
        if (at === undefined) return;
        done += 1;
        const until = readings.filter((r) => r.time < at);
        const next = readings.find((r) => r.time >= at);
        const last = until.at(-1);
        if (!last || !next) return;
        const part = (at - last.time) / (next.time - last.time);
        const temperature = last.temperature + part * (next.temperature - last.temperature);
        expect(cureProgress({ readings: [...until, { time: at, temperature }], ...sheet }).share).toBeCloseTo(
          1,
          5,
        );
      }),
      { numRuns: 500 },
    );
    expect(done).toBeGreaterThan(50);
  });

  it('is now when it is done already, and unknown without anything to come', () => {
    const before = { share: 1.2, hottest: kelvin(66) };
    expect(cureFinish({ readings: held(66, 60), curePoints: two, before })).toBe(0);
    expect(cureFinish({ readings: [], curePoints: two })).toBeUndefined();
  });
});
