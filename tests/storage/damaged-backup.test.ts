import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Checked } from '#storage/backup-check.ts';
import { crc32, hex32 } from '#storage/crc32.ts';
import type { Store } from '#storage/store.ts';
import { backupText, check, cleanUp, cloth, note, open, ovenLoad, photo, saidIn, state } from './samples.ts';

let store: Store;
let text: string;
let bytes: Uint8Array;
let before: string[];
let said: unknown[];

beforeAll(async () => {
  store = await open();
  await store.write({
    headers: [ovenLoad('o1', 5)],
    entries: [note('e1', 'o1', 'ünï “quoted”'), note('e2', 'o1', 'x', { corrects: 'e1' })],
    revisions: [cloth('d1', 'r1')],
    photos: [await photo('gelled cup')],
  });
  text = await backupText(store);
  bytes = new TextEncoder().encode(text);
  before = await state(store);
  const checked = await check(text);
  if (!checked.ok) throw new Error(checked.detail);
  said = await saidIn(checked);
});
afterAll(cleanUp);

/** Refused with a place, or exactly what the undamaged file says. */
async function harmless(checked: Checked): Promise<void> {
  if (checked.ok) expect(await saidIn(checked)).toEqual(said);
  else expect(checked.line).toBeGreaterThan(0);
}

const place = fc.nat().map((n) => n % bytes.length);
const length = fc.integer({ min: 1, max: 40 });

describe('a damaged backup', () => {
  it('with any byte flipped is refused, or says the same', async () => {
    const flip = fc.tuple(place, fc.integer({ min: 1, max: 255 }));
    await fc.assert(
      fc.asyncProperty(flip, async ([at, bits]) => {
        const damaged = bytes.slice();
        damaged[at] = (damaged[at] ?? 0) ^ bits;
        await harmless(await check(new TextDecoder().decode(damaged)));
      }),
      { numRuns: 1500 },
    );
  });

  it('with a stretch zeroed, dropped, doubled or moved is refused, or says the same', async () => {
    const how = fc.constantFrom('zero', 'drop', 'double', 'move');
    await fc.assert(
      fc.asyncProperty(place, length, how, async (at, long, kind) => {
        const [head, cut, rest] = [bytes.slice(0, at), bytes.slice(at, at + long), bytes.slice(at + long)];
        const damaged = {
          zero: [...head, ...cut.map(() => 0), ...rest],
          drop: [...head, ...rest],
          double: [...head, ...cut, ...cut, ...rest],
          move: [...rest, ...cut, ...head],
        }[kind];
        await harmless(await check(new TextDecoder().decode(Uint8Array.from(damaged))));
      }),
      { numRuns: 600 },
    );
  });

  it('cut off anywhere is refused', async () => {
    for (let end = 0; end < bytes.length - 1; end++) {
      const checked = await check(new TextDecoder().decode(bytes.slice(0, end)));
      expect(checked.ok).toBe(false);
    }
  });

  it('forged with any JSON in place of a line, checksum put right, never changes a stored record', async () => {
    const keys = fc.constantFrom(
      'record',
      'v',
      'id',
      'subject',
      'kind',
      '__proto__',
      'constructor',
      'corrects',
      'hash',
    );
    const values = fc.oneof(
      fc.json().map((j) => JSON.parse(j)),
      fc.constantFrom('entry', 'build', 'photo', 'e1', 'o1', 1),
    );
    const lines = fc.oneof(
      fc.json(),
      fc.dictionary(keys, values).map((d) => JSON.stringify({ ...note('e1', 'o1', 'ünï “quoted”'), ...d })),
      fc.dictionary(keys, values).map((d) => JSON.stringify({ ...ovenLoad('o1', 5), ...d })),
    );
    await fc.assert(
      fc.asyncProperty(fc.nat(4), lines, async (at, line) => {
        const body = text.trimEnd().split('\n');
        const end = JSON.parse(body.pop() ?? '');
        body[1 + at] = line;
        const joined = body.map((l) => `${l}\n`).join('');
        end.crc32 = hex32(crc32(new TextEncoder().encode(joined)));
        const checked = await check(`${joined}${JSON.stringify(end)}\n`);
        if (checked.ok) await store.restore(checked);
      }),
      { numRuns: 150 },
    );
    const after = new Set(await state(store));
    expect(before.filter((line) => !after.has(line))).toEqual([]);
    expect({}).not.toHaveProperty('admin');
  });

  it('changed nothing that is stored, and the good one changes nothing either', async () => {
    const now = await state(store);
    const checked = await check(text);
    if (!checked.ok) throw new Error(checked.detail);
    expect(await store.restore(checked)).toMatchObject({ ok: true, already: 5 });
    expect(await state(store)).toEqual(now);
  });
});
