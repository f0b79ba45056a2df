import { describe, expect, it } from 'vitest';
import { ovenSeries } from '#app/curing/oven/oven-series.ts';
import { clearanceAt, type Fit, fitOf, type Material, verdictAt } from '#app/laying-up/demold/demold-fit.ts';
import { gripsSentence, readWords, verdictTitle } from '#app/laying-up/demold/demold-words.ts';
import { hoopGrowth } from '#app/laying-up/demold/hoop-growth.ts';
import { lastRead, setAt } from '#app/laying-up/demold/part-heat.ts';
import { hoopExpansion } from '#calc';
import type { BuildHeader } from '#shared/record/build.ts';
import { foldBuild } from '#shared/record/build-state.ts';
import { laminas } from '#shared/reference/laminas.ts';
import { starterCloths } from '#shared/reference/starter-cloths.ts';
import { starterReleases } from '#shared/reference/starter-releases.ts';
import { buildHeader, celsius, entries, load, minutes, type Read, schedule } from './oven-loads.ts';
import { carbon, pieceOf, shape, wallOf } from './wall-of.ts';

const known = { mandrelDiameter: 0.0381, tubeLength: 1.75, plies: 3, schedule };
const gelledAtMinute = (minute: number) =>
  entries('boom', [{ kind: 'check', what: 'gel', outcome: 'gelled', happenedAt: minutes(minute) }] as never);
const build = (change: Partial<BuildHeader> = {}, facts: ReturnType<typeof entries> = []) =>
  foldBuild(buildHeader({ ...known, ...change }), facts);
const onMandrel = (material: Material, change: Partial<BuildHeader> = {}): Fit => {
  const found = fitOf(build(change), setAt(build(change), undefined), material);
  if (typeof found === 'string') throw new Error(found);
  return found;
};
const at66 = { by: 'schedule', temperature: celsius(66) } as const;
const logOf = (read: Read) => {
  const state = load(read);
  return { load: state, series: ovenSeries(state) };
};
const cloth = (name: keyof typeof starterCloths) => ({ cloth: starterCloths[name] });
const glass = cloth('starter-cloth-glass-plain-163');
const along = cloth('starter-cloth-carbon-unidirectional-150');

describe('a tube on its mandrel', () => {
  it('of carbon on aluminum is gripped hot, loose in the shop, and says below what it comes loose', () => {
    const carbonOnAluminum = onMandrel('aluminum');
    expect(verdictAt(carbonOnAluminum, celsius(66))).toMatchObject({ is: 'wait' });
    expect(verdictAt(carbonOnAluminum, celsius(22))).toMatchObject({ is: 'loose' });
    const { loose } = carbonOnAluminum;
    // By hand: 66 C less 3e-4 over (23.6 - 4.1)e-6
    expect(loose).toBeGreaterThan(celsius(50));
    expect(loose).toBeLessThan(celsius(51.5));
    expect(clearanceAt(carbonOnAluminum, loose ?? 0)).toBeCloseTo(0, 12);
  });

  it('comes loose later on steel, and on steel not at all when it is of glass', () => {
    expect(onMandrel('steel').loose).toBeLessThan(onMandrel('aluminum').loose ?? 0);
    expect(verdictAt(onMandrel('steel', glass), celsius(10))).toEqual({ is: 'grips', below: null });
  });

  it('is barely loose where the room is less than typical figures can tell', () => {
    const steel = onMandrel('steel');
    const just = (steel.loose ?? 0) - 1;
    expect(verdictAt(steel, just)).toMatchObject({ is: 'loose', barely: true });
    expect(verdictTitle(verdictAt(steel, just))).toContain('may still grip');
    expect(verdictAt(onMandrel('aluminum'), celsius(22))).toMatchObject({ is: 'loose', barely: false });
  });

  it('with all its fibers along grips anything', () => {
    for (const material of ['aluminum', 'steel', 'stainless'] as const) {
      expect(verdictAt(onMandrel(material, along), celsius(20)).is).toBe('grips');
    }
  });

  it('is only reckoned where mandrel and fiber are known', () => {
    expect(fitOf(build(), at66, undefined)).toBe('material');
    expect(fitOf(build(), at66, 'composite')).toBe('expansion');
    const other = { ...starterCloths['starter-cloth-carbon-plain-193'], fiber: 'other' as const };
    expect(fitOf(build({ cloth: other }), at66, 'aluminum')).toBe('fiber');
    const { mandrelDiameter: _, ...rest } = known;
    expect(fitOf(foldBuild(buildHeader(rest), []), at66, 'aluminum')).toBe('diameter');
  });

  it('is told what to do in a sentence', () => {
    expect(verdictTitle({ is: 'wait', below: celsius(46) })).toMatch(/^Wait until it is below 46\s°C$/);
    expect(gripsSentence(null, starterReleases['starter-release-polyester-sleeve'])).toContain(
      'Pull the film first',
    );
    expect(gripsSentence(null, undefined)).toContain('twist first');
    expect(gripsSentence(celsius(-20), undefined)).toMatch(/below −20\s°C/);
  });
});

