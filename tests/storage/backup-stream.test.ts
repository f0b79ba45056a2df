import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Good } from '#storage/backup-check.ts';
import { readLines } from '#storage/backup-lines.ts';
import { backupOf } from '#storage/backup-text.ts';
import { SeenKeys } from '#storage/fingerprint.ts';
import type { Store } from '#storage/store.ts';
import { check, cleanUp, note, open, ovenLoad, state } from './samples.ts';

afterEach(cleanUp);

/** A file whose bytes come in pieces of these lengths, as from a slow disk. */
function inPieces(bytes: Uint8Array<ArrayBuffer>, lengths: readonly number[]): Blob {
  const file = new Blob([bytes]);
  file.stream = () => {
    let at = 0;
    let i = 0;
    return new ReadableStream({
      pull(controller) {
        const length = Math.max(1, lengths[i++ % lengths.length] ?? 1);
        if (at >= bytes.length) controller.close();
        else controller.enqueue(bytes.slice(at, at + length));
        at += length;
      },
    });
  };
  return file;
}

async function linesOf(file: Blob): Promise<string[]> {
  const all: string[] = [];
  let next = 1;
  for await (const { from, lines } of readLines(file)) {
    expect(from).toBe(next);
    next += lines.length;
    all.push(...lines);
  }
  return all;
}

describe('the lines of a file', () => {
  it('are the same in whatever pieces its bytes arrive', async () => {
    const words = fc.array(
      fc.string({ unit: 'grapheme', minLength: 1 }).map((s) => `>${s.replace(/[\r\n]/g, '')}`),
    );
    const lengths = fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1 });
    const ends = fc.constantFrom('\n', '\r\n');
    await fc.assert(
      fc.asyncProperty(
        words,
        lengths,
        ends,
        fc.constantFrom('', '\uFEFF'),
        async (lines, pieces, end, mark) => {
          const bytes = new TextEncoder().encode(mark + lines.map((line) => line + end).join(''));
          expect(await linesOf(inPieces(bytes, pieces))).toEqual(lines);
        },
      ),
      { numRuns: 100 },
    );
  });

  it('come in chunks, of which the last one says so, also when the file ends with a full one', async () => {
    for (const count of [1, 4999, 5000, 5001, 10_000]) {
      const sizes: number[] = [];
      const lasts: boolean[] = [];
      for await (const { lines, last } of readLines(new Blob(['x\n'.repeat(count)]))) {
        sizes.push(lines.length);
        lasts.push(last);
      }
      expect(sizes.reduce((a, b) => a + b)).toBe(count);
      expect(lasts).toEqual(sizes.map((_, i) => i === sizes.length - 1));
      expect(Math.max(...sizes)).toBeLessThanOrEqual(5000);
    }
  });

  it('that never end are given up before they fill the memory', async () => {
    const endless = new Blob(['{}\n', ...Array.from({ length: 70 }, () => 'x'.repeat(1_000_000))]);
    await expect(linesOf(endless)).rejects.toThrow('more than 60000000 characters in one line');
    const foreign = new Blob(Array.from({ length: 70 }, () => 'x'.repeat(1_000_000)));
    expect(await check('x'.repeat(100_000))).toMatchObject({ reason: 'foreign', line: 1 });
    await expect(linesOf(foreign)).rejects.toThrow('more than 64000 characters in one line');
  });
});

it('keys that were seen are known by what they said, as a map would know them', () => {
  const value = fc.oneof(fc.integer({ min: 0, max: 3 }), fc.dictionary(fc.constantFrom('a', 'b'), fc.nat(2)));
  const steps = fc.array(fc.tuple(fc.integer({ min: 0, max: 3000 }).map(String), value), { maxLength: 4000 });
  fc.assert(
    fc.property(steps, (added) => {
      const seen = new SeenKeys();
      const known = new Map<string, { line: number; says: string }>();
      added.forEach(([key, says], i) => {
        const text = JSON.stringify(typeof says === 'object' ? Object.entries(says).sort() : says);
        const before = known.get(key);
        const expected = before ? (before.says === text ? before.line : -before.line) : 0;
        expect(seen.add(key, says, i + 1)).toBe(expected);
        if (!before) known.set(key, { line: i + 1, says: text });
        expect(seen.lineOf(key)).toBe(known.get(key)?.line);
      });
      expect([seen.size, seen.lineOf('never')]).toEqual([known.size, 0]);
    }),
    { numRuns: 30 },
  );
});

describe('a backup of more than one chunk', () => {
  const records = [
    ovenLoad('o1', 5),
    ...Array.from({ length: 7000 }, (_, i) => note(`e${String(i).padStart(5, '0')}`, 'o1')),
  ];
  const text = backupOf(records, { app: '0.1.0', at: 1_700_000_000_000 });
  const whole = text.trimEnd().split('\n').slice(1, -1).sort();
  let fresh: Store;

  async function good(): Promise<Good> {
    const checked = await check(text);
    if (!checked.ok) throw new Error(checked.detail);
    return checked;
  }

  beforeEach(async () => {
    fresh = await open();
  });

  it('that is another file by the time it is merged in is refused, and nothing is stored', async () => {
    const other = text.replace('"id":"e06999"', '"id":"e07999"');
    const changed = { ...(await good()), file: new Blob([other]) };
    expect(await fresh.restore(changed)).toMatchObject({ ok: false, reason: 'changed', added: 0 });
    const shorter = { ...(await good()), file: new Blob([text.split('\n').slice(0, 6000).join('\n')]) };
    expect(await fresh.restore(shorter)).toMatchObject({ ok: false, reason: 'changed', added: 0 });
    expect(await state(fresh)).toEqual([]);
  });

  it('stopped while it is compared has changed nothing', async () => {
    const stop = new AbortController();
    const merging = fresh.restore(await good(), { onProgress: () => stop.abort(), stop: stop.signal });
    await expect(merging).rejects.toThrow('abort');
    expect(await state(fresh)).toEqual([]);
  });

  it('stopped while it is written leaves what is in, another go adds the rest, and its backup can be stopped too', async () => {
    const stop = new AbortController();
    const checked = await good();
    const halfway = (share: number) => share > 0.35 && stop.abort();
    await expect(fresh.restore(checked, { onProgress: halfway, stop: stop.signal })).rejects.toThrow('abort');
    const part = await state(fresh);
    expect(part.length).toBeGreaterThan(1000);
    expect(part.length).toBeLessThan(whole.length);
    expect(whole).toEqual(expect.arrayContaining(part.slice(0, 100)));
    const outcome = await fresh.restore(checked);
    expect(outcome).toMatchObject({ ok: true, already: part.length, conflicts: [] });
    expect(await state(fresh)).toEqual(whole);
    await endsWhenStopped(fresh);
  });

  /** A backup of it is made piece by piece, counted, and ends at once when it is stopped. */
  async function endsWhenStopped(store: Store): Promise<void> {
    const stop = new AbortController();
    const counts: number[] = [];
    const pieces = store.backup({
      photos: true,
      app: '0.1.0',
      at: 1,
      stop: stop.signal,
      onProgress: (done) => {
        counts.push(done);
        if (done > 3000) stop.abort();
      },
    });
    const made = async () => {
      for await (const piece of pieces) expect(piece.length).toBeLessThan(1_000_000);
    };
    await expect(made()).rejects.toThrow('abort');
    expect(counts.length).toBeGreaterThan(3);
    expect(counts.at(-1)).toBeLessThan(whole.length);
  }
});
