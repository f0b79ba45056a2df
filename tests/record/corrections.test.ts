import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foldBuild } from '#shared/record/build-state.ts';
import type { AnyEntry } from '#shared/record/entry.ts';
import { holding, settle } from '#shared/record/journal.ts';
import { begun, buildHeader, comingIn, entryOf } from './arbitraries.ts';

const weighed = (grams: number, more: { corrects?: string; recordedAt?: number; id?: string } = {}) =>
  entryOf({ kind: 'weight', what: 'cured', mass: grams / 1000, typed: `${grams} g`, ...more });
const takenOut = (corrects: string, recordedAt: number) =>
  entryOf({ kind: 'retracted', corrects, recordedAt });
const cured = (all: readonly AnyEntry[]) => foldBuild(buildHeader, all).weights.get('cured')?.entry.mass;

describe('a correction', () => {
  const first = weighed(2250, { recordedAt: begun });
  const corrected = weighed(225, { corrects: first.id, recordedAt: begun + 1000 });

  it('changes the fact and keeps the earlier wording beside it', () => {
    const [fact] = settle([first, corrected]);
    expect(fact).toEqual({ root: first.id, entry: corrected, retracted: false, earlier: [first] });
    expect(cured([first, corrected])).toBe(0.225);
  });

  it('keeps the earlier wording of a pour with its cup', () => {
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
    const poured = entryOf({ kind: 'pour', cup: 'c', part: 'resin', mass: 1.01 });
    const meant = entryOf({ kind: 'pour', cup: 'c', part: 'resin', mass: 0.101, corrects: poured.id });
    const [state] = foldBuild(buildHeader, [cup, poured, meant]).cups;
    expect(state?.resin).toBe(0.101);
    expect(state?.pours.map((p) => p.earlier)).toEqual([[poured]]);
  });

  it('moves the fact to its corrected time and keeps its name', () => {
    const note = entryOf({ kind: 'note', text: 'gelled', happenedAt: begun + 9000 });
    const other = entryOf({ kind: 'note', text: 'between', happenedAt: begun + 5000 });
    const earlier = entryOf({ kind: 'note', text: 'gelled', happenedAt: begun + 1000, corrects: note.id });
    expect(settle([note, other, earlier]).map((f) => f.root)).toEqual([note.id, other.id]);
  });

  it('holds by itself when the entry it corrects has not come over yet', () => {
    expect(cured([corrected])).toBe(0.225);
  });

  it('of two, holds when it was recorded last, whichever came in first', () => {
    const second = weighed(226, { corrects: first.id, recordedAt: begun + 2000 });
    expect(cured([first, second, corrected])).toBe(0.226);
    expect(cured([corrected, second, first])).toBe(0.226);
  });

  it('of two in the same millisecond, holds when its id is the greater', () => {
    const a = weighed(1, { corrects: first.id, recordedAt: begun + 5, id: 'z-1' });
    const b = weighed(2, { corrects: first.id, recordedAt: begun + 5, id: 'z-2' });
    expect(cured([first, a, b])).toBe(0.002);
    expect(cured([b, a, first])).toBe(0.002);
  });

  it('is always the newest by (recorded, id) that is no retraction', () => {
    const later = fc.array(
      fc.record({
        grams: fc.integer({ min: 1, max: 900 }),
        at: fc.integer({ min: 1, max: 4 }),
        out: fc.boolean(),
      }),
      { maxLength: 8 },
    );
    const journal = later.chain((list) => {
      const all: AnyEntry[] = [first];
      list.forEach((one, i) => {
        const at = { corrects: first.id, recordedAt: begun + one.at, id: `z-${i}` };
        all.push(one.out ? entryOf({ kind: 'retracted', ...at }) : weighed(one.grams, at));
      });
      return fc.tuple(fc.constant(all), comingIn(all));
    });
    fc.assert(
      fc.property(journal, ([all, again]) => {
        const newestFirst = [...all].sort((a, b) => b.recordedAt - a.recordedAt || (a.id < b.id ? 1 : -1));
        const [fact] = settle(again);
        expect(fact?.entry).toEqual(newestFirst.find((e) => e.kind !== 'retracted'));
        expect(fact?.retracted).toBe(newestFirst[0]?.kind === 'retracted');
      }),
    );
  });
});

describe('a retraction', () => {
  const tick = entryOf({ kind: 'tick', step: 'mandrel-measured', round: 1, recordedAt: begun });
  const out = takenOut(tick.id, begun + 1000);

  it('takes the fact out of the state and leaves it in the time line', () => {
    const state = foldBuild(buildHeader, [tick, out]);
    expect(state.next?.step.id).toBe('mandrel-measured');
    expect(state.facts.map((f) => [f.root, f.retracted])).toEqual([[tick.id, true]]);
    expect(state.facts[0]?.earlier).toEqual([out]);
  });

  it('is undone by a later correction', () => {
    const back = entryOf({
      kind: 'tick',
      step: 'mandrel-measured',
      round: 1,
      corrects: tick.id,
      recordedAt: begun + 2000,
    });
    const state = foldBuild(buildHeader, [back, out, tick]);
    expect(state.next?.step.id).toBe('mandrel-straight');
    expect(holding(state.facts).map((f) => f.entry)).toEqual([back]);
  });

  it('of something that never came takes nothing out and breaks nothing', () => {
    expect(settle([takenOut('never-came', begun)])).toEqual([]);
  });

  it('of a cup leaves its pours without a cup, and no cup', () => {
    const cup = entryOf({
      kind: 'cupStarted',
      cup: 'c',
      number: 1,
      of: 1,
      round: 1,
      resin: 0.1,
      hardener: 0.03,
      holds: 0.2,
      recordedAt: begun,
    });
    const pour = entryOf({ kind: 'pour', cup: 'c', part: 'resin', mass: 0.1 });
    expect(foldBuild(buildHeader, [cup, pour, takenOut(cup.id, begun + 1)]).cups).toEqual([]);
  });
});
