/** The characters that a QR code packs tightest; RFC 9285. */
const letters = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:';

/** Bytes as text for a QR code: two bytes make three characters, a last single one makes two (RFC 9285). */
export function toBase45(bytes: Uint8Array): string {
  let text = '';
  for (let i = 0; i < bytes.length; i += 2) {
    const [first = 0, second] = [bytes[i], bytes[i + 1]];
    const n = second === undefined ? first : first * 256 + second;
    text += (letters[n % 45] ?? '') + (letters[Math.floor(n / 45) % 45] ?? '');
    if (second !== undefined) text += letters[Math.floor(n / 2025)] ?? '';
  }
  return text;
}

/** Undefined when it is not such a text. */
export function fromBase45(text: string): Uint8Array<ArrayBuffer> | undefined {
  const bytes: number[] = [];
  for (let i = 0; i < text.length; i += 3) {
    const digits = [...text.slice(i, i + 3)].map((c) => letters.indexOf(c));
    const [a = -1, b = -1, c] = digits;
    if (a < 0 || b < 0 || c === -1) return undefined;
    const n = a + 45 * b + 2025 * (c ?? 0);
    if (n > (c === undefined ? 255 : 65_535)) return undefined;
    bytes.push(...(c === undefined ? [n] : [n >> 8, n & 255]));
  }
  return new Uint8Array(bytes);
}
