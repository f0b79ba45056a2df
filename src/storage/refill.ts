import type { Marks } from './compare.ts';
import type { Connection } from './connection.ts';
import type { Database } from './database.ts';
import type { Ids } from './ids.ts';
import type { Lines } from './lines.ts';
import type { SlotMark } from './schema.ts';
import type { Writer } from './writer.ts';

/** Comes after the first screen, unless the database is empty. */
export const comparing = () => import('./compare.ts');

/** A mark of no file: whoever meets it on opening cannot explain it, and compares both copies whole. */
const owed = -1;

/** A page was killed before its new database had everything back: what it holds is no record to show. */
export const isOwed = (marks: Marks): boolean => (marks.get(owed)?.tail.length ?? 0) > 0;

interface Parts {
  connection: Connection;
  lines: Lines;
  writer: Writer;
  ids: Ids;
  device: string;
  /** What this page knows of the phone's own values, which no second copy holds. */
  phone: Map<string, unknown>;
}

/** Fills a database anew that a full disk destroyed under an open page. */
export class Refill {
  private mark: SlotMark | undefined;
  private running = false;

  constructor(private readonly parts: Parts) {}

  keep(key: string, value: unknown): void {
    this.parts.phone.set(key, value);
  }

  /** Before anything else goes into it, so that a page killed meanwhile leaves word of what is missing. */
  async begin(database: Database): Promise<void> {
    const { device, ids, phone } = this.parts;
    const mark = { tail: ['owed'], greatestId: ids.greatest() };
    const transaction = database.transaction(['meta', 'phone'], 'readwrite', { durability: 'strict' });
    const meta = transaction.objectStore('meta');
    const known = [...phone].filter(([, value]) => value !== undefined);
    await Promise.all([
      meta.put(device, 'device'),
      meta.put(mark, ['slot', owed]),
      ...known.map(([key, value]) => transaction.objectStore('phone').put(value, key)),
      transaction.done,
    ]);
    this.mark = mark;
    this.goOn();
  }

  /** Asked after every write: what stopped for want of room goes on when there is some. */
  goOn(): void {
    if (!this.mark || this.running) return;
    this.running = true;
    this.fill(this.mark)
      .then(() => {
        this.mark = undefined;
      })
      // The mark stays: the next write, or the next opening, tries again.
      .catch(() => {})
      .finally(() => {
        this.running = false;
      });
  }

  private async fill(mark: SlotMark): Promise<void> {
    await this.parts.lines.ready;
    const { compareAll } = await comparing();
    await compareAll(this.parts, new Map([[owed, mark]]));
  }
}
