import { closedSince } from '#shared/record/build-state.ts';
import type { AnyEntry } from '#shared/record/entry.ts';
import { holding, settle } from '#shared/record/journal.ts';
import { readEntry, readHeader } from '#shared/record/read.ts';
import { foldVersion, type Summary } from '#shared/record/summary.ts';
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
    /** Comes when the first summary is made: the first screen does without. */
    private readonly load: () => Promise<Summarize>,
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

  /** Hands over all of them in slices, the newest subjects first; what has to be folded anew comes last. */
  async each(take: (slice: Summary[]) => void): Promise<void> {
    const [subjects, kept] = await this.connection.transact(
      ['headers', 'summaries'],
      'readonly',
      (transaction) =>
        Promise.all([
          transaction.objectStore('headers').getAllKeys(),
          transaction.objectStore('summaries').getAllKeys(),
        ]),
    );
    const missing = new Set(subjects);
    for (let end = kept.length; end > 0; end -= sliceSize) {
      const range = IDBKeyRange.bound(kept[Math.max(0, end - sliceSize)], kept[end - 1]);
      const raw = await this.connection.transact(['summaries'], 'readonly', (transaction) =>
        transaction.objectStore('summaries').getAll(range),
      );
      const slice = raw.flatMap((one) => current(one) ?? []);
      for (const { subject } of slice) missing.delete(subject);
      take(slice);
    }
    for (const subject of missing) {
      const made = await this.makeAnew(subject);
      if (made) take([made]);
    }
  }

  /** What is not closed. Of what was written to since its summary was made, the entries themselves tell. */
  async openSubjects(): Promise<string[]> {
    const waiting = await this.connection.transact(['meta'], 'readonly', (transaction) =>
      transaction.objectStore('meta').count(droppedKeys()),
    );
    // So many that reading them would be slow at every opening: once they are made, none is read again.
    if (waiting > mostRead) await this.makeDropped();
    return this.connection.transact(
      ['headers', 'entries', 'summaries', 'meta'],
      'readonly',
      async (transaction) => {
        const open = await transaction.objectStore('summaries').index('byOpen').getAllKeys();
        const dropped = await transaction.objectStore('meta').getAllKeys(droppedKeys());
        for (const subject of dropped.map(subjectOf)) {
          const header = await transaction.objectStore('headers').get(subject);
          const raw = await transaction.objectStore('entries').index('bySubject').getAll(ofSubject(subject));
          if (readHeader(header).ok && isOpen(raw)) open.push(subject);
        }
        return [...new Set(open)].sort();
      },
    );
  }

  /** Makes every dropped summary again. */
  async makeDropped(onProgress?: (share: number) => void): Promise<void> {
    const dropped = await this.connection.transact(['meta'], 'readonly', (transaction) =>
      transaction.objectStore('meta').getAllKeys(droppedKeys()),
    );
    for (const [i, key] of dropped.entries()) {
      await this.makeAnew(subjectOf(key));
      onProgress?.((i + 1) / dropped.length);
    }
  }

  /**
   * Reads, folds and keeps in one transaction: an entry written in between would leave a summary without it that
   * looks current.
   */
  private async makeAnew(subject: string): Promise<Summary | undefined> {
    // Before the transaction, which would be over by the time it came.
    const summarize = await this.load();
    return this.connection.transact(
      ['headers', 'entries', 'summaries', 'meta'],
      'readwrite',
      async (transaction) => {
        await transaction.objectStore('meta').delete(['dropped', subject]);
        const header = readHeader(await transaction.objectStore('headers').get(subject));
        if (!header.ok) return undefined;
        const raw = await transaction.objectStore('entries').index('bySubject').getAll(ofSubject(subject));
        const made = summarize(header.value, readAll(raw));
        await transaction.objectStore('summaries').put(made);
        return made;
      },
      'relaxed',
    );
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

/**
 * A kept summary, unless another fold made it. It is a cache that nothing but this app's own fold writes, so the fold's
 * version stands for its whole shape: reading thousands through every field of the schema took longer than the disk.
 */
function current(kept: unknown): Summary | undefined {
  return isOurs(kept) && kept.foldVersion === foldVersion ? kept : undefined;
}

const isOurs = (kept: unknown): kept is Summary =>
  typeof kept === 'object' && kept !== null && 'subject' in kept && 'of' in kept;

/** Read in slices, so that a thumb is answered between two of them. */
const sliceSize = 400;

/** A bench holds a few tubes and an oven load or two; more than this came in otherwise. */
export const mostRead = 24;

/** What marks the subjects whose summary was dropped. */
export const droppedKeys = () => IDBKeyRange.bound(['dropped'], ['dropped', []]);
export const subjectOf = (key: IDBValidKey): string => (Array.isArray(key) ? String(key[1]) : '');

function readAll(raw: readonly unknown[]): AnyEntry[] {
  return raw.flatMap((one) => {
    const entry = readEntry(one);
    return entry.ok ? [entry.value] : [];
  });
}

const isOpen = (raw: readonly unknown[]): boolean => closedSince(holding(settle(readAll(raw)))) === undefined;
