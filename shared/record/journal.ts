import { type AnyEntry, type Entry, isKnown } from './entry.ts';

/** One thing that happened, as it stands after every correction. */
export interface Fact<E extends AnyEntry = AnyEntry> {
  /** Id of the first entry; corrections name it. */
  root: string;
  /** The entry that holds: the newest by (recordedAt, id) that is not a retraction. */
  entry: E;
  retracted: boolean;
  /** Earlier wordings, oldest first: shown struck through. */
  earlier: AnyEntry[];
}

const byRecorded = (a: AnyEntry, b: AnyEntry) =>
  a.recordedAt - b.recordedAt || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);

function groupByFact(entries: readonly AnyEntry[]): Map<string, Map<string, AnyEntry>> {
  const facts = new Map<string, Map<string, AnyEntry>>();
  for (const e of entries) {
    const root = e.corrects ?? e.id;
    const group = facts.get(root) ?? new Map<string, AnyEntry>();
    group.set(e.id, e);
    facts.set(root, group);
  }
  return facts;
}

/**
 * Every fact in the order it happened, whatever order and however often its entries come in:
 * the same set of entries always gives the same facts.
 */
export function settle(entries: readonly AnyEntry[]): Fact[] {
  const facts: Fact[] = [];
  for (const [root, group] of groupByFact(entries)) {
    const members = [...group.values()].sort(byRecorded);
    const newest = members.at(-1);
    const wordings = members.filter((e) => e.kind !== 'retracted');
    const holding = wordings.at(-1);
    if (!holding || !newest) continue;
    facts.push({
      root,
      entry: holding,
      retracted: newest.kind === 'retracted',
      earlier: members.filter((e) => e !== holding),
    });
  }
  return facts.sort(
    (a, b) => a.entry.happenedAt - b.entry.happenedAt || (a.root < b.root ? -1 : a.root > b.root ? 1 : 0),
  );
}

/** The facts that hold and that this version understands. */
export function holding(facts: readonly Fact[]): Fact<Entry>[] {
  return facts.filter((f): f is Fact<Entry> => !f.retracted && isKnown(f.entry));
}
