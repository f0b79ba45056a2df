import type { LoggerDialect } from '#shared/record/logger-file.ts';

type Encoding = LoggerDialect['encoding'];

/** So many bytes tell whether every other one is 0. */
const looked = 400;

/** By its byte order mark, by its zero bytes, or by whether it is good UTF-8. */
export function encodingOf(bytes: Uint8Array): Encoding {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  if (first === 0xfe && second === 0xff) return 'utf-16be';
  const head = bytes.subarray(0, looked);
  const zeros = (odd: number) => head.filter((byte, i) => i % 2 === odd && byte === 0).length;
  if (zeros(1) > head.length / 4) return 'utf-16le';
  if (zeros(0) > head.length / 4) return 'utf-16be';
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return 'utf-8';
  } catch {
    return 'windows-1252';
  }
}

/** The text of a file, without its byte order mark. */
export function decoded(bytes: Uint8Array, encoding: Encoding): string {
  return new TextDecoder(encoding).decode(bytes);
}
