import { crc32, hex32 } from './crc32.ts';

const newline = 10;
const space = 32;
const prefixLength = 9;
const encoder = new TextEncoder();
const decoder = new TextDecoder();

/** `<CRC-32 of the JSON, 8 hex digits> <JSON>\n` for each record, in one piece for one write. */
export function encodeLines(records: readonly string[]): Uint8Array<ArrayBuffer> {
  const lines = records.map((json) => {
    const body = encoder.encode(json);
    return { head: encoder.encode(`${hex32(crc32(body))} `), body };
  });
  const bytes = new Uint8Array(lines.reduce((sum, { body }) => sum + prefixLength + body.length + 1, 0));
  let at = 0;
  for (const { head, body } of lines) {
    bytes.set(head, at);
    bytes.set(body, at + prefixLength);
    at += prefixLength + body.length;
    bytes[at++] = newline;
  }
  return bytes;
}

/** The records of all whole lines whose checksum is right; `used` is where the last whole line ends. */
export function decodeLines(bytes: Uint8Array): { records: string[]; used: number; damaged: boolean } {
  const records: string[] = [];
  let damaged = false;
  let start = 0;
  for (let end = bytes.indexOf(newline); end >= 0; end = bytes.indexOf(newline, start)) {
    const body = bytes.subarray(start + prefixLength, end);
    const head = decoder.decode(bytes.subarray(start, start + prefixLength - 1));
    const whole = bytes[start + prefixLength - 1] === space && head === hex32(crc32(body));
    if (whole) records.push(decoder.decode(body));
    else damaged = true;
    start = end + 1;
  }
  return { records, used: start, damaged };
}

/** Where the first line begins, in bytes cut out of the middle of a file. */
export function firstLineStart(bytes: Uint8Array): number {
  const end = bytes.indexOf(newline);
  return end < 0 ? bytes.length : end + 1;
}

/** Where the last whole line ends, or -1 when these bytes hold no line end. */
export function lastLineEnd(bytes: Uint8Array): number {
  return bytes.lastIndexOf(newline) + 1 || -1;
}
