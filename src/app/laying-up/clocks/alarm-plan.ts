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

/** What was said aloud last of each clock, by its key. */
export type Spoken = ReadonlyMap<string, { phase: RunningClock['phase']; at: number }>;

/** A sentence every ten seconds would drive a builder to switch it off, ms */
const saidEvery = 60_000;

/** Which alarms are said aloud: each phase of a clock once, and what is over once a minute. */
export function saysAloud(
  alarms: readonly Alarm[],
  spoken: Spoken,
  now: number,
): { alarms: Alarm[]; spoken: Spoken } {
  const next = new Map(spoken);
  const said = alarms.filter(({ clock }) => {
    const last = spoken.get(clockKey(clock));
    if (last?.phase !== clock.phase) return true;
    return clock.phase === 'over' && Math.abs(now - last.at) >= saidEvery;
  });
  // One voice at a time: the others are said at the next ringing.
  const first = said.slice(0, 1);
  for (const { clock } of first) next.set(clockKey(clock), { phase: clock.phase, at: now });
  return { alarms: first, spoken: next };
}
