import { describe, expect, it } from 'vitest';
import { lastReading, readingDue } from '#app/curing/oven/reading-due.ts';
import { cupToMix, nextOf } from '#app/laying-up/bench/bench-now.ts';
import { listClocks } from '#app/laying-up/clocks/clock-list.ts';
import { buildOf, cupOf, minutes, ovenOf, ticksOf } from './shop-of.ts';

const beforeMix = ['mandrelPrep', 'release', 'cut', 'setUp'].flatMap((stage) => ticksOf(stage, 0));

describe('the next cup on the bench', () => {
  it('is not offered before the route has come to mixing', () => {
    expect(cupToMix(buildOf([]))).toBeUndefined();
  });

  it('is the first one, then the next', () => {
    expect(cupToMix(buildOf(beforeMix))).toBe('Mix the first cup');
    expect(cupToMix(buildOf([...beforeMix, ...cupOf('a', 1, 10)]))).toBe('Mix next cup');
  });

  it('is the one begun, as long as its hardener is not in', () => {
    expect(cupToMix(buildOf([...beforeMix, ...cupOf('a', 1, 10).slice(0, 2)]))).toBe('Go on with cup 1');
  });

  it('is still the one begun while its ratio has to be put right', () => {
    const rich = { minute: 10, kind: 'pour' as const, cup: 'a', part: 'hardener' as const, mass: 0.01 };
    expect(cupToMix(buildOf([...beforeMix, ...cupOf('a', 1, 10), rich]))).toBe('Go on with cup 1');
  });

  it('is not offered when enough is mixed', () => {
    const cups = [cupOf('a', 1, 10), cupOf('b', 2, 12), cupOf('c', 3, 14)].flat();
    expect(cupToMix(buildOf([...beforeMix, ...cups]))).toBeUndefined();
  });

  it('is offered when no cups can meet the goal: the mixing screen says why', () => {
    const goal = { fiberVolumeFraction: 0.35, lossPerCup: 0.9, squeezeOut: 0.1 };
    expect(cupToMix(buildOf(beforeMix, { goal }))).toBe('Mix the first cup');
  });
});

describe('what comes next', () => {
  it('is the stage and its first open step', () => {
    expect(nextOf(buildOf(beforeMix))).toMatch(/^Mix: \S/);
  });

  it('with the route through is to close the build', () => {
    const route = [{ stage: 'mix' as const, steps: [] }];
    expect(nextOf(buildOf([], { route }))).toMatch(/^Route done/);
  });
});

describe('the next reading of an oven load', () => {
  const lit = { minute: 5, kind: 'ovenStage' as const, stage: 'lit' as const };
  const read = (minute: number, temperature: number) => ({
    minute,
    kind: 'reading' as const,
    channel: 'air',
    temperature,
  });

  it('is not due before the oven is lit, nor after it is off', () => {
    expect(readingDue(ovenOf([]))).toBeUndefined();
    expect(readingDue(ovenOf([lit, { minute: 60, kind: 'ovenStage', stage: 'off' }]))).toBeUndefined();
  });

  it('is due a quarter of an hour after the last reading while it warms', () => {
    expect(readingDue(ovenOf([lit]))).toBe(minutes(5 + 15));
    expect(readingDue(ovenOf([lit, read(40, 320), read(20, 310)]))).toBe(minutes(40 + 15));
  });

  it('is due one interval of the schedule after the last reading once it holds', () => {
    const { readEvery, holdLow } = ovenOf([]).header.schedule;
    expect(readEvery).toBeGreaterThan(15 * 60);
    expect(readingDue(ovenOf([lit, read(40, holdLow), read(20, 310)]))).toBe(minutes(40 + readEvery / 60));
  });

  it('calls as a clock from when it is due, until it is logged or put off, and not for longer than an hour', () => {
    const calls = (minute: number, more: Parameters<typeof ovenOf>[0] = []) =>
      listClocks({ builds: [], ovenLoads: [ovenOf([lit, ...more])], clocks: [] }, minutes(minute)).map(
        ({ kind, phase, left }) => [kind, phase, left],
      );
    expect(calls(19.9)).toEqual([]);
    expect(calls(22)).toEqual([['reading', 'over', -120]]);
    expect(calls(22, [read(21, 310)])).toEqual([]);
    const putOff = { minute: 22, kind: 'clockAnswered' as const, clock: 'reading' };
    expect(calls(31.9, [putOff])).toEqual([]);
    expect(calls(32, [putOff])).toEqual([['reading', 'over', -720]]);
    expect(calls(81)).toEqual([]);
  });

  it('shows the newest reading, whatever order they were written in', () => {
    expect(lastReading(ovenOf([lit]))).toBeUndefined();
    expect(lastReading(ovenOf([read(40, 330), read(20, 310)]))).toBe(330);
  });
});
