import { describe, expect, it } from 'vitest';
import { doneLines } from '#app/curing/oven/done-three.ts';
import type { Tube } from '#app/curing/oven/oven-cure.ts';
import { finishOf } from '#app/curing/oven/oven-finish.ts';
import { ovenNow } from '#app/curing/oven/oven-now.ts';
import { ovenResults } from '#app/curing/oven/oven-results.ts';
import { postcureOf } from '#app/curing/oven/postcure.ts';
import { room, tube38 } from './cure-loads.ts';
import { celsius, load, minutes, type Read, slow } from './oven-loads.ts';

const held: Read = {
  boom: [
    [0, 23],
    [22, 66],
    [52, 66],
    [82, 66],
  ],
};
const airOnly: Read = { air: held.boom ?? [] };
const plain: Tube = { resin: slow };

function finish(read: Read, tube: Tube, minute: number, header = {}) {
  const state = load(read, { header });
  const results = ovenResults(state, [tube]);
  return finishOf(state, results, ovenNow(state, results, minutes(minute)), minutes(minute));
}

describe('a cure judged by the air', () => {
  it('holds from three time constants of the mandrel on, and lags behind what a part sensor would say', () => {
    const state = load(airOnly);
    const results = ovenResults(state, [{ ...plain, mandrel: tube38 }]);
    const known = ovenResults(state, [plain]);
    // 2700 x 900 x 1.65 mm x (1 - 1.65/38.1) / 30 = 127.9 s
    expect(results.lag?.timeConstant).toBeCloseTo(127.9, 0);
    expect(known.held - results.held).toBeCloseTo(3 * 127.9, 0);
    expect(results.cure.known && known.cure.known && results.cure.share < known.cure.share).toBe(true);
  });

  it('is judged by the air as it is where the mandrel is unknown, or is foam', () => {
    const foam = { ...tube38, material: 'foam' as const };
    expect(ovenResults(load(airOnly), [plain]).lag).toBeUndefined();
    expect(ovenResults(load(airOnly), [{ ...plain, mandrel: foam }]).lag).toBeUndefined();
    expect(ovenResults(load(held), [{ ...plain, mandrel: tube38 }]).lag).toBeUndefined();
  });

  it('takes the slowest of two mandrels', () => {
    const bar = { ...tube38, material: 'steel' as const, diameter: 0.025, wall: undefined };
    const two = [
      { ...plain, mandrel: tube38 },
      { ...plain, mandrel: bar },
    ];
    expect(ovenResults(load(airOnly), two as Tube[]).lag?.timeConstant).toBeGreaterThan(700);
  });
});

describe('done', () => {
  const heatLine = (tube: Tube) => {
    const state = load(held);
    return doneLines(ovenResults(state, [tube]), state, [])[1];
  };

  it('needs the coldest part hot enough for 15 degrees over the hottest in service', () => {
    expect(heatLine({ ...plain, serviceTemperature: celsius(65) })?.met).toBe(true);
    expect(heatLine({ ...plain, serviceTemperature: celsius(67) })).toMatchObject({ met: false });
  });

  it('is never met where the resin itself softens below what is wanted, and says so', () => {
    const line = heatLine({ ...plain, serviceTemperature: celsius(75) });
    expect(line?.met).toBe(false);
    expect(line?.says.replaceAll('\u00a0', ' ')).toContain('this resin ends at 80 °C');
  });

  it('goes by the band of the schedule where no service was planned', () => {
    expect(heatLine(plain)?.met).toBe(true);
  });
});

describe('the predicted finish', () => {
  it('stands still between readings, and moves when one comes hotter or cooler', () => {
    const at = finish(held, plain, 83)?.atThis ?? 0;
    expect(finish(held, plain, 100)?.atThis).toBe(at);
    const read = (degrees: number): Read => ({ boom: [...(held.boom ?? []), [100, degrees]] });
    expect(finish(read(70), plain, 100)?.atThis).toBeLessThan(at);
    expect(finish(read(60), plain, 100)?.atThis).toBeGreaterThan(at);
  });

  it('says what the rest of the schedule comes to where it ends before it is done', () => {
    const short = {
      schedule: { ...load({}).header.schedule, stages: load({}).header.schedule.stages.slice(0, 1) },
    };
    const found = finish(
      {
        boom: [
          [0, 23],
          [10, 43],
        ],
      },
      plain,
      11,
      short,
    );
    expect(found?.onSchedule?.at).toBeUndefined();
    expect(found?.onSchedule?.share).toBeGreaterThan(0);
    expect(found?.onSchedule?.share).toBeLessThan(0.2);
  });

  it('warns of a stall before it comes, and of none where the schedule is hot enough', () => {
    const tube = { ...plain, serviceTemperature: celsius(45) };
    const cold: Read = {
      boom: [
        [0, 22],
        [60, 22],
      ],
    };
    expect(finish(cold, tube, 61, { schedule: room })?.stall).toMatchObject({
      isNow: false,
      needs: celsius(45),
      wanted: celsius(60),
    });
    expect(finish(cold, tube, 61)?.stall).toBeUndefined();
    expect(finish(cold, plain, 61, { schedule: room })?.stall).toBeUndefined();
  });

  it('is nothing once it is used up', () => {
    const long: Read = { boom: Array.from({ length: 12 }, (_, k) => [k * 30, 66] as const) };
    expect(finish(long, plain, 331)).toBeUndefined();
  });
});

describe('a postcure', () => {
  const earlier = [
    [
      { time: 0, temperature: celsius(22) },
      { time: 172800, temperature: celsius(22) },
    ],
  ];
  const of = (read: Read) =>
    postcureOf([{ ...plain, earlier }], ovenResults(load(read), [{ ...plain, earlier }]));

  it('is one only where the tube was cured before', () => {
    expect(postcureOf([plain], ovenResults(load(held), [plain]))).toBeUndefined();
    expect(of({})).toMatchObject({ softens: celsius(37), noHotter: celsius(47) });
  });

  it('lets the limit rise with what the part has been, never past the resin’s own', () => {
    expect(
      of({
        boom: [
          [0, 22],
          [60, 40],
        ],
      }),
    ).toMatchObject({ softens: celsius(55), noHotter: celsius(65) });
    expect(
      of({
        boom: [
          [0, 22],
          [600, 95],
        ],
      })?.softens,
    ).toBe(celsius(80));
  });

  it('says when it was read too hot for what it softens at, or warmed too fast', () => {
    expect(
      of({
        boom: [
          [0, 22],
          [60, 40],
        ],
      })?.tooHot,
    ).toBeUndefined();
    expect(
      of({
        boom: [
          [0, 22],
          [180, 48],
        ],
      })?.tooHot,
    ).toBe(celsius(48));
    expect(
      of({
        boom: [
          [0, 22],
          [60, 40],
        ],
      })?.tooSteep,
    ).toBeUndefined();
    expect(
      of({
        boom: [
          [0, 22],
          [30, 40],
        ],
      })?.tooSteep,
    ).toBeCloseTo(36 / 3600, 6);
  });
});
