import { describe, expect, it } from 'vitest';
import { lightDrafts } from '#app/curing/oven/light.ts';
import {
  chooseSchedule,
  loadDraft,
  loadOf,
  nothingWet,
  scheduleChoices,
  scheduleFrom,
  tapeNotOn,
  wantsHeat,
} from '#app/curing/oven/load-draft.ts';
import { brokenBy, cutoffOf, limitsOf } from '#app/curing/oven/oven-limits.ts';
import { foldOvenLoad } from '#shared/record/oven-state.ts';
import { starterReleases } from '#shared/reference/starter-releases.ts';
import { starterSchedules } from '#shared/reference/starter-schedules.ts';
import { build, buildHeader, celsius, entries, lit, load, loadHeader, schedule } from './oven-loads.ts';

const hotter = starterSchedules['starter-schedule-80-4'].schedule;
const boom = build({ schedule });
const sprit = build({ id: 'sprit', name: 'Sprit', number: 1, schedule: hotter });

describe('the limits of an oven load', () => {
  it('come from tape, release and resin, each felt in its place, lowest first', () => {
    expect(limitsOf([buildHeader()])).toMatchObject([
      { name: 'release film', sees: 'part', highest: celsius(82) },
      { name: 'resin', sees: 'part', highest: celsius(100) },
      { name: 'tape', sees: 'air', highest: celsius(150) },
    ]);
  });

  it('keep the lowest where two tubes differ', () => {
    const nylon = buildHeader({ release: starterReleases['starter-release-nylon-sleeve'] });
    expect(limitsOf([nylon, buildHeader()])[0]).toMatchObject({ name: 'release film', highest: celsius(82) });
    const wax = buildHeader({ release: starterReleases['starter-release-wax-pva'] });
    expect(limitsOf([wax, buildHeader()]).map((l) => l.name)).toEqual([
      'PVA coat',
      'release film',
      'resin',
      'tape',
    ]);
  });

  it('are checked against the schedule: which, and by how much', () => {
    const limits = [{ name: 'release film', sees: 'part', highest: celsius(72) } as const];
    expect(brokenBy(hotter, limits)).toMatchObject([
      { limit: limits[0], by: expect.closeTo(8, 9), hottest: celsius(80) },
    ]);
    expect(brokenBy(hotter, limitsOf([buildHeader()]))).toEqual([]);
    expect(brokenBy(hotter, [{ name: 'tape', sees: 'air', highest: celsius(80) }])).toEqual([]);
  });

  it('put the cutoff 10 degrees over the lowest', () => {
    expect(cutoffOf(limitsOf([buildHeader()]))).toBeCloseTo(celsius(92), 9);
    expect(cutoffOf([])).toBeUndefined();
  });
});

