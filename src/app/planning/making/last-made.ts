import * as z from 'zod/mini';
import { docsOf, findDoc } from '#app/state/documents.ts';
import { theStore } from '#app/state/shop.ts';
import type { Body, DocType } from '#shared/record/revision.ts';

type Made = 'cloth' | 'resin' | 'release' | 'tape' | 'checklist';

const key = 'lastMade';
const shape = z.record(z.string(), z.string());

let last: Partial<Record<string, string>> = {};

/** What the last tube was made of, so that the next one starts with it. It stays on this phone. */
export async function loadLastMade(): Promise<void> {
  const kept = z.safeParse(shape, await theStore().phoneValue(key));
  last = kept.success ? kept.data : {};
}

export async function keepLastMade(made: Record<Made, string>): Promise<void> {
  last = made;
  await theStore().setPhoneValue(key, made);
}

function pick<T extends DocType>(type: T, fits: (body: Body<T>) => boolean): string {
  const docs = docsOf(type);
  return (docs.find((d) => fits(d.body)) ?? docs[0])?.doc ?? '';
}

/** Last time's choice; on a first tube the common one: carbon, a slow hardener, 25 mm tape on the sprayed film sleeve that the checklist is for. */
export function likely(type: Made): string {
  const before = last[type];
  if (before !== undefined && (before === '' || findDoc(type, before)?.retired === false)) return before;
  switch (type) {
    case 'cloth':
      return pick('cloth', (c) => c.fiber === 'carbon');
    case 'resin':
      return pick('resin', (r) => /slow/i.test(r.hardener));
    case 'release':
      return pick('release', (r) => r.kind === 'filmSleeve' && /spray/i.test(r.name));
    case 'tape':
      return pick('tape', (t) => t.width > 0.02);
    case 'checklist':
      return pick('checklist', (c) => /film/i.test(c.name));
  }
}
