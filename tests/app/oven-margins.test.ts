import { describe, expect, it } from 'vitest';
import { errorDraft, offsetInput, offsetsOf, proposeErrors } from '#app/curing/oven/error-draft.ts';
import { lightDrafts } from '#app/curing/oven/light.ts';
import { ovenResults } from '#app/curing/oven/oven-results.ts';
import { marginsOf } from '#app/curing/oven/over-limits.ts';
import { scheduleAhead } from '#app/curing/oven/schedule-ahead.ts';
import { build, celsius, lit, load, loadHeader, schedule } from './oven-loads.ts';

const channels = [
  { id: 'air', sees: 'air', name: 'Air', offset: 2 },
  { id: 'boom', sees: 'part', name: 'Boom no. 2', build: 'boom', offset: -3 },
  { id: 'element', sees: 'element', name: 'Element' },
] as const;
const over = (read: Parameters<typeof load>[0], header = {}) =>
  ovenResults(load(read, { header: { channels: [...channels], ...header } }), []).over;

describe('the margin from a limit', () => {
  it('is what the lowest reading sensor reads too low, and the unevenness of the oven', () => {
    expect(marginsOf(channels, 4)).toEqual({ air: 2, part: 7, element: 4 });
    expect(marginsOf([{ sees: 'air', offset: -1 }])).toEqual({ air: 1, part: 1, element: 0 });
  });

  it('counts against what was read: a sensor 3 degrees low is over before it says so', () => {
    // Film good to 82 on the part: 80 read is 83 in truth.
    expect(
      over({
        boom: [
          [0, 23],
          [30, 78],
        ],
        air: [[0, 23]],
      }),
    ).toEqual([]);
    const [film] = over({
      boom: [
        [0, 23],
        [30, 80],
      ],
    });
    expect(film).toMatchObject({ limit: { name: 'release film' }, counted: true, isNow: true });
    expect(film?.by).toBeCloseTo(1, 9);
    expect(
      over(
        {
          boom: [
            [0, 23],
            [30, 78],
          ],
        },
        { unevenness: 4 },
      )[0]?.by,
    ).toBeCloseTo(3, 9);
  });

  it('gives tape its due at the element too, where it is hotter than the air', () => {
    const found = over({
      boom: [
        [0, 23],
        [30, 60],
      ],
      air: [[0, 60]],
      element: [
        [0, 23],
        [30, 160],
      ],
    });
    expect(found.map((o) => [o.limit.name, o.limit.sees])).toEqual([['tape', 'element']]);
  });
});

describe('sensors and oven at set-up', () => {
  it('are proposed from the last load, over nothing that was typed', () => {
    const draft = errorDraft();
    offsetInput(draft, 'air').text.value = '1';
    proposeErrors(draft, { ...loadHeader, number: 7, unevenness: 4, channels: [...channels] });
    expect(draft.from.value).toBe(7);
    expect(draft.element.value).toBe(true);
    expect(draft.unevenness.si.value).toBe(4);
    expect(offsetsOf(draft).get('air')).toBeCloseTo(1, 9);
    expect(offsetInput(draft, 'boom', draft.partOffsets.value[0]).si.value).toBe(-3);
  });

  it('are frozen into the load: offsets by channel, an element channel, unevenness', () => {
    let n = 0;
    const { header } = lightDrafts({
      builds: [build()],
      unread: new Set(),
      schedule,
      offsets: new Map([
        ['air', 2],
        ['boom', undefined],
      ]),
      element: true,
      unevenness: 4,
      number: 1,
      at: lit,
      zone: 0,
      device: 'phone',
      newId: () => `id-${++n}`,
    });
    expect(header.unevenness).toBe(4);
    expect(header.channels.map((c) => [c.sees, c.offset])).toEqual([
      ['air', 2],
      ['part', undefined],
      ['element', undefined],
    ]);
  });
});

describe('the schedule still ahead', () => {
  it('begins where the schedule is, and holds what is left of the hold', () => {
    // 23 to 66 °C at 2 a minute takes 21.5 min, then 3 h.
    const mid = scheduleAhead(schedule, 10 * 60);
    expect(mid.start).toBeCloseTo(celsius(43), 6);
    expect(mid.stages).toHaveLength(3);
    const holding = scheduleAhead(schedule, (21.5 + 60) * 60);
    expect(holding.start).toBeCloseTo(celsius(66), 6);
    expect(holding.stages[0]).toMatchObject({ kind: 'hold', lasts: expect.closeTo(2 * 3600, 3) });
    expect(scheduleAhead(schedule, 1e6).stages).toEqual([]);
  });
});
