import type { Fault, FaultKind } from './fault.ts';

const hour = 3_600_000;
/** A step this long is no gap in a run but a clock that was set, ms. */
const far = 12 * hour;
/** A stray stamp is followed by good ones within so many rows. */
const strays = 20;
/** Shorter than this is no gap, ms. */
const shortestGap = 60_000;
const silentAfter = 5;

/** The usual time between two rows, ms; rows that share a stamp count. */
export function usualStep(at: Float64Array): number {
  const steps = new Float64Array(Math.max(0, at.length - 1));
  let count = 0;
  let same = 0;
  let before = Number.NaN;
  for (const time of at) {
    if (Number.isNaN(time)) continue;
    const step = time - before;
    before = time;
    if (step > 0) steps[count++] = step;
    else if (step === 0) same += 1;
  }
  if (count === 0) return 1000;
  const middle = steps.subarray(0, count).sort()[Math.floor(count / 2)] ?? 1000;
  return (middle * count) / (count + same);
}

/** Clocks are set on Sundays before three, nearly everywhere that sets them. */
function isClockNight(at: number, zone: number): boolean {
  const local = new Date(at + zone * 60_000);
  return local.getUTCDay() === 0 && local.getUTCHours() < 4;
}

class ClockWalk {
  readonly faults = new Map<FaultKind, Fault>();
  private shift = 0;

  constructor(
    private readonly at: Float64Array,
    private readonly step: number,
    private readonly zone: number,
  ) {}

  run(): Fault[] {
    let last = -1;
    for (let i = 0; i < this.at.length; i++) {
      const time = this.at[i] ?? Number.NaN;
      if (Number.isNaN(time)) {
        this.note('noTime', i, last < 0 ? Number.NaN : (this.at[last] ?? 0), {});
        continue;
      }
      if (last >= 0) {
        const skip = this.judge(last, i);
        if (skip > 0) {
          i += skip - 1;
          continue;
        }
      }
      last = i;
    }
    return [...this.faults.values()];
  }

  /** Rows to pass over because their stamps are strays. */
  private judge(last: number, i: number): number {
    const [before, time] = [this.at[last] ?? 0, this.at[i] ?? 0];
    const jump = time - before;
    const { step } = this;
    if (jump === 0) this.note('repeats', i, time, {});
    if (jump < 0 || jump > far) {
      const back = this.goesOn(last, i);
      if (back > 0) {
        this.note('wildStamps', i, before, {
          count: back,
          repair: { cuts: [{ first: i, last: i + back - 1 }] },
        });
        return back;
      }
    }
    const slack = Math.max(3 * step, 90_000);
    if (jump < 0) {
      const kind = Math.abs(jump + hour - step) <= slack ? 'hourRepeated' : 'clockBack';
      const by = kind === 'hourRepeated' ? hour : step - jump;
      this.set(kind, i, before, by, kind === 'hourRepeated' ? 3600 : -jump / 1000);
    } else if (jump > far) {
      this.set('clockAhead', i, before, step - jump, (jump - step) / 1000);
    } else if (Math.abs(jump - hour - step) <= Math.max(step, 60_000) && step < hour / 4) {
      const advised = isClockNight(before, this.zone);
      this.set('hourMissing', i, before, -hour, 3600, advised);
    } else if (jump > Math.max(silentAfter * step, shortestGap)) {
      this.gap(i, before, jump / 1000);
    }
    return 0;
  }

  /** After how many rows the stamps go on as if nothing had been; 0 when they do not. */
  private goesOn(last: number, i: number): number {
    const before = this.at[last] ?? 0;
    for (let k = i + 1; k <= i + strays && k < this.at.length; k++) {
      const expected = before + (k - last) * this.step;
      if (Math.abs((this.at[k] ?? Number.NaN) - expected) <= Math.max(5 * this.step, 30_000)) return k - i;
    }
    return 0;
  }

  private set(kind: FaultKind, row: number, at: number, by: number, size: number, advised = true): void {
    this.note(kind, row, at, { size, advised, repair: { shifts: [{ row, by: by / 1000 }] } });
    if (advised) this.shift += by;
  }

  private gap(row: number, at: number, lasts: number): void {
    const known = this.faults.get('gap');
    if (known) {
      known.count += 1;
      if (lasts > (known.size ?? 0)) Object.assign(known, { size: lasts, row, at: at + this.shift });
      return;
    }
    this.note('gap', row, at, { size: lasts, advised: false });
  }

  private note(kind: FaultKind, row: number, at: number, more: Partial<Fault>): void {
    const known = this.faults.get(kind);
    if (!known) {
      this.faults.set(kind, { kind, count: 1, row, at: at + this.shift, advised: true, ...more });
      return;
    }
    known.count += more.count ?? 1;
    known.repair?.cuts?.push(...(more.repair?.cuts ?? []));
    known.repair?.shifts?.push(...(more.repair?.shifts ?? []));
  }
}

/** Every other row or more has the stamp of the one before: the clock tells minutes, the logger logs oftener. */
const spreadFrom = 0.4;

/** What is wrong with when the rows were. */
export function clockFaults(at: Float64Array, zone: number): Fault[] {
  const faults = new ClockWalk(at, usualStep(at), zone).run();
  const repeats = faults.find((f) => f.kind === 'repeats');
  if (repeats && repeats.count >= spreadFrom * at.length) repeats.repair = { repeats: 'spread' };
  return faults;
}
