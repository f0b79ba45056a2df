import type { Entry } from '#shared/record/entry.ts';
import { formatClockTime } from '#shared/units/time.ts';
import type { Subject } from './say-entry.ts';

/** Why a time cannot be right within its cup: resin, then hardener, then empty. */
export function orderProblem(subject: Subject, entry: Entry, at: number): string | undefined {
  if (!('cups' in subject) || !('cup' in entry)) return undefined;
  const cup = subject.cups.find((c) => c.cup === entry.cup);
  if (!cup) return undefined;
  const resinAt = cup.pours.find((p) => p.entry.part === 'resin')?.entry.happenedAt;
  const time = (ms: number) => formatClockTime(ms, entry.zone);
  const contact = entry.kind === 'clockStarted' && entry.purpose === 'potLife';
  if (contact && resinAt !== undefined && at < resinAt) {
    return `Its resin was poured at ${time(resinAt)}: hardener cannot have gone in before it.`;
  }
  const firstResin = entry.kind === 'pour' && entry.part === 'resin' && entry.happenedAt === resinAt;
  if (firstResin && cup.hardenerAt !== undefined && at > cup.hardenerAt) {
    return `Hardener went in at ${time(cup.hardenerAt)}: the resin was there before it.`;
  }
  if (entry.kind === 'cupEmpty' && cup.hardenerAt !== undefined && at < cup.hardenerAt) {
    return `Hardener went in at ${time(cup.hardenerAt)}: the cup cannot have been empty before it.`;
  }
  return undefined;
}
