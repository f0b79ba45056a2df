import { describe, expect, test } from 'vitest';
import { summarize } from '#app/state/summarize.ts';
import type { BuildSummary, OvenSummary } from '#shared/record/summary.ts';
import { buildSummary, ovenSummary } from '#shared/record/summary.ts';
import { buildHeader, ovenLoadHeader } from '../record/arbitraries.ts';
import { cupOf, type Event, entriesOf, minutes, ticksOf } from './shop-of.ts';

const ofBuild = (events: readonly Event[], header: Partial<typeof buildHeader> = {}): BuildSummary => {
  const made = summarize({ ...buildHeader, ...header }, entriesOf(buildHeader.id, events));
  return buildSummary.parse(made) as BuildSummary;
};
const ofOven = (events: readonly Event[]): OvenSummary =>
  ovenSummary.parse(summarize(ovenLoadHeader, entriesOf(ovenLoadHeader.id, events))) as OvenSummary;

const turned = (minute: number, of: 'resin' | 'hardener' | 'cloth' | 'tape', lot: string, amount?: number) =>
  ({ minute, kind: 'lotDrawn', of, lot, label: lot, ...(amount !== undefined && { amount }) }) as const;
const drawn = (s: BuildSummary, of: string) =>
  s.draws.filter((d) => d.of === of).map(({ lot, amount }) => [lot, Number(amount.toFixed(6))]);

describe('what a build draws from lots', () => {
  test('is what was poured, from the can in use then', () => {
    const s = ofBuild([
      turned(0, 'resin', 'can-1'),
      turned(0, 'hardener', 'bottle-1'),
      ...cupOf('a', 1, 20),
      turned(40, 'resin', 'can-2'),
      ...cupOf('b', 2, 60),
    ]);
    expect(drawn(s, 'resin')).toEqual([
      ['can-1', 0.1],
      ['can-2', 0.1],
    ]);
    expect(drawn(s, 'hardener')).toEqual([
      ['bottle-1', 0.03],
      ['bottle-1', 0.03],
    ]);
  });

  test('counts a cup that was thrown out: it left the can all the same', () => {
    const s = ofBuild([
      turned(0, 'resin', 'can-1'),
      ...cupOf('a', 1, 20),
      { minute: 30, kind: 'cupDiscarded', cup: 'a' },
    ]);
    expect(drawn(s, 'resin')).toEqual([['can-1', 0.1]]);
    expect(s.poured).toEqual([]);
  });

  test('is the cloth as weighed, by what a square meter of it weighs', () => {
    const weighed = { minute: 5, kind: 'weight', what: 'cutCloth', mass: 0.193 } as const;
    expect(drawn(ofBuild([turned(0, 'cloth', 'roll-1'), weighed]), 'cloth')).toEqual([['roll-1', 1]]);
  });

  const besides = (minute: number, of: 'cloth' | 'tape', lot: string, amount: number) =>
    ({ ...turned(minute, of, lot, amount), besides: true }) as const;

  test('is from each of two rolls what it gave, whatever the cloth weighed in the end', () => {
    const two = [turned(0, 'cloth', 'roll-1'), besides(2, 'cloth', 'roll-2', 0.3)];
    const weighed = { minute: 5, kind: 'weight', what: 'cutCloth', mass: 0.193 } as const;
    expect(drawn(ofBuild([...two, weighed]), 'cloth')).toEqual([
      ['roll-1', 0.7],
      ['roll-2', 0.3],
    ]);
    const more = drawn(ofBuild([...two, besides(3, 'cloth', 'roll-2', 0.4), weighed]), 'cloth');
    expect(more, 'said again, the second roll gave the later figure').toEqual([
      ['roll-1', 0.6],
      ['roll-2', 0.4],
    ]);
    expect(drawn(ofBuild([...two, turned(4, 'cloth', 'roll-3'), weighed]), 'cloth')).toEqual([['roll-3', 1]]);
  });

  test('is of two reels what the second gave, and the rest from the first', () => {
    expect(
      drawn(ofBuild([turned(0, 'tape', 'reel-1', 14.2), besides(9, 'tape', 'reel-2', 4)]), 'tape'),
    ).toEqual([
      ['reel-1', 10.2],
      ['reel-2', 4],
    ]);
  });

  test('is nothing where no lot was named', () => {
    expect(ofBuild(cupOf('a', 1, 20)).draws).toEqual([]);
  });

  test('is the length of tape that was said', () => {
    expect(drawn(ofBuild([turned(0, 'tape', 'reel-1', 14.2)]), 'tape')).toEqual([['reel-1', 14.2]]);
  });
});

