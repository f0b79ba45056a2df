import fc from 'fast-check';
import { backupOf } from '#storage/backup-text.ts';
import { crc32, hex32 } from '#storage/crc32.ts';

/** A file that somebody damaged or wrote to do harm. */
export interface Hostile {
  how: string;
  bytes: Uint8Array<ArrayBuffer>;
}

const encoder = new TextEncoder();
export const script = '<img src=x onerror="window.taken=1"><script>window.taken=1</script>';

/** JSON texts, since JSON.stringify would not write them. */
const nasty = [
  '1e308',
  '-1e308',
  '1e400',
  '9007199254740993',
  '-0',
  '1e-400',
  'NaN',
  'null',
  'true',
  '[]',
  '{}',
  '""',
  '"\\ud800"',
  '"\\u0000"',
  '"__proto__"',
  '{"__proto__":{"taken":1}}',
  '{"constructor":{"prototype":{"taken":1}}}',
  '{"toString":1,"valueOf":1,"toJSON":1,"then":1,"length":-1}',
  JSON.stringify(script),
  JSON.stringify('javascript:window.taken=1'),
  JSON.stringify('x'.repeat(20_000)),
];
const deep = fc
  .tuple(fc.constantFrom('[', '{"a":'), fc.integer({ min: 10, max: 20_000 }))
  .map(([open, depth]) => `${open.repeat(depth)}1${(open === '[' ? ']' : '}').repeat(depth)}`);
const values = fc.oneof(
  { arbitrary: fc.constantFrom(...nasty), weight: 6 },
  { arbitrary: fc.json({ maxDepth: 3 }), weight: 2 },
  { arbitrary: fc.constantFrom('-1', '0', '2', '99', '1e9', '1.5', '"1"'), weight: 2 },
  { arbitrary: deep, weight: 1 },
);
const keys = fc.constantFrom(
  ...['__proto__', 'constructor', 'prototype', 'v', 'id', 'record', 'kind', 'subject', 'corrects', 'hash'],
  ...['data', 'body', 'plan', 'text', 'happenedAt', 'zone', 'setAside', 'end', 'counts', 'format', 'version'],
);

/** Puts counts and checksum right again, as a forger would. */
function sealed(lines: readonly string[], end: string): string {
  const body = lines.map((line) => `${line}\n`).join('');
  return body + end.replace(/"crc32":"[0-9a-f]*"/, `"crc32":"${hex32(crc32(encoder.encode(body)))}"`);
}

/** The end of every JSON value in a line that follows a colon: where something else can be put in its place. */
const valuesIn = (line: string): [number, number][] =>
  [...line.matchAll(/:("(?:[^"\\]|\\.)*"|-?\d[\d.e+-]*|true|false|null)/g)].map((m) => [
    m.index + 1,
    m.index + m[0].length,
  ]);

function swapped(line: string, which: number, value: string): string {
  const all = valuesIn(line);
  const [from, to] = all[which % Math.max(1, all.length)] ?? [0, line.length];
  return line.slice(0, from) + value + line.slice(to);
}

/** Every kind of harm to a good backup: broken bytes, and whole lines that lie under a right checksum. */
export function hostile(good: string): fc.Arbitrary<Hostile> {
  const bytes = encoder.encode(good);
  const lines = good.trimEnd().split('\n');
  const end = lines.at(-1) ?? '';
  const body = lines.slice(0, -1);
  const place = fc.nat(bytes.length - 1);
  const line = fc.nat(body.length - 1);
  const text = (how: string, written: string): Hostile => ({ how, bytes: encoder.encode(written) });
  const changed = (at: number, to: (line: string) => string) =>
    body.map((one, i) => (i === at ? to(one) : one));

  const flips = fc.array(fc.tuple(place, fc.integer({ min: 1, max: 255 })), { minLength: 1, maxLength: 8 });
  const stretch = fc.tuple(place, fc.integer({ min: 1, max: 400 }));
  return fc.oneof(
    flips.map((all): Hostile => {
      const damaged = bytes.slice();
      for (const [at, bits] of all) damaged[at] = (damaged[at] ?? 0) ^ bits;
      return { how: 'bytes flipped', bytes: damaged };
    }),
    stretch.map(([at, long]): Hostile => {
      return {
        how: 'stretch cut out',
        bytes: new Uint8Array([...bytes.slice(0, at), ...bytes.slice(at + long)]),
      };
    }),
    place.map((at): Hostile => ({ how: 'cut off', bytes: bytes.slice(0, at) })),
    fc.tuple(line, fc.nat(200), values).map(([at, which, value]) =>
      text(
        'another value',
        sealed(
          changed(at, (one) => swapped(one, which, value)),
          end,
        ),
      ),
    ),
    fc.tuple(line, keys, values).map(([at, key, value]) =>
      text(
        'another key',
        sealed(
          changed(at, (one) => one.replace(/}$/, `,"${key}":${value}}`)),
          end,
        ),
      ),
    ),
    fc.tuple(line, fc.oneof(values, fc.json())).map(([at, value]) =>
      text(
        'another line',
        sealed(
          changed(at, () => value.replaceAll('\n', ' ')),
          end,
        ),
      ),
    ),
    fc.tuple(line, line).map(([from, to]) =>
      text(
        'line copied over another',
        sealed(
          changed(to, () => body[from] ?? ''),
          end,
        ),
      ),
    ),
    fc
      .tuple(fc.nat(20), values)
      .map(([which, value]) => text('another end', sealed(body, swapped(end, which, value)))),
    fc.tuple(fc.nat(5), values).map(([which, value]) =>
      text(
        'another beginning',
        sealed(
          changed(0, (one) => swapped(one, which, value)),
          end,
        ),
      ),
    ),
    line.map((at) => text('script in every string', sealed(changed(at, everyString), end))),
  );
}

/** Script behind every string that is no key. */
const everyString = (line: string) =>
  line.replace(/:"((?:[^"\\]|\\.)*)"/g, (_, inside) => `:"${inside}${JSON.stringify(script).slice(1, -1)}"`);

/** A small shop with a record of every sort in it. */
export function smallShop(records: readonly { record: string }[], at: number): string {
  const some = (record: string, most: number) => records.filter((r) => r.record === record).slice(0, most);
  return backupOf(
    [...some('build', 1), ...some('ovenLoad', 1), ...some('revision', 6), ...some('entry', 16)],
    { app: 'hostile', at },
  );
}
