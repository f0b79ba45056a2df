import { readFileSync } from 'node:fs';
import { moveTimes } from '#shared/record/move-times.ts';
import type { StoredRecord } from '#shared/record/read.ts';

/** The demo shop as it is shipped, as if it had been made at that moment. */
export function demoRecords(at: number): StoredRecord[] {
  const text = readFileSync(new URL('../../../demo/shop.txt', import.meta.url), 'utf8');
  const [head, ...lines] = text.trimEnd().split('\n').slice(0, -1);
  const by = at - (JSON.parse(head ?? '') as { madeAt: number }).madeAt;
  return lines.map((line) => moveTimes(JSON.parse(line) as StoredRecord, by, 0));
}
