import * as z from 'zod/mini';
import type { AnyEntry } from '#shared/record/entry.ts';
import { type Header, readEntry, readHeader } from '#shared/record/read.ts';
import { foldVersion, type Summary, summary as summarySchema } from '#shared/record/summary.ts';
import type { Connection } from './connection.ts';
import { ofSubject } from './reader.ts';
import type { Page, Summarize } from './store.ts';

interface PageOptions {
  of: Summary['of'];
  limit: number;
  after?: string;
}

/** Summaries are a cache beside the record: dropped by every write to their subject, made again when asked for. */
export class Summaries {
  constructor(
    private readonly connection: Connection,
    private readonly summarize: Summarize,
  ) {}

  async one(subject: string): Promise<Summary | undefined> {
    const kept = await this.connection.transact(['summaries'], 'readonly', (transaction) =>
      transaction.objectStore('summaries').get(subject),
    );
    return current(kept) ?? this.makeAnew(subject);
  }

  /** Walks the keys of the headers, newest first; only builds without a summary of this fold are folded. */
  async page({ of, limit, after }: PageOptions): Promise<Page> {
    const { subjects, next } = await this.subjectsAfter(of, limit, after);
    const kept = await this.connection.transact(['summaries'], 'readonly', (transaction) =>
      Promise.all(subjects.map((subject) => transaction.objectStore('summaries').get(subject))),
    );
    const summaries: Summary[] = [];
    for (const [i, subject] of subjects.entries()) {
      const one = current(kept[i]) ?? (await this.makeAnew(subject));
      if (one) summaries.push(one);
    }
    return next === undefined ? { summaries } : { summaries, next };
  }

  /** What is not closed, after making anew what was dropped. */
  async openSubjects(): Promise<string[]> {
    await this.makeDropped();
    return this.connection.transact(['summaries'], 'readonly', (transaction) =>
      transaction.objectStore('summaries').index('byOpen').getAllKeys(),
    );
  }

  /** Makes every dropped summary again. */
  async makeDropped(onProgress?: (share: number) => void): Promise<void> {
    const dropped = await this.connection.transact(['meta'], 'readonly', (transaction) =>
      transaction.objectStore('meta').getAllKeys(IDBKeyRange.bound(['dropped'], ['dropped', []])),
    );
    for (const [i, key] of dropped.entries()) {
      if (Array.isArray(key)) await this.makeAnew(String(key[1]));
      onProgress?.((i + 1) / dropped.length);
    }
  }

  /**
   * Reads, folds and keeps in one transaction: an entry written in between would leave a summary without it that
   * looks current.
   */
  private makeAnew(subject: string): Promise<Summary | undefined> {
    return this.connection.transact(
      ['headers', 'entries', 'summaries', 'meta'],
      'readwrite',
      async (transaction) => {
        await transaction.objectStore('meta').delete(['dropped', subject]);
        const header = readHeader(await transaction.objectStore('headers').get(subject));
        if (!header.ok) return undefined;
        const raw = await transaction.objectStore('entries').index('bySubject').getAll(ofSubject(subject));
        const made = this.fold(header.value, raw);
        await transaction.objectStore('summaries').put(made);
        return made;
      },
      'relaxed',
    );
  }

  private fold(header: Header, raw: readonly unknown[]): Summary {
    const entries: AnyEntry[] = [];
    for (const one of raw) {
      const entry = readEntry(one);
      if (entry.ok) entries.push(entry.value);
    }
    return this.summarize(header, entries);
  }

  private subjectsAfter(
    of: Summary['of'],
    limit: number,
    after: string | undefined,
  ): Promise<{ subjects: string[]; next?: string }> {
    return this.connection.transact(['headers'], 'readonly', async (transaction) => {
      const range = IDBKeyRange.bound([of], after ? [of, ...placeOf(after)] : [of, []], true, true);
      const subjects: string[] = [];
      let last = '';
      let cursor = await transaction.objectStore('headers').index('byStart').openKeyCursor(range, 'prev');
      while (cursor) {
        if (subjects.length === limit) return { subjects, next: last };
        subjects.push(cursor.primaryKey);
        last = `${cursor.key[1]} ${cursor.key[2]}`;
        cursor = await cursor.continue();
      }
      return { subjects };
    });
  }
}

/** Start and id of the last header on the page before. */
function placeOf(after: string): [number, string] {
  const gap = after.indexOf(' ');
  return [Number(after.slice(0, gap)), after.slice(gap + 1)];
}

/** A kept summary, unless another fold made it. */
function current(kept: unknown): Summary | undefined {
  const parsed = z.safeParse(summarySchema, kept);
  return parsed.success && parsed.data.foldVersion === foldVersion ? parsed.data : undefined;
}
