import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foldBuild } from '#shared/record/build-state.ts';
import type { AnyEntry } from '#shared/record/entry.ts';
import { settle } from '#shared/record/journal.ts';
import { foldOvenLoad } from '#shared/record/oven-state.ts';
import { readRecord } from '#shared/record/read.ts';
import { begun, buildHeader, comingIn, entries, entryOf, ovenLoadHeader } from './arbitraries.ts';

const journals = entries().chain((all) => fc.tuple(fc.constant(all), comingIn(all)));
const build = (all: readonly AnyEntry[]) => foldBuild(buildHeader, all);
const oven = (all: readonly AnyEntry[]) => foldOvenLoad(ovenLoadHeader, all);

describe('a fold of entries', () => {
  it('gives the same facts in whatever order and however often the entries come in', () => {
    fc.assert(
      fc.property(journals, ([all, again]) => {
        expect(settle(again)).toEqual(settle(all));
      }),
    );
  });

  it('gives the same build from any split and any union of the same entries', () => {
    fc.assert(
      fc.property(journals, ([all, again]) => {
        expect(build(again)).toEqual(build(all));
      }),
    );
  });

  it('gives the same oven load from any split and any union of the same entries', () => {
    fc.assert(
      fc.property(journals, ([all, again]) => {
        expect(oven(again)).toEqual(oven(all));
      }),
    );
  });

  it('is the same after the entries went through a file', () => {
    fc.assert(
      fc.property(entries(), (all) => {
        const read = (JSON.parse(JSON.stringify(all)) as unknown[]).map((raw) => {
          const gated = readRecord(raw);
          if (!gated.ok) throw new Error(gated.why);
          return gated.value as AnyEntry;
        });
        expect(build(read)).toEqual(build(all));
      }),
    );
  });

  it('does not change what it is given', () => {
    fc.assert(
      fc.property(entries(), (all) => {
        const before = structuredClone(all);
        build(all);
        oven(all);
        expect(all).toEqual(before);
      }),
    );
  });

  it('loses no entry: each stands in exactly one fact, unless only retractions of it came', () => {
    fc.assert(
      fc.property(entries(), (all) => {
        const worded = new Set(all.filter((e) => e.kind !== 'retracted').map((e) => e.corrects ?? e.id));
        const wanted = all.filter((e) => worded.has(e.corrects ?? e.id)).map((e) => e.id);
        const got = settle(all).flatMap((f) => [f.entry.id, ...f.earlier.map((e) => e.id)]);
        expect(got.sort()).toEqual(wanted.sort());
      }),
    );
  });

  it('stands in the order things happened, ties by the id of the first entry', () => {
    fc.assert(
      fc.property(entries(), (all) => {
        const facts = settle(all);
        for (const [i, fact] of facts.entries()) {
          const next = facts[i + 1];
          if (!next) continue;
          const apart = next.entry.happenedAt - fact.entry.happenedAt;
          expect(apart > 0 || (apart === 0 && next.root > fact.root)).toBe(true);
        }
      }),
    );
  });
});

describe('entries of a later version of the app', () => {
  it('are kept as facts and change nothing else', () => {
    fc.assert(
      fc.property(entries({ fromLater: false }), (all) => {
        const later = [
          { ...entryOf({ kind: 'note', text: '' }), kind: 'humSaid', cup: 'cup-a', happenedAt: begun },
          { ...entryOf({ kind: 'closed' }), v: 2, happenedAt: begun },
        ] as AnyEntry[];
        const { facts, ...withLater } = build([...all, ...later]);
        const { facts: without, ...plain } = build(all);
        expect(withLater).toEqual(plain);
        expect(facts.length).toBe(without.length + 2);
      }),
    );
  });

  it('never put a number that is none into a cup', () => {
    fc.assert(
      fc.property(entries(), (all) => {
        for (const cup of build(all).cups) expect(Number.isFinite(cup.resin + cup.hardener)).toBe(true);
      }),
    );
  });
});

