import { clockKey, isStale, type RunningClock } from './clock-list.ts';

/** warning: nearly; due: this moment; over: said again, until it is answered. */
export type AlarmLevel = 'warning' | 'due' | 'over';

export interface Alarm {
  clock: RunningClock;
  level: AlarmLevel;
}

/** What each clock last rang for, by its key. */
export type Rung = ReadonlyMap<string, { phase: RunningClock['phase']; at: number }>;

/** Sounds again after this long, ms */
export const ringsEvery = 10_000;

/** A warning that was heard stays quiet; once it is over it speaks again. */
export const heardKey = (clock: RunningClock) => `${clockKey(clock)}/${clock.phase}`;

/** What asks for a thumb now, whether or not it sounds this second. */
export function calling(clocks: readonly RunningClock[], heard: ReadonlySet<string>): RunningClock[] {
  return clocks.filter((c) => c.phase !== 'running' && !isStale(c) && !heard.has(heardKey(c)));
}

function levelNow(clock: RunningClock, rung: Rung, now: number): AlarmLevel | undefined {
  const last = rung.get(clockKey(clock));
  const changed = last?.phase !== clock.phase;
  // A clock set back must not silence it.
  if (!changed && last && now >= last.at && now - last.at < ringsEvery) return undefined;
  if (clock.phase === 'warning') return 'warning';
  return changed ? 'due' : 'over';
}

/** What rings at this tick, and what to remember for the next. */
export function planAlarms(
  clocks: readonly RunningClock[],
  heard: ReadonlySet<string>,
  rung: Rung,
  now: number,
): { alarms: Alarm[]; rung: Rung } {
  const next = new Map<string, { phase: RunningClock['phase']; at: number }>();
  const alarms: Alarm[] = [];
  for (const clock of calling(clocks, heard)) {
    const key = clockKey(clock);
    const level = levelNow(clock, rung, now);
    const last = rung.get(key);
    if (level) alarms.push({ clock, level });
    next.set(key, level || !last ? { phase: clock.phase, at: now } : last);
  }
  return { alarms, rung: next };
}
