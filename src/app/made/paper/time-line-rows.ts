import { type Subject, sayEntry } from '#app/made/record/say-entry.ts';
import type { Fact } from '#shared/record/journal.ts';
import { paperTime } from './day.ts';

export interface PaperLine {
  root: string;
  when: string;
  what: string;
  value: string;
  /** What stood there before it was corrected, oldest first. */
  before: string[];
  struck: boolean;
  happenedAt: number;
  zone: number;
}

function lineOf(subject: Subject, { root, entry, earlier, retracted }: Fact): PaperLine {
  const { what, value = '' } = sayEntry(subject, entry);
  const wordings = earlier.filter((e) => e.kind !== 'retracted').map((e) => sayEntry(subject, e));
  return {
    root,
    when: paperTime(entry.happenedAt, entry.zone),
    what,
    value,
    before: wordings.map((w) => w.value ?? w.what),
    struck: retracted,
    happenedAt: entry.happenedAt,
    zone: entry.zone,
  };
}

/** Everything that was entered, as it was lived, with what it replaced. */
export const paperLines = (subject: Subject): PaperLine[] =>
  subject.facts.map((fact) => lineOf(subject, fact));
