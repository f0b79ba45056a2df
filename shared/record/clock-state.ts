import type { ClockPurpose, EntryOf } from './entry.ts';

/** A clock is a fact: when it started and how long it lasts. What it reads follows from that and the time of day. */
export interface ClockState {
  clock: string;
  subject: string;
  root: string;
  purpose: ClockPurpose;
  label: string;
  startedAt: number;
  /** s */
  lasts: number;
  warns: number;
  cup?: string;
  step?: string;
  round?: number;
  /** Answered by a thumb, or ended by what it was waiting for. */
  endedAt?: number;
}

export function clockFrom(entry: EntryOf<'clockStarted'>, root: string): ClockState {
  return {
    clock: entry.clock,
    subject: entry.subject,
    root,
    purpose: entry.purpose,
    label: entry.label,
    startedAt: entry.happenedAt,
    lasts: entry.lasts,
    warns: entry.warns,
    ...(entry.cup !== undefined && { cup: entry.cup }),
    ...(entry.step !== undefined && { step: entry.step }),
    ...(entry.round !== undefined && { round: entry.round }),
  };
}

export type ClockPhase = 'running' | 'warning' | 'over' | 'ended';

export interface ClockReading {
  phase: ClockPhase;
  /** s; negative once it is over */
  left: number;
  /** Share of it gone by, 0 to 1 */
  gone: number;
  /** ms */
  endsAt: number;
}

/** What a clock reads at a time of day (ms). Right after a reload, a dead battery or a day away. */
export function readClock(
  clock: Pick<ClockState, 'startedAt' | 'lasts' | 'warns' | 'endedAt'>,
  now: number,
): ClockReading {
  const endsAt = clock.startedAt + clock.lasts * 1000;
  const left = (endsAt - now) / 1000;
  const gone = Math.min(1, Math.max(0, (now - clock.startedAt) / (clock.lasts * 1000)));
  const phase =
    clock.endedAt !== undefined ? 'ended' : left <= 0 ? 'over' : left <= clock.warns ? 'warning' : 'running';
  return { phase, left, gone, endsAt };
}
