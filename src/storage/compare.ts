import { admit, keyOf, recordStores } from './admit.ts';
import type { Connection } from './connection.ts';
import type { Lines } from './lines.ts';
import type { Tail } from './lines-protocol.ts';
import type { Prepared } from './prepare.ts';
import type { SlotMark } from './schema.ts';
import type { Refilled } from './store.ts';
import type { Writer } from './writer.ts';

/** Newest lines of a file that are looked up: the database has the last ones or has lost its own end. */
const looked = 16;
const chunkSize = 5000;
/** UUID version 7 */
const timeOrdered = /^[0-9a-f]{8}-[0-9a-f]{4}-7/;
export type Marks = ReadonlyMap<number, SlotMark>;

interface Copies {
  connection: Connection;
  lines: Lines;
  writer: Writer;
}

/** A line of the second copy as a record; undefined when it is no record that this version lets in. */
function parse(json: string): Prepared[] {
  const admitted = admit(JSON.parse(json));
  if (!admitted.ok) return [];
  const { store, value } = admitted;
  return [{ key: keyOf(store, value.id), store, value, json }];
}

function absent({ connection }: Copies, records: readonly Prepared[]): Promise<Prepared[]> {
  const once = [...new Map(records.map((r) => [r.key, r])).values()];
  return connection.transact([...recordStores], 'readonly', async (transaction) => {
    const found = await Promise.all(
      once.map(({ store, value }) => transaction.objectStore(store).getKey(value.id)),
    );
    return once.filter((_, i) => found[i] === undefined);
  });
}

/**
 * Looks at the ends of both copies only, whatever the size of the history. Puts right what a kill between the two
 * leaves behind; anything it cannot explain goes to the full comparison.
 */
export async function compareTails(copies: Copies, marks: Marks): Promise<Refilled> {
  const { lines, writer } = copies;
  // Another page has the first file: it has compared, and its writes under way would look like gaps.
  if (lines.slot !== 0) return { database: 0, lines: 0 };
  const inTails = new Set(lines.tails.flatMap((tail) => tail.records.flatMap(parse).map((r) => r.key)));
  const behind = [...marks].map(([slot, { tail }]) => ({ slot, missing: missingAtEnd(tail, inTails) }));
  const ahead = await Promise.all(lines.tails.map((tail) => aheadOf(copies, tail)));
  const empty = lines.tails.every((tail) => tail.size === 0);
  const unexplained = behind.some((b) => b.missing === 'all') || ahead.includes('all');
  if (empty || unexplained || lines.tails.some((tail) => tail.damaged)) return compareAll(copies, marks);

  const toDatabase = ahead.flatMap((missing) => (missing === 'all' ? [] : missing));
  const toLines = behind.flatMap(({ missing }) => (missing === 'all' ? [] : missing));
  if (toDatabase.length > 0) await writer.takeBack(toDatabase);
  if (toLines.length > 0) {
    await lines.append(await jsonOf(copies, toLines));
    await clearTails(copies, marks);
  }
  return { database: toDatabase.length, lines: toLines.length };
}

/** What was written last and is in no file: nothing, the very last ones, or more than the mark can tell. */
function missingAtEnd(tail: readonly string[], inFiles: ReadonlySet<string>): string[] | 'all' {
  const newest = tail.map((key) => inFiles.has(key)).lastIndexOf(true);
  return newest < 0 && tail.length > 0 ? 'all' : tail.slice(newest + 1);
}

/** What the end of a file holds and the database does not. */
async function aheadOf(copies: Copies, tail: Tail): Promise<Prepared[] | 'all'> {
  const newest = await absent(copies, tail.records.slice(-looked).flatMap(parse));
  if (newest.length === 0) return [];
  const records = tail.records.flatMap(parse);
  const missing = await absent(copies, records);
  const oldest = records[0];
  return tail.more && missing.some((m) => m.key === oldest?.key) ? 'all' : missing;
}

/** The marks went with the database: without these a clock set back would make ids that sort before what is there. */
export function newestIds({ tails }: Lines): string[] {
  const newest = tails.flatMap((tail) => tail.records.slice(-looked).flatMap(parse));
  return newest.map(({ value }) => value.id).filter((id) => timeOrdered.test(id));
}

/** Reads both copies whole and gives each what only the other has. */
export async function compareAll(copies: Copies, marks: Marks): Promise<Refilled> {
  const { lines, writer } = copies;
  const inLines = new Set<string>();
  writer.watched = new Set();
  try {
    let database = 0;
    for (const { slot } of lines.tails) {
      for await (const chunk of lines.read(slot)) {
        const records = chunk.flatMap(parse);
        for (const { key } of records) inLines.add(key);
        const missing = await absent(copies, records);
        if (missing.length > 0) await writer.takeBack(missing);
        database += missing.length;
      }
    }
    const added = lines.slot === 0 ? await refillLines(copies, inLines, writer.watched) : 0;
    if (lines.kept()) await clearTails(copies, marks);
    return { database, lines: lines.kept() ? added : 0 };
  } finally {
    writer.watched = undefined;
  }
}

async function refillLines(
  copies: Copies,
  inLines: ReadonlySet<string>,
  watched: ReadonlySet<string>,
): Promise<number> {
  let added = 0;
  for (const store of recordStores) {
    for await (const records of pages(copies.connection, store)) {
      const lacking = records.filter(({ id }) => {
        const key = keyOf(store, id);
        return !inLines.has(key) && !watched.has(key);
      });
      await copies.lines.append(lacking.map((record) => JSON.stringify(record)));
      added += lacking.length;
    }
  }
  return added;
}

/** A whole store by id, a page at a time, each in a short transaction of its own. */
export async function* pages<S extends (typeof recordStores)[number]>(
  connection: Connection,
  store: S,
  size = chunkSize,
) {
  let range: IDBKeyRange | undefined;
  for (;;) {
    const records = await connection.transact([store], 'readonly', (transaction) =>
      transaction.objectStore<typeof store>(store).getAll(range, size),
    );
    yield records;
    const last = records.at(-1);
    if (!last || records.length < size) return;
    range = IDBKeyRange.lowerBound(last.id, true);
  }
}

async function jsonOf({ connection }: Copies, keys: readonly string[]): Promise<string[]> {
  return connection.transact([...recordStores], 'readonly', async (transaction) => {
    const found = await Promise.all(
      recordStores.flatMap((store) =>
        keys
          .filter((key) => key.startsWith(`${store}:`))
          .map((key) => transaction.objectStore(store).get(key.slice(store.length + 1))),
      ),
    );
    return found.flatMap((record) => (record ? [JSON.stringify(record)] : []));
  });
}

/** What was missing now stands in this page's file: the marks of the other files would ask for it every time. */
async function clearTails({ connection }: Copies, marks: Marks): Promise<void> {
  await connection.transact(['meta'], 'readwrite', async (transaction) => {
    for (const [slot, { tail }] of marks) {
      const key = ['slot', slot];
      const now = (await transaction.objectStore('meta').get(key)) as SlotMark | undefined;
      if (!now) continue;
      // Written since this page opened: those marks still count.
      const since = now.tail.filter((written) => !tail.includes(written));
      await transaction.objectStore('meta').put({ ...now, tail: since }, key);
    }
  });
}
