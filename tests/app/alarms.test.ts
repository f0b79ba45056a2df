import { describe, expect, it } from 'vitest';
import { type Alarm, type Spoken, saysAloud } from '#app/laying-up/clocks/alarm-plan.ts';
import { alarmLevels, alarmSignals } from '#app/laying-up/clocks/alarm-signals.ts';
import { listClocks, type RunningClock } from '#app/laying-up/clocks/clock-list.ts';
import { lacksOf, type Means, urgentLacks } from '#app/laying-up/clocks/reach-words.ts';
import { spokenWords } from '#app/laying-up/clocks/spoken-words.ts';
import { undoableFacts } from '#app/state/undo-facts.ts';
import { buildOf, cupOf, entriesOf, minutes } from './shop-of.ts';

/** Cup 2, into the resin at minute 10, lasts 30 min. */
function cupAt(minute: number): RunningClock {
  const state = buildOf(cupOf('a', 2, 10));
  const clocks = listClocks({ builds: [state], ovenLoads: [], clocks: [] }, minutes(minute));
  const cup = clocks.find((c) => c.kind === 'potLife');
  if (!cup) throw new Error('no cup runs');
  return cup;
}

describe('the three alarms', () => {
  it('differ in name, sound and buzz', () => {
    const signals = alarmLevels.map((level) => alarmSignals[level]);
    for (const part of ['name', 'like', 'beeps', 'shakes'] as const) {
      expect(new Set(signals.map((s) => JSON.stringify(s[part]))).size).toBe(3);
    }
  });

  it('lie where ISO 7731 wants a danger signal (from memory), and end before they ring again', () => {
    for (const level of alarmLevels) {
      const { beeps, shakes } = alarmSignals[level];
      for (const { pitch } of beeps) {
        expect(pitch).toBeGreaterThanOrEqual(500);
        expect(pitch).toBeLessThanOrEqual(1500);
      }
      expect(beeps.reduce((s, b) => s + b.lasts + b.rest, 0)).toBeLessThan(10);
      expect(shakes.reduce((s, ms) => s + ms, 0)).toBeLessThan(10_000);
    }
  });
});

describe('what a voice says', () => {
  it('is the name, and what is left, in words', () => {
    expect(spokenWords(cupAt(35))).toBe('Cup two, five minutes left');
    expect(spokenWords(cupAt(39))).toBe('Cup two, one minute left');
    expect(spokenWords(cupAt(39.8))).toBe('Cup two, less than a minute left');
    expect(spokenWords(cupAt(10))).toBe('Cup two, 30 minutes left');
  });

  it('is what to do, once it is over', () => {
    expect(spokenWords(cupAt(40))).toBe('Cup two, time is up. Stop using it');
    expect(spokenWords(cupAt(43))).toBe('Cup two, three minutes over. Stop using it');
  });

  it('is said once a phase, and once a minute while it is over', () => {
    const said: string[] = [];
    let spoken: Spoken = new Map();
    for (let second = 24 * 60; second <= 33 * 60; second += 10) {
      const clock = cupAt(10 + second / 60);
      if (clock.phase === 'running') continue;
      const alarm: Alarm = { clock, level: clock.phase === 'warning' ? 'warning' : 'over' };
      const next = saysAloud([alarm], spoken, second * 1000);
      spoken = next.spoken;
      said.push(...next.alarms.map((a) => `${a.clock.phase} ${second / 60}`));
    }
    expect(said).toEqual(['warning 25', 'over 30', 'over 31', 'over 32', 'over 33']);
  });

  it('is one sentence at a time, the other one at the next ringing', () => {
    const a = cupAt(41);
    const b = { ...a, clock: 'other' };
    const alarms: Alarm[] = [a, b].map((clock) => ({ clock, level: 'over' }));
    const first = saysAloud(alarms, new Map(), 0);
    expect(first.alarms.map((x) => x.clock.clock)).toEqual([a.clock]);
    expect(saysAloud(alarms, first.spoken, 10_000).alarms.map((x) => x.clock.clock)).toEqual(['other']);
  });
});

describe('where an alarm does not reach', () => {
  const all: Means = {
    sound: true,
    speech: true,
    soundState: 'ready',
    awake: 'held',
    mayNotify: 'granted',
    canVibrate: true,
    canSpeak: true,
    running: true,
  };
  const said = (change: Partial<Means>) => lacksOf({ ...all, ...change }).map((l) => l.what);

  it('is a muted phone, which no page can tell, and a closed app, when all is well', () => {
    expect(said({})).toEqual([expect.stringContaining('muted'), expect.stringContaining('closed')]);
    expect(urgentLacks(all)).toEqual([]);
  });

  it.each([
    [{ sound: false }, /Sound is off/],
    [{ soundState: 'locked' }, /Silent until/],
    [{ soundState: 'unsupported' }, /makes no sound/],
    [{ awake: 'refused' }, /go dark/],
    [{ awake: 'unsupported' }, /go dark/],
    [{ awake: 'off' }, /go dark/],
    [{ mayNotify: 'denied' }, /With another app in front/],
    [{ canVibrate: false }, /buzz/],
    [{ canSpeak: false }, /No English voice/],
  ] as const)('is said for %o, with what to do', (change, words) => {
    const lacks = lacksOf({ ...all, ...change });
    expect(lacks.filter(({ what }) => !/muted|closed/.test(what))).toHaveLength(1);
    expect(lacks[0]?.what).toMatch(words);
    for (const { todo } of lacks) expect(todo).toMatch(/\.$/);
  });

  it('is not a dark screen while no clock runs', () => {
    expect(said({ awake: 'off', running: false })).toEqual(said({}));
  });
});

describe('an undo', () => {
  it('takes out all that one press put in', () => {
    const entries = entriesOf('build-1', cupOf('a', 1, 10));
    expect(undoableFacts(entries)).toEqual(entries.map((e) => ({ subject: 'build-1', root: e.id })));
  });

  it('leaves a correction to the time line, since the fact below it stood before', () => {
    const [first] = entriesOf('build-1', [{ minute: 1, kind: 'note', text: 'a' }]);
    if (!first) throw new Error('no entry');
    expect(undoableFacts([{ ...first, corrects: 'earlier' } as typeof first])).toEqual([]);
  });
});
