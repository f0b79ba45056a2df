/** Bytes taken at one go: a backup of a big shop is hundreds of megabytes. */
const atOnce = 8;

type Table = Uint32Array;
type Eight = [Table, Table, Table, Table, Table, Table, Table, Table];

/** The remainder of each byte, followed by 0 to 7 more bytes. */
const tables = Array.from({ length: atOnce }, (): Table => new Uint32Array(256));
for (let n = 0; n < 256; n++) {
  let c = n;
  for (const table of tables) {
    for (let bit = 0; bit < 8; bit++) c = c & 1 ? (c >>> 1) ^ 0xedb88320 : c >>> 1;
    table[n] = c;
  }
}
const [t0, t1, t2, t3, t4, t5, t6, t7] = tables as Eight;

/** CRC-32 as in ISO/IEC 8802-3 (Ethernet). Pass the last result on to go on with more bytes. */
export function crc32(bytes: Uint8Array, before = 0): number {
  const at = (i: number) => bytes[i] as number;
  const of = (table: Table, i: number) => table[i & 0xff] as number;
  let crc = ~before;
  let i = 0;
  for (; i + atOnce <= bytes.length; i += atOnce) {
    crc ^= at(i) | (at(i + 1) << 8) | (at(i + 2) << 16) | (at(i + 3) << 24);
    crc =
      of(t7, crc) ^
      of(t6, crc >>> 8) ^
      of(t5, crc >>> 16) ^
      of(t4, crc >>> 24) ^
      of(t3, at(i + 4)) ^
      of(t2, at(i + 5)) ^
      of(t1, at(i + 6)) ^
      of(t0, at(i + 7));
  }
  for (; i < bytes.length; i++) crc = of(t0, crc ^ at(i)) ^ (crc >>> 8);
  return ~crc >>> 0;
}

export function hex32(value: number): string {
  return value.toString(16).padStart(8, '0');
}
