import { benchSubject } from '#shared/record/entry.ts';
import type { Connection } from './connection.ts';
import { asWriteError } from './failures.ts';
import type { Ids } from './ids.ts';
import { canonical } from './json.ts';
import type { Lines } from './lines.ts';
import { atOnce, storedOf } from './lookup.ts';
import { type Prepared, prepareAll, preparePhoto, recordsOf, refuse } from './prepare.ts';
import type { SlotMark, StoredPhoto, Writing } from './schema.ts';
import type { Batch } from './store.ts';
import type { Tabs } from './tabs.ts';

/** Enough to find the place where a file stopped when the app was killed between its two copies. */
const tailLength = 16;
const stores = ['headers', 'revisions', 'entries', 'photos', 'summaries', 'meta'] as const;

/** Writes to both copies: the database first, since only it can refuse. */
export class Writer {
  /** Keys written since a comparison of the copies began, so that it does not take them for missing. */
  watched: Set<string> | undefined;
  private readonly running = new Set<Promise<void>>();

  constructor(
    private readonly connection: Connection,
    private readonly lines: Lines,
    private readonly ids: Ids,
    private readonly tabs: Tabs,
  ) {}

  write(batch: Batch): Promise<void> {
    return this.run(async () => {
      const records = prepareAll(recordsOf(batch));
      const photos = await Promise.all((batch.photos ?? []).map(preparePhoto));
      await this.toBoth(records, photos);
    });
  }

  commit(records: readonly Prepared[], photos: readonly StoredPhoto[] = []): Promise<void> {
    return this.run(() => this.toBoth(records, photos));
  }

  setPhoneValue(key: string, value: unknown): Promise<void> {
    return this.run(() =>
      this.connection.transact(
        ['phone'],
        'readwrite',
        async (transaction) => {
          await transaction.objectStore('phone').put(value, key);
        },
        'relaxed',
      ),
    );
  }

  /** When nothing is under way any more. */
  async settled(): Promise<void> {
    await Promise.allSettled(this.running);
  }

  private async run(write: () => Promise<void>): Promise<void> {
    const running = write();
    this.running.add(running);
    try {
      await running;
    } catch (error) {
      throw asWriteError(error);
    } finally {
      this.running.delete(running);
    }
  }

  private async toBoth(records: readonly Prepared[], photos: readonly StoredPhoto[]): Promise<void> {
    await this.lines.ready;
    for (const { key } of records) this.watched?.add(key);
    const json = records.map((r) => r.json);
    let line: Promise<void> | undefined;
    await this.connection.transact([...stores], 'readwrite', async (transaction) => {
      // All is asked in one go, and all written in one: every answer waited for by itself is felt at each press.
      const [fresh, before] = await Promise.all([
        freshOf(transaction, records),
        this.markBefore(transaction),
        checkCorrections(transaction, records),
      ]);
      await putAll(transaction, fresh, photos, () => this.mark(transaction, records, before));
      // Lines of several records can be torn half way when the power goes: of a transaction that was not committed
      // by then, the next opening would bring back a part.
      if (photos.length > 0 || records.length > 1) return;
      // Only the disk can refuse it now, so the line goes there beside the commit. What the database then does not
      // take is held on the screen as not saved; should the app end before it is, the next opening has the line.
      line = this.lines.append(json);
      line.catch(() => {});
    });
    if (!line) {
      // First, so that a line that speaks of a photo never stands in the second copy without it.
      await this.lines.keepPhotos(photos);
      line = this.lines.append(json);
    }
    await line;
    this.tabs.tell(touched(records), this.ids.greatest());
  }

  /** Takes records and photos out of the second copy into the database. They were let in once: only their absence is checked. */
  async takeBack(records: readonly Prepared[], photos: readonly StoredPhoto[] = []): Promise<void> {
    await this.connection.transact([...stores], 'readwrite', async (transaction) =>
      putAll(transaction, await freshOf(transaction, records), photos),
    );
    this.tabs.tell(touched(records), this.ids.greatest());
  }

  private markKey = () => ['slot', this.lines.slot ?? -1];

  private markBefore(transaction: Writing): Promise<SlotMark | undefined> {
    return transaction.objectStore('meta').get(this.markKey()) as Promise<SlotMark | undefined>;
  }

  private mark(
    transaction: Writing,
    records: readonly Prepared[],
    before: SlotMark | undefined,
  ): Promise<unknown> {
    const tail = [...(before?.tail ?? []), ...records.slice(-tailLength).map((r) => r.key)];
    const mark: SlotMark = { tail: tail.slice(-tailLength), greatestId: this.ids.greatest() };
    return transaction.objectStore('meta').put(mark, this.markKey());
  }
}

/** A correction of a correction would never be found by the fold, which groups by first entries. */
async function checkCorrections(transaction: Writing, records: readonly Prepared[]): Promise<void> {
  const inBatch = new Map(records.map((r) => [r.key, r.value]));
  const entries = transaction.objectStore('entries');
  await Promise.all(
    records.map(async ({ value }) => {
      const first = value.corrects;
      if (typeof first !== 'string' || value.record !== 'entry') return;
      const target = inBatch.get(`entries:${first}`) ?? (await entries.get(first));
      if (target?.corrects !== undefined) throw refuse(`${value.id} corrects a correction`);
    }),
  );
}

/** What is not stored yet; the same again is no news, another under the same id is refused. */
async function freshOf(transaction: Writing, records: readonly Prepared[]): Promise<Prepared[]> {
  const fresh: Prepared[] = [];
  for (const [i, before] of (await storedOf(transaction, records)).entries()) {
    const record = records[i];
    if (!record) continue;
    if (before && canonical(before) !== canonical(record.value))
      throw refuse(`${record.key} is stored with other content`);
    if (!before) fresh.push(record);
  }
  return fresh;
}

async function putAll(
  transaction: Writing,
  fresh: readonly Prepared[],
  photos: readonly StoredPhoto[],
  mark?: () => Promise<unknown>,
): Promise<void> {
  const add = ({ store, value }: Prepared) => transaction.objectStore(store).add(value);
  let rest = 0;
  for (; fresh.length - rest > atOnce; rest += atOnce) {
    await Promise.all(fresh.slice(rest, rest + atOnce).map(add));
  }
  const subjects = new Set(fresh.flatMap(subjectOf));
  const kept = await Promise.all(photos.map((p) => transaction.objectStore('photos').getKey(p.hash)));
  await Promise.all([
    ...fresh.slice(rest).map(add),
    mark?.(),
    ...photos.filter((_, i) => kept[i] === undefined).map((p) => transaction.objectStore('photos').put(p)),
    ...[...subjects].flatMap((subject) => [
      transaction.objectStore('summaries').delete(subject),
      transaction.objectStore('meta').put(1, ['dropped', subject]),
    ]),
  ]);
}

/** The build or oven load whose summary no longer holds. The bench has none. */
function subjectOf({ store, value }: Prepared): string[] {
  if (store === 'headers') return [value.id];
  const { subject } = value;
  return store === 'entries' && typeof subject === 'string' && subject !== benchSubject ? [subject] : [];
}

/** What other tabs have to read again. */
function touched(records: readonly Prepared[]): string[] {
  const named = records.map(({ store, value }) => {
    if (store === 'entries') return value.subject;
    return store === 'revisions' ? value.doc : value.id;
  });
  return [...new Set(named.filter((name) => typeof name === 'string'))];
}
