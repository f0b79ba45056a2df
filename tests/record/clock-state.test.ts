import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foldBuild } from '#shared/record/build-state.ts';
import { readClock } from '#shared/record/clock-state.ts';
import { begun, buildHeader, entryOf } from './arbitraries.ts';

const clock = { startedAt: begun, lasts: 1800, warns: 300 };
const at = (seconds: number) => readClock(clock, begun + seconds * 1000);

describe('a clock read at a time of day', () => {
  it('runs from its start', () => {
    expect(at(0)).toEqual({ phase: 'running', left: 1800, gone: 0, endsAt: begun + 1_800_000 });
    expect(at(900)).toMatchObject({ phase: 'running', left: 900, gone: 0.5 });
  });

  it('warns from its warning on, and not a millisecond before', () => {
    expect(readClock(clock, begun + 1_500_000 - 1).phase).toBe('running');
    expect(at(1500)).toMatchObject({ phase: 'warning', left: 300 });
    expect(readClock(clock, begun + 1_800_000 - 1).phase).toBe('warning');
  });

  it('is over at its end and says by how much', () => {
    expect(at(1800)).toMatchObject({ phase: 'over', left: 0, gone: 1 });
    expect(at(1860)).toMatchObject({ phase: 'over', left: -60, gone: 1 });
  });

  it('still says so the day after', () => {
    expect(at(1800 + 86_400)).toMatchObject({ phase: 'over', left: -86_400, gone: 1 });
  });

  it('never warns when it has no warning', () => {
    expect(readClock({ ...clock, warns: 0 }, begun + 1_799_999).phase).toBe('running');
  });

  it('warns at once when it is shorter than its warning', () => {
    expect(readClock({ ...clock, lasts: 60 }, begun).phase).toBe('warning');
  });

  it('is ended once answered, running or over', () => {
    expect(readClock({ ...clock, endedAt: begun + 5 }, begun + 10).phase).toBe('ended');
    expect(readClock({ ...clock, endedAt: begun + 5 }, begun + 9e9).phase).toBe('ended');
  });

  it('read before its start, when the phone was set back, has gone by nothing', () => {
    expect(at(-3600)).toMatchObject({ phase: 'running', left: 5400, gone: 0 });
  });

  it('goes only forward: running, warning, over', () => {
    const order = ['running', 'warning', 'over'];
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 90_000 }),
        fc.integer({ min: 0, max: 100_000 }),
        fc.integer({ min: -1000, max: 200_000_000 }),
        fc.nat(100_000_000),
        (lasts, warns, first, later) => {
          const one = readClock({ startedAt: begun, lasts, warns }, begun + first);
          const two = readClock({ startedAt: begun, lasts, warns }, begun + first + later);
          expect(order.indexOf(two.phase)).toBeGreaterThanOrEqual(order.indexOf(one.phase));
          expect(two.left).toBeLessThanOrEqual(one.left);
          expect(two.gone).toBeGreaterThanOrEqual(one.gone);
        },
      ),
    );
  });
});

describe('the clocks of a build', () => {
  const cup = entryOf({
    kind: 'cupStarted',
    cup: 'c',
    number: 1,
    of: 1,
    round: 1,
    resin: 0.1,
    hardener: 0.03,
    holds: 0.2,
  });
  const started = entryOf({
    kind: 'clockStarted',
    clock: 'k',
    purpose: 'potLife',
    label: 'Cup 1, SLOW',
    lasts: 1800,
    warns: 300,
    cup: 'c',
  });
  const endOf = (...more: Parameters<typeof foldBuild>[1]) =>
    foldBuild(buildHeader, [cup, started, ...more]).clocks[0]?.endedAt;

  it('run until they are answered', () => {
    expect(endOf()).toBeUndefined();
    expect(endOf(entryOf({ kind: 'clockAnswered', clock: 'k', happenedAt: begun + 9e6 }))).toBe(begun + 9e6);
  });

  it('end with the cup they belong to, emptied or thrown out', () => {
    expect(endOf(entryOf({ kind: 'cupEmpty', cup: 'c', happenedAt: begun + 7e6 }))).toBe(begun + 7e6);
    expect(endOf(entryOf({ kind: 'cupDiscarded', cup: 'c', happenedAt: begun + 8e6 }))).toBe(begun + 8e6);
  });

  it('end at the first of the two: the cup empty, or a thumb', () => {
    const answered = entryOf({ kind: 'clockAnswered', clock: 'k', happenedAt: begun + 9e6 });
    const empty = entryOf({ kind: 'cupEmpty', cup: 'c', happenedAt: begun + 7e6 });
    expect(endOf(answered, empty)).toBe(begun + 7e6);
  });

  it('follow a corrected start', () => {
    const { kind, clock: name, purpose, label, lasts, warns } = started;
    const earlier = entryOf({
      kind,
      clock: name,
      purpose,
      label,
      lasts,
      warns,
      cup: 'c',
      corrects: started.id,
      happenedAt: begun - 60_000,
    });
    expect(foldBuild(buildHeader, [cup, started, earlier]).clocks[0]?.startedAt).toBe(begun - 60_000);
  });
});
