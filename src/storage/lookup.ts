import type { RawRecord, RecordStore } from './admit.ts';

/** Records looked up at one go: the answers come as one task each, between which the screen has its turn. */
export const atOnce = 500;
/** From so many on it is worth asking for their range first. */
const many = 32;

/** As much of a transaction as is needed, whatever else it may touch. */
interface Readable {
  objectStore(store: RecordStore): {
    get(id: string): Promise<RawRecord | undefined>;
    getAll(range: IDBKeyRange): Promise<RawRecord[]>;
    count(range: IDBKeyRange): Promise<number>;
  };
}

interface Sought {
  store: RecordStore;
  value: RawRecord;
}

/** What is stored under the ids of these records, in their order. */
export async function storedOf(
  transaction: Readable,
  records: readonly Sought[],
): Promise<(RawRecord | undefined)[]> {
  const found: (RawRecord | undefined)[] = [];
  for (let i = 0; i < records.length; i += atOnce) {
    found.push(...(await some(transaction, records.slice(i, i + atOnce))));
  }
  return found;
}

async function some(transaction: Readable, records: readonly Sought[]): Promise<(RawRecord | undefined)[]> {
  const stores = [...new Set(records.map((r) => r.store))];
  const byKey = new Map<string, RawRecord>();
  for (const store of stores) {
    const ids = records.filter((r) => r.store === store).map((r) => r.value.id);
    for (const one of await inStore(transaction, store, ids)) byKey.set(`${store}:${one.id}`, one);
  }
  return records.map(({ store, value }) => byKey.get(`${store}:${value.id}`));
}

/** A backup is in the order of its ids: mostly none of a range is here, or all of it and little else. */
async function inStore(
  transaction: Readable,
  store: RecordStore,
  ids: readonly string[],
): Promise<RawRecord[]> {
  const objects = transaction.objectStore(store);
  if (ids.length >= many) {
    const [least, greatest] = ends(ids);
    const range = IDBKeyRange.bound(least, greatest);
    const count = await objects.count(range);
    if (count === 0) return [];
    if (count <= 2 * ids.length) return objects.getAll(range);
  }
  const found = await Promise.all(ids.map((id) => objects.get(id)));
  return found.filter((one) => one !== undefined);
}

function ends(ids: readonly string[]): [string, string] {
  let [least = '', greatest = ''] = [ids[0], ids[0]];
  for (const id of ids) {
    if (id < least) least = id;
    if (id > greatest) greatest = id;
  }
  return [least, greatest];
}
