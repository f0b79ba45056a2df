import { crc32, hex32 } from '#storage/crc32.ts';
import { fromBase45, toBase45 } from './base45.ts';
import { packed, unpacked } from './pack.ts';

// One code of a sequence: 'TW', which parcel (crc32 of its bytes), which code of how many, then its part of the bytes.
// All of it in the characters that a QR code packs tightest, so that a code stays coarse enough for a shaky hand.

/** Bytes in one code: 89 modules a side at low error correction, coarse on the smallest phone. */
const bytesInCode = 560;
/** More codes than this take longer to scan than a file takes to send. */
export const mostCodes = 80;

const twoDigits = (n: number) => n.toString(36).toUpperCase().padStart(2, '0');

/** A text as a sequence of codes; undefined when it is too long for one. */
export async function codesOf(text: string): Promise<string[] | undefined> {
  const bytes = await packed(text);
  const count = Math.ceil(bytes.length / bytesInCode);
  if (count > mostCodes) return undefined;
  const name = hex32(crc32(bytes)).toUpperCase();
  return Array.from({ length: count }, (_, i) => {
    const part = bytes.subarray(i * bytesInCode, (i + 1) * bytesInCode);
    return `TW${name}${twoDigits(i)}${twoDigits(count)}${toBase45(part)}`;
  });
}

/** What was scanned of a sequence so far, in whatever order. */
export interface Collected {
  /** Which parcel. */
  name: string;
  parts: ReadonlyMap<number, Uint8Array<ArrayBuffer>>;
  count: number;
}

const form = /^TW([0-9A-F]{8})([0-9A-Z]{2})([0-9A-Z]{2})([0-9A-Z $%*+\-./:]+)$/;

/** With one more code; the same as before when it is no code of ours, or was seen already. Another parcel begins anew. */
export function withCode(before: Collected | undefined, code: string): Collected | undefined {
  const [, name = '', index = '', of = '', rest = ''] = form.exec(code) ?? [];
  const part = fromBase45(rest);
  const [i, count] = [Number.parseInt(index, 36), Number.parseInt(of, 36)];
  if (!part || !(count >= 1 && count <= mostCodes) || !(i < count)) return before;
  const same = before?.name === name && before.count === count ? before : undefined;
  if (same?.parts.has(i)) return same;
  return { name, count, parts: new Map([...(same?.parts ?? []), [i, part]]) };
}

export const isWhole = ({ parts, count }: Collected): boolean => parts.size === count;

/** The text of a whole sequence; undefined when its bytes are not those that were shown. */
export async function textOf({ name, parts, count }: Collected): Promise<string | undefined> {
  const all = Array.from({ length: count }, (_, i) => parts.get(i) ?? new Uint8Array());
  const bytes = new Uint8Array(await new Blob(all).arrayBuffer());
  if (hex32(crc32(bytes)).toUpperCase() !== name) return undefined;
  return unpacked(bytes).catch(() => undefined);
}
