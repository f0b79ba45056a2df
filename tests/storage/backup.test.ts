import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Checked, Good } from '#storage/backup-check.ts';
import { crc32, hex32 } from '#storage/crc32.ts';
import { deleteStore } from '#storage/open-store.ts';
import type { Store } from '#storage/store.ts';
import {
  backupText,
  check,
  cleanUp,
  cloth,
  name,
  note,
  open,
  ovenLoad,
  photo,
  saidIn,
  state,
} from './samples.ts';

let store: Store;
beforeEach(async () => {
  store = await open();
});
afterEach(cleanUp);

async function fill(to: Store): Promise<void> {
  await to.write({
    headers: [ovenLoad('o1', 5), ovenLoad('o2', 6, { v: 99, schedule: 'of a newer version' })],
    entries: [
      note('e1', 'o1', 'ünï — “quoted”\nsecond line \u2028 \uD800'),
      note('e2', 'o1', 'better', { corrects: 'e1' }),
      note('e3', 'nowhere', 'no header', { kind: 'unheard', extra: { a: [1, null] } }),
    ],
    revisions: [
      cloth('d1', 'r1'),
      cloth('d1', 'r2', ['r1']),
      cloth('d2', 'r3', [], { type: 'sail', body: 7 }),
    ],
    photos: [await photo('gelled cup')],
  });
}

function good(checked: Checked): Good {
  if (!checked.ok) throw new Error(`line ${checked.line}: ${checked.reason}, ${checked.detail}`);
  return checked;
}

/** Replaces lines and puts the checksum right again, as a forger would. */
function forge(text: string, change: (lines: string[]) => void): string {
  const lines = text.trimEnd().split('\n');
  const end = JSON.parse(lines.pop() ?? '');
  change(lines);
  const body = lines.map((line) => `${line}\n`).join('');
  end.crc32 = hex32(crc32(new TextEncoder().encode(body)));
  return `${body}${JSON.stringify(end)}\n`;
}

describe('a backup', () => {
  it('restored into an empty shop gives the same state', async () => {
    await fill(store);
    const [text, before] = [await backupText(store), await state(store)];
    await store.close();
    await deleteStore(name);
    const fresh = await open();
    const outcome = await fresh.restore(good(await check(text)));
    expect(outcome).toEqual({
      ok: true,
      added: { headers: 2, entries: 3, revisions: 3, photos: 1 },
      already: 0,
      conflicts: [],
    });
    expect(await state(fresh)).toEqual(before);
    expect(await backupText(fresh)).toBe(text);
  });

  it('merged twice changes nothing the second time', async () => {
    await fill(store);
    const checked = good(await check(await backupText(store)));
    const before = await state(store);
    const nothing = { headers: 0, entries: 0, revisions: 0, photos: 0 };
    expect(await store.restore(checked)).toEqual({ ok: true, added: nothing, already: 9, conflicts: [] });
    expect(await state(store)).toEqual(before);
  });

  it('of a second phone is united with what is here, and tells which documents have two heads', async () => {
    await store.write({ revisions: [cloth('d1', 'r1'), cloth('d2', 's1')], entries: [note('e1', 'o1')] });
    const base = await backupText(store);
    await store.write({
      revisions: [cloth('d1', 'r2', ['r1']), cloth('d2', 's2', ['s1'])],
      entries: [note('e2', 'o1')],
    });
    const theirs = await backupText(store);
    await store.close();
    await deleteStore(name);
    const ours = await open();
    await ours.restore(good(await check(base)));
    await ours.write({ revisions: [cloth('d1', 'r3', ['r1'])], entries: [note('e3', 'o1')] });
    expect(await ours.restore(good(await check(theirs)))).toMatchObject({
      added: { entries: 1, revisions: 2 },
      already: 3,
      conflicts: ['d1'],
    });
    expect((await ours.entries('o1')).map((e) => e.ok && e.value.id)).toEqual(['e1', 'e2', 'e3']);
  });

  it('without photos has none, and says so', async () => {
    await fill(store);
    const checked = good(await check(await backupText(store, false)));
    expect([checked.counts.photos, checked.holds.photos]).toEqual([0, 0]);
  });

  it('that came through a share sheet with byte order mark, carriage returns and blank lines is taken', async () => {
    await fill(store);
    const text = await backupText(store);
    const mangled = `\uFEFF${text.replaceAll('\n', '\r\n')}\r\n\r\n`;
    expect(await saidIn(good(await check(mangled)))).toEqual(await saidIn(good(await check(text))));
  });

  it('of an empty shop is a backup', async () => {
    const checked = good(await check(await backupText(store)));
    expect([await saidIn(checked), checked.at]).toEqual([[], 1_700_000_000_000]);
  });

  it('bigger than one piece and one chunk comes back whole, with progress', async () => {
    const entries = Array.from({ length: 5003 }, (_, i) => note(`e${i}`, 'o1'));
    await store.write({ headers: [ovenLoad('o1', 5)], entries });
    const [text, before] = [await backupText(store), await state(store)];
    await store.close();
    await deleteStore(name);
    const fresh = await open();
    const shares: number[] = [];
    await fresh.restore(good(await check(text)), { onProgress: (share) => shares.push(share) });
    expect(await state(fresh)).toEqual(before);
    expect(shares.at(-1)).toBe(1);
    expect(shares.every((s, i) => s >= 0 && s <= 1 && s >= (shares[i - 1] ?? 0))).toBe(true);
  });
});

