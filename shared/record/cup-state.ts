import type { Entry, EntryOf, LifeBasis } from './entry.ts';
import type { Fact } from './journal.ts';

export interface CupState {
  cup: string;
  number: number;
  of: number;
  round: number;
  startedAt: number;
  root: string;
  /** kg wanted when it was started */
  wanted: { resin: number; hardener: number };
  holds: number;
  /** kg as poured; the sum of its pours */
  resin: number;
  hardener: number;
  pours: Fact<EntryOf<'pour'>>[];
  /** First contact: what the pot life counts from. */
  hardenerAt?: number;
  /** Usable pot life its clock was given, s */
  usableLife?: number;
  /** What that was reckoned from; a cup of an older version has none, and its life does not move. */
  basis?: LifeBasis;
  emptyAt?: number;
  discardedAt?: number;
  asItIs?: 'lean' | 'rich';
}

/** Cups of a build in the order they were started. */
export function foldCups(facts: readonly Fact<Entry>[]): CupState[] {
  const cups = new Map<string, CupState>();
  for (const { entry: e, root } of facts) {
    if (e.kind === 'cupStarted' && !cups.has(e.cup)) {
      cups.set(e.cup, {
        cup: e.cup,
        number: e.number,
        of: e.of,
        round: e.round,
        startedAt: e.happenedAt,
        root,
        wanted: { resin: e.resin, hardener: e.hardener },
        holds: e.holds,
        resin: 0,
        hardener: 0,
        pours: [],
      });
    }
  }
  // A second pass, since a corrected time may put a pour before the start of its cup.
  for (const fact of facts) applyToCup(cups, fact);
  return [...cups.values()];
}

function applyToCup(cups: Map<string, CupState>, fact: Fact<Entry>): void {
  const e = fact.entry;
  const cup = 'cup' in e && e.cup !== undefined ? cups.get(e.cup) : undefined;
  if (!cup) return;
  switch (e.kind) {
    case 'pour':
      cup[e.part] += e.mass;
      cup.pours.push({ ...fact, entry: e });
      if (e.asItIs) cup.asItIs = e.asItIs;
      break;
    case 'clockStarted':
      if (e.purpose === 'potLife' && cup.hardenerAt === undefined) {
        cup.hardenerAt = e.happenedAt;
        cup.usableLife = e.lasts;
        if (e.basis) cup.basis = e.basis;
      }
      break;
    case 'cupEmpty':
      cup.emptyAt ??= e.happenedAt;
      break;
    case 'cupDiscarded':
      cup.discardedAt ??= e.happenedAt;
      break;
  }
}
