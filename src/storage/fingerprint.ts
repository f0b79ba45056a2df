function mixed(a: number, b: number): number {
  let h = Math.imul(a ^ b, 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return h ^ (h >>> 16);
}

function ofText(text: string, seed: number): number {
  let h = seed ^ text.length;
  for (let i = 0; i < text.length; i++) {
    h = Math.imul(h ^ text.charCodeAt(i), 0x5bd1e995);
    h ^= h >>> 15;
  }
  return mixed(h, seed);
}

/** One number for one JSON value, whatever the order of its keys. */
export function fingerprint(value: unknown, seed: number): number {
  if (typeof value === 'string') return ofText(value, seed);
  if (typeof value !== 'object' || value === null) return ofText(String(value), ~seed);
  if (Array.isArray(value)) {
    return value.reduce((h: number, inner) => mixed(h, fingerprint(inner, seed)), mixed(seed, 1));
  }
  let sum = mixed(seed, 2);
  for (const [key, inner] of Object.entries(value)) {
    sum = (sum + mixed(ofText(key, seed), fingerprint(inner, seed))) | 0;
  }
  return mixed(sum, seed);
}

/** Words of one place: two of the key, one of what it says, and the line, which is 0 while the place is free. */
const width = 4;

/**
 * Remembers which keys a file had, in which line, saying what: 16 bytes each in place of the record, so that a file
 * of a million lines can be checked on a phone. The seeds are drawn for each file: nobody can write one in which two
 * things look the same.
 */
export class SeenKeys {
  private readonly seeds = crypto.getRandomValues(new Uint32Array(3));
  private places = new Uint32Array(width << 10);
  size = 0;

  /** 0 when the key is new, its earlier line when it was there saying the same, minus that when it said otherwise. */
  add(key: string, value: unknown, line: number): number {
    if ((this.size + 1) * width * 1.5 > this.places.length) this.grow();
    const says = fingerprint(value, this.seed(2)) >>> 0;
    const at = this.placeOf(this.places, this.first(key), this.second(key));
    const before = this.places[at + 3] ?? 0;
    if (before > 0) return this.places[at + 2] === says ? before : -before;
    this.places.set([this.first(key), this.second(key), says, line], at);
    this.size += 1;
    return 0;
  }

  /** Where the key stood first; 0 when it never did. */
  lineOf(key: string): number {
    return this.places[this.placeOf(this.places, this.first(key), this.second(key)) + 3] ?? 0;
  }

  private seed(i: number): number {
    return this.seeds[i] ?? 0;
  }

  private first(key: string): number {
    return ofText(key, this.seed(0)) >>> 0;
  }

  private second(key: string): number {
    return ofText(key, this.seed(1)) >>> 0;
  }

  private placeOf(places: Uint32Array, first: number, second: number): number {
    const mask = places.length / width - 1;
    for (let i = first & mask; ; i = (i + 1) & mask) {
      const at = i * width;
      if (places[at + 3] === 0 || (places[at] === first && places[at + 1] === second)) return at;
    }
  }

  private grow(): void {
    const bigger = new Uint32Array(this.places.length * 2);
    for (let at = 0; at < this.places.length; at += width) {
      const [first, second] = [this.places[at] ?? 0, this.places[at + 1] ?? 0];
      if (this.places[at + 3] === 0) continue;
      const to = this.placeOf(bigger, first, second);
      for (let word = 0; word < width; word++) bigger[to + word] = this.places[at + word] ?? 0;
    }
    this.places = bigger;
  }
}