describe('a backup is refused, with reason and line,', () => {
  const refusal = async (text: string) => {
    const checked = await check(text);
    return checked.ok ? 'taken' : `${checked.reason} ${checked.line}`;
  };
  let text: string;
  beforeEach(async () => {
    await fill(store);
    text = await backupText(store);
  });

  it('when it is empty or of something else', async () => {
    expect(await refusal('')).toBe('empty 1');
    expect(await refusal('\uFEFF\r\n\r\n')).toBe('empty 1');
    for (const foreign of [
      '{}',
      'null',
      '[1,2]',
      'name,mass\nmast,3',
      '{"format":"cake"}',
      '<!doctype html>',
    ]) {
      expect(await refusal(foreign)).toBe('foreign 1');
    }
    expect(await refusal(text.slice(text.indexOf('\n') + 1))).toBe('foreign 1');
  });

  it('when a newer version wrote it', async () => {
    expect(await refusal(text.replace('"version":1', '"version":2'))).toBe('newerVersion 1');
  });

  it('when its end is missing', async () => {
    const lines = text.trimEnd().split('\n');
    expect(await refusal(lines.slice(0, -1).join('\n'))).toBe(`cutShort ${lines.length - 1}`);
    expect(await refusal(lines[0] ?? '')).toBe('cutShort 1');
    expect(await refusal(text.slice(0, -5))).toBe(`notJson ${lines.length}`);
  });

  it('when a line is missing, doubled or edited', async () => {
    const lines = text.trimEnd().split('\n');
    const last = lines.length;
    expect(await refusal(lines.filter((_, i) => i !== 3).join('\n'))).toBe(`count ${last - 1}`);
    expect(await refusal(lines.flatMap((l, i) => (i === 3 ? [l, l] : [l])).join('\n'))).toBe(
      `count ${last + 1}`,
    );
    expect(await refusal(text.replace('"better"', '"bitter"'))).toBe(`checksum ${last}`);
    expect(await refusal(text.replace('"entries":3', '"entries":4'))).toBe(`count ${last}`);
    expect(await refusal([lines[0], ...lines.slice(1, -1).reverse(), lines[last - 1]].join('\n'))).toBe(
      `checksum ${last}`,
    );
  });

  it('when one id has two contents in it, even with the right checksum', async () => {
    const twice = forge(text, (lines) => {
      lines[3] = JSON.stringify(note('e1', 'o1', 'first'));
      lines[4] = JSON.stringify(note('e1', 'o1', 'second'));
    });
    expect(await refusal(twice)).toBe('conflict 5');
  });

  it('when a record is none, is nested without end, or carries a prototype', async () => {
    const place = (line: string) => refusal(forge(text, (lines) => lines.splice(2, 1, line)));
    expect(await place('{"record":"cake","v":1}')).toBe('notARecord 3');
    expect(await place('7')).toBe('notARecord 3');
    expect(await place(JSON.stringify(note('e9', 'o1', 'x', { zone: 'noon' })))).toBe('notARecord 3');
    expect(
      await place(JSON.stringify(note('e9', 'o1')).replace('"zone"', '"__proto__":{"admin":true},"zone"')),
    ).toBe('notARecord 3');
    expect(
      await place(JSON.stringify(note('e9', 'o1')).replace('"zone"', '"\\u005f_proto__":7,"zone"')),
    ).toBe('notARecord 3');
    const deep = `${'{"a":'.repeat(100_000)}1${'}'.repeat(100_000)}`;
    expect(
      await place(JSON.stringify(note('e9', 'o1', 'x', { deep: 0 })).replace('"deep":0', `"deep":${deep}`)),
    ).toBe('tooDeep 3');
    expect(await place(JSON.stringify(note('e9', 'o1', 'x', { huge: 'y'.repeat(5_000_000) })))).toBe(
      'tooLong 3',
    );
    expect(await place('{"record":')).toBe('notJson 3');
    expect(Object.hasOwn(Object.prototype, 'admin')).toBe(false);
  });

  it('when a correction corrects a correction', async () => {
    const chained = forge(text, (lines) => {
      const at = lines.findIndex((l) => l.includes('"e3"'));
      lines[at] = JSON.stringify(note('e3', 'o1', 'again', { corrects: 'e2' }));
    });
    expect(await refusal(chained)).toMatch(/^correction/);
  });

  it('when a photo is not what it says', async () => {
    const at = text.trimEnd().split('\n').length - 1;
    expect(
      await refusal(
        forge(text, (lines) => lines.splice(-1, 1, (lines.at(-1) ?? '').replace('"bytes":10', '"bytes":11'))),
      ),
    ).toBe(`photo ${at}`);
    expect(
      await refusal(
        forge(text, (lines) => lines.splice(-1, 1, (lines.at(-1) ?? '').replace('"data":"', '"data":"*'))),
      ),
    ).toBe(`photo ${at}`);
    await store.close();
    await deleteStore(name);
    store = await open();
    const other = forge(text, (lines) =>
      lines.splice(-1, 1, (lines.at(-1) ?? '').replace(btoa('gelled cup'), btoa('spoilt cup'))),
    );
    expect(await store.restore(good(await check(other)))).toMatchObject({
      ok: false,
      reason: 'photo',
      line: at,
    });
    expect(await state(store)).toEqual([]);
  });

  it('when an id is on this phone with other content, before anything is written', async () => {
    const before = await state(store);
    const changed = forge(text, (lines) => {
      lines[1] = JSON.stringify(note('e0', 'o1', 'new to this phone'));
      const at = lines.findIndex((l) => l.includes('"better"'));
      lines[at] = (lines[at] ?? '').replace('"better"', '"bitter"');
    }).replace('"headers":2,"revisions":3,"entries":3', '"headers":1,"revisions":3,"entries":4');
    const outcome = await store.restore(good(await check(changed)));
    expect(outcome).toMatchObject({ ok: false, reason: 'conflict' });
    expect(!outcome.ok && changed.split('\n')[outcome.line - 1]).toContain('"bitter"');
    expect(await state(store)).toEqual(before);
  });
});