describe('an oven load being set up', () => {
  const wet = build({ id: 'wet' }, [
    { kind: 'cupStarted', cup: 'c', number: 1, of: 1, round: 1, resin: 0.07, hardener: 0.02, holds: 0.1 },
    {
      kind: 'clockStarted',
      clock: 'k',
      purpose: 'potLife',
      label: 'Cup 1',
      lasts: 1800,
      warns: 300,
      cup: 'c',
    },
  ] as never);

  it('takes the tubes whose resin is wet, and leaves the others out', () => {
    expect(wantsHeat(wet)).toBe(true);
    expect(wantsHeat(boom)).toBe(false);
    expect([...loadDraft([boom, wet], []).builds.value]).toEqual(['wet']);
  });

  it('has nothing wet on it before wet-out, until a cup has its hardener', () => {
    const tick = (step: string) => build({}, [{ kind: 'tick', step, round: 1 }] as never);
    expect(nothingWet(boom)).toBe(true);
    expect(nothingWet(tick('mix-films'))).toBe(true);
    expect(nothingWet(tick('wet-half'))).toBe(false);
    expect(nothingWet(tick('wrap-edge'))).toBe(false);
    expect(nothingWet(wet)).toBe(false);
  });

  it('asks for the tape while resin is wet and no taping is ticked', () => {
    expect(tapeNotOn(wet)).toBe(true);
    expect(tapeNotOn(boom)).toBe(false);
  });

  it('leaves out a tube that is in another load, until that is out', () => {
    const join = [{ kind: 'joinedOvenLoad', build: 'wet', ovenLoad: 'oven', round: 1 }] as never;
    const other = foldOvenLoad(loadHeader, entries('oven', join));
    expect(loadOf(wet, [other])).toBe(other);
    expect(loadDraft([wet], [other]).builds.value.size).toBe(0);
    expect(loadOf(wet, [{ ...other, outAt: lit }])).toBeUndefined();
    expect(loadOf(wet, [load({})])).toBeUndefined();
  });

  it('offers each planned schedule once, with whose it is, and the starter ones after', () => {
    const same = build({ id: 'mast', name: 'Mast', number: 3, schedule });
    const choices = scheduleChoices([boom, same, sprit]);
    expect(choices[0]?.label).toContain('Boom no. 2 and Mast no. 3');
    expect(choices[1]?.label).toContain('Sprit no. 1');
    expect(choices).toHaveLength(2 + Object.keys(starterSchedules).length);
    expect(scheduleChoices([build()])).toHaveLength(Object.keys(starterSchedules).length);
  });

  it('keeps a schedule whole until a figure of it is retyped', () => {
    const draft = loadDraft([boom], []);
    const choices = scheduleChoices([boom]);
    const planned = choices[0];
    if (!planned) throw new Error('no schedule to choose');
    chooseSchedule(draft, planned);
    expect(scheduleFrom(draft)).toBe(schedule);
    const lasts = draft.cure.stages.value[1]?.lasts;
    if (!lasts) throw new Error('no hold to change');
    lasts.text.value = '4 h';
    expect(scheduleFrom(draft)?.stages[1]).toEqual({ kind: 'hold', lasts: 4 * 3600 });
    lasts.text.value = '12 apples';
    expect(scheduleFrom(draft)).toBeUndefined();
  });
});

describe('lighting the oven', () => {
  let n = 0;
  const spread = [{ kind: 'tick', step: 'wet-half', round: 1 }] as never;
  const lighting = {
    builds: [
      build({ schedule }, spread),
      build({ id: 'sprit', name: 'Sprit', number: 1, schedule: hotter }, spread),
    ],
    unread: new Set(['sprit']),
    schedule,
    number: 12,
    at: lit,
    zone: -240,
    device: 'phone',
    newId: () => {
      n += 1;
      return `id-${n}`;
    },
  };
  const { header, drafts } = lightDrafts(lighting);

  it('freezes schedule, limits and channels: the air, and a sensor on every tube that has one', () => {
    expect(header).toMatchObject({ number: 12, schedule, startedAt: lit });
    expect(header.channels.map((c) => [c.sees, c.name, c.build])).toEqual([
      ['air', 'Air', undefined],
      ['part', 'Boom no. 2', 'boom'],
    ]);
    expect(header.limits).toEqual(limitsOf([boom.header, sprit.header]));
  });

  it('tells it in the journal of the load and of every tube, and says lit once', () => {
    const joined = drafts.filter((d) => d.kind === 'joinedOvenLoad');
    expect(joined.map((d) => [d.subject, d.build, d.round])).toEqual([
      [header.id, 'boom', 1],
      ['boom', 'boom', 1],
      [header.id, 'sprit', 1],
      ['sprit', 'sprit', 1],
    ]);
    expect(joined[0]).toHaveProperty('channel', header.channels[1]?.id);
    expect(joined[2]).not.toHaveProperty('channel');
    const stages = drafts.filter((d) => d.kind === 'ovenStage');
    expect(stages).toEqual([{ kind: 'ovenStage', subject: header.id, stage: 'lit' }]);
  });

  it('ticks the step of each route that it does', () => {
    const ticks = drafts.filter((d) => d.kind === 'tick').map((d) => [d.subject, d.step]);
    expect(ticks).toEqual([
      ['boom', 'cure-in'],
      ['sprit', 'cure-in'],
    ]);
  });

  it('leaves the route of a mandrel with nothing wet on it where it stands', () => {
    const { drafts: dry } = lightDrafts({ ...lighting, builds: [boom] });
    expect(dry.some((d) => d.kind === 'tick')).toBe(false);
    expect(dry.filter((d) => d.kind === 'joinedOvenLoad')).toHaveLength(2);
  });
});
