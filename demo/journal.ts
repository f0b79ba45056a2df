import { type AnyEntry, type EntryDraft, entryVersion } from '#shared/record/entry.ts';
import { shopZone } from './shop-time.ts';

export const device = 'demo-phone';

export type Draft = EntryDraft extends infer D
  ? D extends unknown
    ? Omit<D, 'subject' | 'happenedAt'>
    : never
  : never;

/** Ids that sort by time, in the shape of a UUID version 7, and are the same every time the demo is made. */
export class Ids {
  private made = 0;

  at(time: number): string {
    this.made += 1;
    const stamp = time.toString(16).padStart(12, '0');
    const serial = this.made.toString(16).padStart(12, '0');
    return `${stamp.slice(0, 8)}-${stamp.slice(8)}-7000-8000-${serial}`;
  }
}

/** One subject's entries, stamped as the phone would. */
export class Journal {
  readonly entries: AnyEntry[] = [];

  constructor(
    readonly subject: string,
    readonly ids: Ids,
  ) {}

  /** Returns the id, for a correction to name. `recordedAt` is later when the builder set the time back. */
  write(happenedAt: number, draft: Draft, recordedAt = happenedAt): string {
    const id = this.ids.at(recordedAt);
    const stamps = { happenedAt, recordedAt, zone: shopZone, device };
    this.entries.push({
      record: 'entry',
      v: entryVersion,
      id,
      subject: this.subject,
      ...stamps,
      ...draft,
    } as AnyEntry);
    return id;
  }
}
