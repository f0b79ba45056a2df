import type { BuildHeader } from './build.ts';
import { type ClockState, clockFrom } from './clock-state.ts';
import { type CupState, foldCups } from './cup-state.ts';
import type { AnyEntry, Entry, EntryKind, EntryOf, RatingOf, WeightOf } from './entry.ts';
import { type Fact, holding, settle } from './journal.ts';
import { foldRoute, type StageState, type StepState } from './route-state.ts';

/** A build as it stands: its header and the pure fold of its entries. */
export interface BuildState {
  header: BuildHeader;
  /** Everything that was ever entered, in the order it happened. */
  facts: Fact[];
  rounds: number;
  stages: StageState[];
  /** The first step not done; absent when the route is through. */
  next?: StepState;
  cups: CupState[];
  clocks: ClockState[];
  surroundings?: Fact<EntryOf<'surroundings'>>;
  overrides: Fact<EntryOf<'override'>>[];
  /** Latest count of each round: films laid in, films taken out. */
  films: Map<number, { in?: number; out?: number }>;
  /** Latest weight of each thing, kg */
  weights: Map<WeightOf, Fact<EntryOf<'weight'>>>;
  /** Latest weight of each piece of the wall that was weighed by itself, kg */
  pieceWeights: Map<string, Fact<EntryOf<'weight'>>>;
  /** Where the outer edge landed, latest of each piece and station. */
  edgeMarks: Fact<EntryOf<'edgeMark'>>[];
  measurements: Fact<EntryOf<'measurement'>>[];
  proofLoads: Fact<EntryOf<'proofLoad'>>[];
  squeezeTests: Fact<EntryOf<'squeezeTest'>>[];
  gaveWay: Fact<EntryOf<'gaveWay'>>[];
  checks: Fact<EntryOf<'check'>>[];
  /** Latest of each: 0 worst, 3 best. */
  ratings: Map<RatingOf, Fact<EntryOf<'rating'>>>;
  /** Which lots it took from, in the order it turned to them. */
  lots: Fact<EntryOf<'lotDrawn'>>[];
  notes: Fact<EntryOf<'note'>>[];
  photos: Fact<EntryOf<'photo'>>[];
  ovenLoads: Fact<EntryOf<'joinedOvenLoad'>>[];
  disposition?: Fact<EntryOf<'disposition'>>;
  closedAt?: number;
  /** When anything last happened, ms */
  lastAt: number;
}

function of<K extends EntryKind>(facts: readonly Fact<Entry>[], kind: K): Fact<EntryOf<K>>[] {
  return facts.filter((f): f is Fact<EntryOf<K>> => f.entry.kind === kind);
}

function foldFilms(counts: readonly Fact<EntryOf<'filmCount'>>[]): BuildState['films'] {
  const films: BuildState['films'] = new Map();
  for (const { entry: e } of counts) {
    const round = films.get(e.round) ?? {};
    round[e.direction] = e.count;
    films.set(e.round, round);
  }
  return films;
}

/** A piece alone never stands for all the cut cloth. */
function foldWeights(
  weights: readonly Fact<EntryOf<'weight'>>[],
): Pick<BuildState, 'weights' | 'pieceWeights'> {
  const state = { weights: new Map(), pieceWeights: new Map() };
  for (const fact of weights) {
    const { piece, what } = fact.entry;
    if (piece === undefined) state.weights.set(what, fact);
    else state.pieceWeights.set(piece, fact);
  }
  return state;
}

/** Clocks end when answered, and a pot life when its cup is empty or thrown out. */
export function foldClocks(facts: readonly Fact<Entry>[], cups: readonly CupState[]): ClockState[] {
  const clocks = new Map<string, ClockState>();
  for (const { entry, root } of of(facts, 'clockStarted')) {
    if (!clocks.has(entry.clock)) clocks.set(entry.clock, clockFrom(entry, root));
  }
  for (const { entry } of of(facts, 'clockAnswered')) {
    const clock = clocks.get(entry.clock);
    if (clock) clock.endedAt ??= entry.happenedAt;
  }
  for (const clock of clocks.values()) {
    const cup = clock.purpose === 'potLife' ? cups.find((c) => c.cup === clock.cup) : undefined;
    const gone = cup?.emptyAt ?? cup?.discardedAt;
    if (gone !== undefined) clock.endedAt = Math.min(clock.endedAt ?? gone, gone);
  }
  return [...clocks.values()];
}

/**
 * In the order in which they were first written, whatever the phone's clock said then: of two weighings the later one
 * holds, also when the clock was set back between them.
 */
const asWritten = (facts: readonly Fact<Entry>[]): Fact<Entry>[] =>
  [...facts].sort((a, b) => (a.root < b.root ? -1 : a.root > b.root ? 1 : 0));

/** Whether the last word on open or closed was 'closed', and when. */
export function closedSince(facts: readonly Fact<Entry>[]): number | undefined {
  const words = facts.filter((f) => f.entry.kind === 'closed' || f.entry.kind === 'reopened');
  const last = asWritten(words).at(-1);
  return last?.entry.kind === 'closed' ? last.entry.happenedAt : undefined;
}

/** Facts stand in the order they happened. */
export function lastHappened(header: { startedAt: number }, facts: readonly Fact<Entry>[]): number {
  return Math.max(header.startedAt, facts.at(-1)?.entry.happenedAt ?? header.startedAt);
}

export function foldBuild(header: BuildHeader, entries: readonly AnyEntry[]): BuildState {
  const all = settle(entries);
  const facts = holding(all);
  const rounds = Math.max(1, ...of(facts, 'roundStarted').map((f) => f.entry.round));
  const stages = foldRoute(header.route, rounds, of(facts, 'tick'));
  const next = stages.flatMap((s) => s.steps).find((s) => !s.done);
  const cups = foldCups(facts);
  const surroundings = of(facts, 'surroundings').at(-1);
  const written = asWritten(facts);
  const disposition = of(written, 'disposition').at(-1);
  const closedAt = closedSince(facts);
  return {
    header,
    facts: all,
    rounds,
    stages,
    ...(next && { next }),
    cups,
    clocks: foldClocks(facts, cups),
    ...(surroundings && { surroundings }),
    overrides: of(facts, 'override'),
    films: foldFilms(of(written, 'filmCount')),
    ...foldWeights(of(written, 'weight')),
    edgeMarks: [
      ...new Map(of(written, 'edgeMark').map((f) => [`${f.entry.piece} ${f.entry.station}`, f])).values(),
    ],
    measurements: of(facts, 'measurement'),
    proofLoads: of(facts, 'proofLoad'),
    squeezeTests: of(facts, 'squeezeTest'),
    gaveWay: of(facts, 'gaveWay'),
    checks: of(facts, 'check'),
    ratings: new Map(of(written, 'rating').map((f) => [f.entry.what, f])),
    lots: of(facts, 'lotDrawn'),
    notes: of(facts, 'note'),
    photos: of(facts, 'photo'),
    ovenLoads: of(facts, 'joinedOvenLoad'),
    ...(disposition && { disposition }),
    ...(closedAt !== undefined && { closedAt }),
    lastAt: lastHappened(header, facts),
  };
}
