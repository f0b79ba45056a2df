import { describe, expect, it } from 'vitest';
import { coreLimits, mandrelLimits } from '#app/curing/oven/limits-beside.ts';
import { brokenBy, limitsOf } from '#app/curing/oven/oven-limits.ts';
import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import { limitSource } from '#shared/reference/limit-sources.ts';
import { starterCores } from '#shared/reference/starter-cores.ts';
import { starterMandrels } from '#shared/reference/starter-mandrels.ts';
import { starterReleases } from '#shared/reference/starter-releases.ts';
import { starterSchedules } from '#shared/reference/starter-schedules.ts';
import { buildHeader, celsius } from './oven-loads.ts';

const hotter = starterSchedules['starter-schedule-80-4'].schedule;
const postcured: CureSchedule = {
  ...starterSchedules['starter-schedule-66-3'].schedule,
  stages: [
    ...starterSchedules['starter-schedule-66-3'].schedule.stages,
    { kind: 'ramp', to: celsius(90), rate: 15 / 3600, offMandrel: true },
    { kind: 'hold', lasts: 4 * 3600, offMandrel: true },
  ],
};

describe('what bears least', () => {
  it('is among the core of the wall, felt by the part, and plugs and masking, felt by the air', () => {
    const cores = [starterCores['starter-core-pvc-5'], starterCores['starter-core-polystyrene-6']];
    expect(coreLimits(cores)).toMatchObject([{ name: 'core', sees: 'part', highest: celsius(70) }]);
    expect(coreLimits([])).toEqual([]);
    const plain = starterMandrels['starter-mandrel-aluminum-25'];
    expect(mandrelLimits(plain)).toEqual([]);
    const plugged = { ...plain, plugsTo: celsius(60), maskingTo: celsius(80) };
    expect(mandrelLimits(plugged).map((l) => [l.name, l.sees, l.highest])).toEqual([
      ['mandrel plugs', 'air', celsius(60)],
      ['masking', 'air', celsius(80)],
    ]);
  });

  it('is frozen into a build, and found in the oven it goes into', () => {
    const limits = coreLimits([starterCores['starter-core-polystyrene-6']]);
    expect(limitsOf([buildHeader({ limits })])[0]).toMatchObject({ name: 'core', highest: celsius(70) });
  });

  it('leaves tape and release out once the tube is off its mandrel', () => {
    expect(limitsOf([buildHeader()], true).map((l) => l.name)).toEqual(['resin']);
  });

  it('says where its figure comes from, as long as the starter value stands', () => {
    const nylon = starterReleases['starter-release-nylon-sleeve'];
    expect(limitSource(nylon)).toContain('AC 43.13-1B');
    expect(limitSource({ ...nylon, highestTemperature: celsius(190) })).toContain('Common practice');
    expect(limitSource({ name: 'Film from the corner shop', highestTemperature: celsius(90) })).toContain(
      'your shelf',
    );
    for (const { source } of limitsOf([buildHeader()])) expect(source).toBeTruthy();
  });
});

describe('a schedule against a limit', () => {
  const film = [{ name: 'release film', sees: 'part', highest: celsius(72) }] as const;

  it('is over it by so much, for so long, between two crossings', () => {
    // Up at 2 a minute from 23: at 72 after 24.5 min, at 80 after 28.5; down at 1.5 from 268.5 min on.
    const [broken] = brokenBy(hotter, film);
    expect(broken?.from).toBeCloseTo(24.5 * 60, 6);
    expect(broken?.until).toBeCloseTo((28.5 + 240 + 8 / 1.5) * 60, 6);
    expect(broken?.seconds).toBeCloseTo((4 + 240 + 8 / 1.5) * 60, 6);
  });

  it('breaks it by the margin of its own sensor', () => {
    const even = [{ name: 'tape', sees: 'air', highest: celsius(80) }] as const;
    expect(brokenBy(hotter, even)).toEqual([]);
    expect(brokenBy(hotter, even, { part: 5 })).toEqual([]);
    expect(brokenBy(hotter, even, { air: 5 })).toMatchObject([{ by: expect.closeTo(5, 9), margin: 5 }]);
  });

  it('spares film and tape the postcure that the tube takes off its mandrel, and not resin and core', () => {
    expect(brokenBy(postcured, [{ name: 'release film', sees: 'part', highest: celsius(82) }])).toEqual([]);
    expect(brokenBy(postcured, [{ name: 'core', sees: 'part', highest: celsius(82) }])).toHaveLength(1);
  });
});
