import { describe, expect, it } from 'vitest';
import { buildShelf, walledPlanOf } from '#app/planning/cutting/build-shelf.ts';
import { clothChecks, cutDraft, cutLines, mostOff, sumOfPieces } from '#app/planning/cutting/cut-list.ts';
import { cutPieces } from '#app/planning/cutting/cut-pieces.ts';
import { curedPlies, edgePlaces, edgeVerdict, markAt } from '#app/planning/cutting/edge-places.ts';
import { offWords } from '#app/planning/cutting/edge-words.ts';
import type { BuildHeader } from '#shared/record/build.ts';
import { foldBuild } from '#shared/record/build-state.ts';
import { starterCloths } from '#shared/reference/starter-cloths.ts';
import { planRevision, upperMast, yardBuild } from '../browser/support/walled.ts';
import { type Event, entriesOf } from './shop-of.ts';

/** One cloth on a tapered mandrel, and two pieces of one cloth: nothing that the build did not freeze. */
const mast: BuildHeader = {
  ...yardBuild,
  id: 'mast',
  name: 'Upper mast',
  plan: planRevision('upper-mast', upperMast),
};

const stateOf = (header: BuildHeader, events: readonly Event[]) =>
  foldBuild(header, entriesOf(header.id, events));

function listOf(header: BuildHeader, events: readonly Event[]) {
  const state = stateOf(header, events);
  const plan = walledPlanOf(header);
  if (!plan) throw new Error('no wall');
  const shelf = buildShelf(header, plan);
  const lines = cutLines(state, cutPieces(plan, shelf));
  return { state, plan, shelf, lines, checks: () => clothChecks(state, plan, lines, shelf) };
}

const weighed = (piece: string, mass: number): Event => ({
  minute: 5,
  kind: 'weight',
  what: 'cutCloth',
  mass,
  piece,
});

describe('the cut list', () => {
  it('takes the cloth as the build froze it', () => {
    const heavy = { ...starterCloths['starter-cloth-carbon-plain-193'], arealWeight: 0.3 };
    const [usual] = listOf(yardBuild, []).lines;
    const [other] = listOf({ ...yardBuild, cloth: heavy }, []).lines;
    expect((other?.byArea ?? 0) / (other?.piece.area ?? 1)).toBeCloseTo(0.3, 12);
    expect((usual?.byArea ?? 0) / (usual?.piece.area ?? 1)).toBeCloseTo(0.193, 12);
  });

  it('ticks a piece by its id, and untouched ones stay open', () => {
    const fresh = listOf(yardBuild, []);
    const [first] = fresh.lines;
    if (!first) throw new Error('no line');
    expect(cutDraft(fresh.state, first)).toMatchObject({ kind: 'tick', step: 'bias', round: 1 });
    const after = listOf(yardBuild, [{ minute: 3, kind: 'tick', step: 'bias', round: 1 }]);
    expect(after.lines.map((l) => l.step.done !== undefined)).toEqual([true, false]);
  });

  it('adds the pieces up only when every one was weighed', () => {
    expect(sumOfPieces(listOf(yardBuild, [weighed('bias', 0.15)]).lines)).toBeUndefined();
    const both = listOf(yardBuild, [weighed('bias', 0.15), weighed('outer', 0.04)]);
    expect(sumOfPieces(both.lines)).toBeCloseTo(0.19, 12);
  });

  it('says what a cloth weighs by the pieces that were weighed', () => {
    const { lines } = listOf(yardBuild, []);
    const area = lines[0]?.piece.area ?? 0;
    const [check] = listOf(yardBuild, [weighed('bias', area * 0.193 * 1.06)]).checks();
    expect(check?.off).toBeCloseTo(0.06, 9);
    expect(Math.abs(check?.off ?? 0)).toBeGreaterThan(mostOff);
    expect(check?.arealWeight).toBeCloseTo(0.193 * 1.06, 9);
  });

  it('takes all cloth at once for its cloth, when there is only one', () => {
    const { lines } = listOf(yardBuild, []);
    const area = lines.reduce((sum, l) => sum + l.piece.area, 0);
    const [check] = listOf(yardBuild, [
      { minute: 5, kind: 'weight', what: 'cutCloth', mass: area * 0.193 * 0.98 },
    ]).checks();
    expect(check?.off).toBeCloseTo(-0.02, 9);
  });

  it('says nothing before anything was weighed', () => {
    expect(listOf(yardBuild, []).checks()).toEqual([]);
  });
});