describe('the wall around the hoop', () => {
  const header = (pieces: Parameters<typeof wallOf>[0]) =>
    buildHeader({ plan: { type: 'plan', body: wallOf(pieces) } as never });
  const three = shape([
    [0, 3],
    [2.4, 3],
  ]);

  it('of woven pieces grows as balanced cloth does, whichever way they lie', () => {
    for (const angle of [0, Math.PI / 4, 0.3]) {
      const found = hoopGrowth(header([pieceOf(three, { angle })]));
      expect(found).toMatchObject({ by: 'pieces', fibers: 'carbon', diameter: expect.closeTo(0.0508, 3) });
      expect(found?.hoop).toBeCloseTo(hoopExpansion(laminas.carbon), 12);
    }
  });

  it('without a drawn wall is its cloth along and around', () => {
    expect(hoopGrowth(buildHeader())).toMatchObject({ by: 'cloth', hoop: hoopExpansion(laminas.carbon) });
    expect(carbon).toContain('carbon');
  });
});

describe('what it set at', () => {
  const read = {
    boom: [
      [0, 23],
      [20, 60],
      [30, 66],
    ] as [number, number][],
  };

  it('is what the part read when gel was seen, between readings too', () => {
    const found = setAt(build({}, gelledAtMinute(25)), logOf(read));
    expect(found).toMatchObject({ by: 'gel', sees: 'part', at: minutes(25) });
    expect(found.temperature).toBeCloseTo(celsius(63), 9);
  });

  it('is the first hold of the schedule when nobody saw gel, or nobody read the part near it', () => {
    expect(setAt(build(), logOf(read))).toEqual({ by: 'schedule', temperature: celsius(66) });
    expect(setAt(build({}, gelledAtMinute(90)), logOf(read))).toMatchObject({ by: 'schedule' });
  });

  it('is the shop where it gelled before the oven was lit, or where there is no oven', () => {
    expect(setAt(build({}, gelledAtMinute(-50)), logOf(read))).toMatchObject({ by: 'shop' });
    const bare = foldBuild(buildHeader({ mandrelDiameter: 0.03 }), []);
    expect(setAt(bare, undefined)).toEqual({ by: 'shop', temperature: celsius(23) });
  });

  it('is not what it reads now: that is the last reading of its own sensor', () => {
    expect(lastRead(build(), logOf(read))).toEqual({
      temperature: celsius(66),
      at: minutes(30),
      sees: 'part',
    });
    expect(lastRead(build(), logOf({}))).toBeUndefined();
  });

  it('asks for another reading once the last one is old, since a part that cools is another part', () => {
    const last = { temperature: celsius(66), at: minutes(30), sees: 'part' } as const;
    expect(readWords(last, minutes(55))).toMatch(/^The part, read \S+\s[AP]M$/);
    expect(readWords(last, minutes(95))).toMatch(/1\sh\s05 ago: read it again$/);
    expect(readWords({ ...last, sees: 'air' }, minutes(40))).toContain('the part follows it');
  });
});