describe('a build', () => {
  it('without entries has its route to do, no cup, no clock, and last happened when it started', () => {
    const state = build([]);
    expect(state.next?.step.id).toBe('mandrel-measured');
    expect([state.cups, state.clocks, state.facts]).toEqual([[], [], []]);
    expect(state.lastAt).toBe(begun);
    expect(state.closedAt).toBeUndefined();
  });

  it('sums the pours of a cup, also when a corrected time puts a pour before its cup', () => {
    const cup = { cup: 'c', number: 1, of: 1, round: 1, resin: 0.1, hardener: 0.03, holds: 0.2 };
    const state = build([
      entryOf({ kind: 'cupStarted', ...cup, happenedAt: begun + 5000 }),
      entryOf({ kind: 'pour', cup: 'c', part: 'resin', mass: 0.09, happenedAt: begun }),
      entryOf({ kind: 'pour', cup: 'c', part: 'resin', mass: 0.0125, happenedAt: begun + 9000 }),
      entryOf({
        kind: 'pour',
        cup: 'c',
        part: 'hardener',
        mass: 0.03,
        asItIs: 'lean',
        happenedAt: begun + 9500,
      }),
    ]);
    expect(state.cups[0]?.resin).toBeCloseTo(0.1025, 12);
    expect(state.cups[0]?.hardener).toBeCloseTo(0.03, 12);
    expect(state.cups[0]?.asItIs).toBe('lean');
    expect(state.cups[0]?.hardenerAt).toBeUndefined();
  });

  it('counts the pot life from first contact, also before the weight is typed', () => {
    const state = build([
      entryOf({ kind: 'cupStarted', cup: 'c', number: 1, of: 1, round: 1, resin: 1, hardener: 1, holds: 2 }),
      entryOf({
        kind: 'clockStarted',
        clock: 'k',
        purpose: 'potLife',
        label: 'Cup 1',
        lasts: 1800,
        warns: 300,
        cup: 'c',
        happenedAt: begun + 1e6,
      }),
    ]);
    expect(state.cups[0]).toMatchObject({ hardenerAt: begun + 1e6, usableLife: 1800, hardener: 0 });
  });

  it('is open again after a reopening, and closed by the last word', () => {
    const closed = entryOf({ kind: 'closed', happenedAt: begun + 1000 });
    const reopened = entryOf({ kind: 'reopened', happenedAt: begun + 2000 });
    const again = entryOf({ kind: 'closed', happenedAt: begun + 3000 });
    expect(build([closed]).closedAt).toBe(begun + 1000);
    expect(build([closed, reopened]).closedAt).toBeUndefined();
    expect(build([again, reopened, closed]).closedAt).toBe(begun + 3000);
  });

  it('keeps the latest count of films of each round and way', () => {
    const count = (direction: 'in' | 'out', n: number, round: number) =>
      entryOf({ kind: 'filmCount', direction, count: n, round });
    const { films } = build([count('in', 2, 1), count('out', 1, 1), count('out', 2, 1), count('in', 3, 2)]);
    expect(films).toEqual(
      new Map([
        [1, { in: 2, out: 2 }],
        [2, { in: 3 }],
      ]),
    );
  });
});

describe('an oven load', () => {
  it('sorts readings by the time they were read, each with its channel, and ignores lost channels', () => {
    const at = (minute: number) => begun + minute * 60_000;
    const { readings, lastAt } = oven([
      entryOf({ kind: 'reading', channel: 'air', temperature: 330, happenedAt: at(20) }),
      entryOf({ kind: 'reading', channel: 'air', temperature: 300, happenedAt: at(10) }),
      entryOf({ kind: 'reading', channel: 'lost', temperature: 999, happenedAt: at(30) }),
    ]);
    expect(readings.map((r) => r.at.map((one) => one.temperature))).toEqual([[300, 330], []]);
    expect(lastAt).toBe(at(30));
  });

  it('names a build that joined twice once', () => {
    const join = { build: 'build-1', ovenLoad: 'oven-1', round: 1, subject: 'oven-1' };
    const { builds } = oven([
      entryOf({ kind: 'joinedOvenLoad', ...join, channel: 'part-1' }),
      entryOf({ kind: 'joinedOvenLoad', ...join }),
    ]);
    expect(builds).toEqual([{ build: 'build-1', round: 1, channel: 'part-1' }]);
  });

  it('folds a log of 150,000 readings', () => {
    const many = Array.from({ length: 150_000 }, (_, i) =>
      entryOf({ kind: 'reading', channel: 'air', temperature: 330, happenedAt: begun + i * 1000 }),
    );
    const state = oven(many);
    expect(state.readings[0]?.at.length).toBe(150_000);
    expect(state.lastAt).toBe(begun + 149_999_000);
  }, 30_000);
});