describe('where the outer edge landed', () => {
  const places = (header: BuildHeader, events: readonly Event[] = []) => {
    const found = edgePlaces(stateOf(header, events));
    if (typeof found === 'string') throw new Error(found);
    return found;
  };
  const mark = (off: number, station: number): Event => ({
    minute: 9,
    kind: 'edgeMark',
    piece: 'skin',
    station,
    off,
  });

  it('is asked at both ends of a piece, the outermost piece first', () => {
    expect(places(yardBuild).map((p) => p.piece)).toEqual(['outer', 'outer', 'bias', 'bias']);
    for (const place of places(yardBuild)) {
      expect(place.round).toBeGreaterThanOrEqual(0);
      expect(place.round).toBeLessThan(Math.PI * 0.045);
    }
  });

  it('asks for a look above 5 mm, either way', () => {
    const [first] = places(mast);
    if (!first) throw new Error('no place');
    for (const [off, look] of [
      [0.0049, false],
      [0.0051, true],
      [-0.0051, true],
      [0, false],
    ] as const) {
      const state = stateOf(mast, [mark(off, first.station)]);
      const entry = markAt(state, first);
      if (!entry) throw new Error('not found again');
      expect(edgeVerdict(first, entry).look, `${off}`).toBe(look);
    }
  });

  it('tells the ply thickness only where 100 e/(pi N² t) is under 10 %', () => {
    const [thick, , thin] = places(mast).sort((a, b) => b.wraps - a.wraps);
    if (!thick) throw new Error('no place');
    const entry = markAt(stateOf(mast, [mark(0.002, thick.station)]), thick);
    if (!entry) throw new Error('not found');
    const wanted = 0.001 / (Math.PI * thick.wraps ** 2 * thick.plyThickness);
    const verdict = edgeVerdict(thick, entry);
    expect(verdict.error).toBeCloseTo(wanted, 9);
    expect(verdict.plyThickness !== undefined).toBe(wanted < 0.1);
    expect(edgeVerdict(thick, { ...entry, reading: 0.01 }).plyThickness).toBeUndefined();
    expect(thin === undefined || thin.wraps < thick.wraps).toBe(true);
  });

  it('of a piece on top of others tells nothing of its plies', () => {
    const [outer] = places(yardBuild);
    if (!outer) throw new Error('no place');
    const state = stateOf(yardBuild, [
      { minute: 9, kind: 'edgeMark', piece: 'outer', station: outer.station, off: 0, reading: 1e-6 },
    ]);
    const entry = markAt(state, outer);
    if (!entry) throw new Error('not found');
    expect(edgeVerdict(outer, entry).plyThickness).toBeUndefined();
  });

  it('leaves the ply thickness to the cured diameter: t = (Do − Di)/(2 N)', () => {
    const [first] = places(mast);
    const measured: Event = {
      minute: 90,
      kind: 'measurement',
      what: 'outsideDiameter',
      station: 0,
      value: 0.0463,
    };
    const [ply] = curedPlies(stateOf(mast, [measured]));
    // Bare 44 mm and the sleeve that went on it; four plies and 15 mm of lap.
    const inner = 0.044 + (mast.release?.buildUp ?? 0);
    expect(ply?.plyThickness).toBeCloseTo((0.0463 - inner) / (2 * (first?.wraps ?? 1)), 5);
  });

  it('is said in words', () => {
    expect(offWords(0)).toBe('on the mark');
    expect(offWords(0.003)).toMatch(/^3.mm further round$/);
    expect(offWords(-0.003)).toMatch(/^3.mm short of it$/);
  });
});