describe('how long the work took', () => {
  const work = [
    ...cupOf('a', 1, 10),
    { minute: 15, kind: 'cupEmpty', cup: 'a' } as const,
    ...ticksOf('wetOut', 33),
  ];

  test('is from the first cup poured out to the last tick of wet-out, then to the end of wrapping', () => {
    expect(ofBuild([...work, ...ticksOf('wrap', 45)])).toMatchObject({
      wetOutTime: 18 * 60,
      wrapTime: 12 * 60,
    });
  });

  test('is not known when a tick came later than the work', () => {
    const late = ticksOf('wetOut', 33).map((e) => ({ ...e, timeNotSeen: true }) as Event);
    expect(ofBuild([...work.slice(0, -late.length), ...late])).not.toHaveProperty('wetOutTime');
  });
});

test('a build keeps its last ratings, its notes and how far off each cup was', () => {
  const s = ofBuild([
    ...cupOf('a', 1, 10),
    { minute: 90, kind: 'rating', what: 'surface', value: 1 },
    { minute: 91, kind: 'rating', what: 'surface', value: 2 },
    { minute: 92, kind: 'note', text: 'Ridges at the thin end' },
  ]);
  expect(s.ratings).toEqual([{ what: 'surface', value: 2 }]);
  expect(s.notes).toEqual(['Ridges at the thin end']);
  expect(s.poured).toEqual([{ resin: 0.1, hardener: 0.03, wanted: 0.3 }]);
});

test('the wall is the mean of the stations that were measured', () => {
  const at = (station: number, value: number) =>
    ({ minute: 300, kind: 'measurement', what: 'outsideDiameter', station, value }) as const;
  const s = ofBuild([at(0.2, 0.0402), at(0.6, 0.0404)], { mandrelDiameter: 0.038, plies: 4 });
  const buildUp = buildHeader.release?.buildUp ?? 0;
  expect(s.wall).toBeCloseTo((0.0023 - buildUp) / 2, 9);
});

test('an oven load keeps what each tube read: highest, steepest, and the mean of its hold', () => {
  const read = (minute: number, celsius: number, channel = 'part-1') =>
    ({ minute, kind: 'reading', channel, temperature: celsius + 273.15 }) as const;
  const s = ofOven([
    { minute: 0, kind: 'joinedOvenLoad', build: 'build-1', ovenLoad: 'oven-1', round: 1, channel: 'part-1' },
    { minute: 0, kind: 'ovenStage', stage: 'lit' },
    read(0, 20),
    read(20, 60),
    read(60, 66),
    read(120, 68),
    read(200, 40),
    read(30, 75, 'air'),
  ]);
  expect(s.tubes[0]?.highest).toBeCloseTo(341.15, 9);
  expect(s.tubes[0]?.steepest).toBeCloseTo(2 / 60, 9);
  expect(s.tubes[0]?.held).toBeCloseTo(273.15 + 67, 6);
  expect(s.highestAir).toBeCloseTo(348.15, 9);
  expect(s.wantedHold).toBeCloseTo(273.15 + 66, 6);
});

test('a time entered later moves a pour to the can in use then', () => {
  const events = [turned(0, 'resin', 'can-1'), turned(15, 'resin', 'can-2'), ...cupOf('a', 1, 20)];
  expect(drawn(ofBuild(events), 'resin')).toEqual([['can-2', 0.1]]);
  const [pour] = entriesOf(buildHeader.id, events).filter((e) => e.kind === 'pour');
  if (!pour) throw new Error('no pour');
  const moved = { ...pour, id: 'later', corrects: pour.id, happenedAt: minutes(10), recordedAt: minutes(99) };
  const s = summarize(buildHeader, [...entriesOf(buildHeader.id, events), moved]) as BuildSummary;
  expect(drawn(s, 'resin')).toEqual([['can-1', 0.1]]);
});

describe('a proof test', () => {
  const hung = { kind: 'proofLoad', at: 1, mass: 10, station: 1, deflection: 0.02 } as const;

  test('is kept as what was foretold and what came, where anything was foretold', () => {
    expect(ofBuild([{ minute: 1, ...hung, expectedEach: 0.0018 }]).proof).toEqual([
      { expected: 0.018, measured: 0.02 },
    ]);
    expect(ofBuild([{ minute: 1, ...hung }])).not.toHaveProperty('proof');
    expect(ofBuild([{ minute: 1, ...hung, expectedEach: 99 }])).not.toHaveProperty('proof');
  });
});
