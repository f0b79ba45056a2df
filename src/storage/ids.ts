import { v7 } from 'uuid';

/** The time that a UUID version 7 carries, ms. */
export function idTime(id: string): number {
  const time = Number.parseInt(id.slice(0, 8) + id.slice(9, 13), 16);
  return Number.isNaN(time) ? 0 : time;
}

/** The least id of a time: every id made at or after it sorts at or after this. */
export function idFloor(ms: number): string {
  const hex = Math.max(0, Math.floor(ms)).toString(16).padStart(12, '0');
  return `${hex.slice(0, 8)}-${hex.slice(8)}`;
}

const greatestSequence = 0xffffffff;

/** Makes ids that sort in the order they were made, also when the wall clock is set back or the phone restarts. */
export class Ids {
  private time = 0;
  private sequence = 0;
  private newest = '';

  constructor(private readonly now: () => number = Date.now) {}

  /** No id from here on sorts before this one. */
  raise(id: string): void {
    if (id <= this.newest) return;
    const time = idTime(id);
    if (time >= this.time) {
      this.time = time + 1;
      this.sequence = randomStart();
    }
    this.newest = id;
  }

  next(): string {
    const now = this.now();
    if (now > this.time) {
      this.time = now;
      this.sequence = randomStart();
    } else if (this.sequence >= greatestSequence) {
      this.time += 1;
      this.sequence = randomStart();
    } else {
      this.sequence += 1;
    }
    this.newest = v7({ msecs: this.time, seq: this.sequence });
    return this.newest;
  }

  /** The greatest id made or heard of. */
  greatest(): string {
    return this.newest;
  }
}

/** Leaves half of the range free, so that a burst inside one millisecond does not run over. */
function randomStart(): number {
  return Math.floor(Math.random() * 0x7fffffff);
}
