import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { calling, heardKey, planAlarms, type Rung } from '#app/laying-up/clocks/alarm-plan.ts';
import { clockKey, isStale, listClocks, type RunningClock } from '#app/laying-up/clocks/clock-list.ts';
import {
  clockWentBack,
  figureFor,
  overSentence,
  ruleUnit,
  shortFigure,
  toneFor,
  wordsFor,
} from '#app/laying-up/clocks/clock-words.ts';
import { tapeClock, tapeDeadline, wetCups } from '#app/laying-up/clocks/tape-deadline.ts';
import type { ClockState } from '#shared/record/clock-state.ts';
import { begun, buildOf, cupOf, type Event, minutes, ovenOf, ticksOf } from './shop-of.ts';

const bench = { builds: [], ovenLoads: [], clocks: [] };
const plain = (text: string) => text.replace(/\u00a0/g, ' ');
const onlyDeadline = (state: ReturnType<typeof buildOf>, minute: number) =>
  tapeDeadline(state, minutes(minute));

function timer(clock: string, minute: number, lasts: number, warns = 0): ClockState {
  return {
    clock,
    subject: 'bench',
    root: clock,
    purpose: 'free',
    label: `Timer ${clock}`,
    startedAt: minutes(minute),
    lasts: lasts * 60,
    warns: warns * 60,
  };
}

describe('a cup that nobody called empty', () => {
  const potLives = (events: Parameters<typeof buildOf>[0]) =>
    listClocks({ ...bench, builds: [buildOf(events)] }, minutes(30)).filter(({ kind }) => kind === 'potLife');

  it('has its clock while its resin may still go on, and none once the tape is on', () => {
    expect(potLives(cupOf('a', 1, 10))).toHaveLength(1);
    expect(potLives([...cupOf('a', 1, 10), ...ticksOf('wrap', 20)])).toHaveLength(1);
    expect(potLives([...cupOf('a', 1, 10), ...ticksOf('shrinkTape', 20)])).toEqual([]);
  });

  it('has none once its tube lies in an oven, but one that is mixed after that has', () => {
    const joined: Event = {
      minute: 20,
      kind: 'joinedOvenLoad',
      build: 'build-1',
      ovenLoad: 'load-1',
      round: 1,
    };
    expect(potLives([...cupOf('a', 1, 10), joined])).toEqual([]);
    expect(potLives([...cupOf('a', 1, 10), joined, ...cupOf('b', 2, 25)]).map(({ name }) => name)).toContain(
      'Cup 2',
    );
  });
});

describe('the time by which all tape must be on', () => {
  // Expected times by hand: in the cup at full pace, on the film at half of it (common practice, no source).
  it('does not stand while no hardener has met resin', () => {
    expect(onlyDeadline(buildOf([]), 5)).toBeUndefined();
    expect(onlyDeadline(buildOf(cupOf('a', 1, 10).slice(0, 2)), 9)).toBeUndefined();
  });

  it('at first contact is twice the usable life away', () => {
    expect(onlyDeadline(buildOf(cupOf('a', 1, 10)), 10)).toEqual({
      round: 1,
      cup: 'a',
      startedAt: minutes(10),
      at: minutes(10 + 60),
      stands: true,
    });
  });

  it('comes nearer while resin stands in the cup', () => {
    expect(onlyDeadline(buildOf(cupOf('a', 1, 10)), 16)?.at).toBe(minutes(10 + 54));
    expect(onlyDeadline(buildOf(cupOf('a', 1, 10)), 40)?.at).toBe(minutes(40));
    expect(onlyDeadline(buildOf(cupOf('a', 1, 10)), 400)?.at).toBe(minutes(40));
  });

  it('stands still once the cup is empty', () => {
    const state = buildOf([...cupOf('a', 1, 10), { minute: 16, kind: 'cupEmpty', cup: 'a' }]);
    expect(onlyDeadline(state, 16)?.at).toBe(minutes(64));
    expect(onlyDeadline(state, 60)).toMatchObject({ at: minutes(64), stands: false });
  });

  it('follows from the cup that is used up first, not from the one mixed first', () => {
    const slow = [...cupOf('a', 1, 10, 60), { minute: 11, kind: 'cupEmpty' as const, cup: 'a' }];
    const quick = [...cupOf('b', 2, 20, 15), { minute: 21, kind: 'cupEmpty' as const, cup: 'b' }];
    expect(onlyDeadline(buildOf([...slow, ...quick]), 22)).toMatchObject({ cup: 'b', at: minutes(49) });
  });

  it('leaves out a cup that was thrown out', () => {
    const state = buildOf([
      ...cupOf('a', 1, 10),
      { minute: 12, kind: 'cupDiscarded', cup: 'a' },
      ...cupOf('b', 2, 20),
    ]);
    expect(onlyDeadline(state, 20)).toMatchObject({ cup: 'b', at: minutes(80) });
  });

  it('is gone when the tape of the round is ticked, and not while a step of it is open', () => {
    const ticks = ticksOf('shrinkTape', 50);
    expect(ticks.length).toBeGreaterThan(1);
    expect(onlyDeadline(buildOf([...cupOf('a', 1, 10), ...ticks.slice(1)]), 51)).toBeDefined();
    expect(onlyDeadline(buildOf([...cupOf('a', 1, 10), ...ticks]), 51)).toBeUndefined();
  });

  it('belongs to the present round', () => {
    const next = { minute: 100, kind: 'roundStarted' as const, round: 2 };
    expect(onlyDeadline(buildOf([...cupOf('a', 1, 10), next]), 101)).toBeUndefined();
    const state = buildOf([...cupOf('a', 1, 10), next, ...cupOf('b', 1, 110, 30, 2)]);
    expect(onlyDeadline(state, 110)).toMatchObject({ round: 2, cup: 'b' });
  });

  it('is gone once answered, but a cup mixed after that has its own', () => {
    const answer = { minute: 30, kind: 'clockAnswered' as const, clock: tapeClock(1) };
    expect(onlyDeadline(buildOf([...cupOf('a', 1, 10), answer]), 31)).toBeUndefined();
    const late = buildOf([...cupOf('a', 1, 10), answer, ...cupOf('b', 2, 40)]);
    expect(onlyDeadline(late, 40)).toMatchObject({ cup: 'b', at: minutes(100) });
  });

  it('goes by the wrapping on a route without tape, and does not stand without either', () => {
    const route = buildOf([]).header.route;
    const untaped = { route: route.filter((s) => s.stage !== 'shrinkTape') };
    expect(onlyDeadline(buildOf(cupOf('a', 1, 10), untaped), 11)).toBeDefined();
    expect(
      onlyDeadline(buildOf([...cupOf('a', 1, 10), ...ticksOf('wrap', 40)], untaped), 41),
    ).toBeUndefined();
    const bare = { route: route.filter((s) => s.stage !== 'shrinkTape' && s.stage !== 'wrap') };
    expect(onlyDeadline(buildOf(cupOf('a', 1, 10), bare), 11)).toBeUndefined();
  });

  it('is gone with a closed build', () => {
    const state = buildOf([...cupOf('a', 1, 10), { minute: 20, kind: 'closed' }]);
    expect(onlyDeadline(state, 21)).toBeUndefined();
    expect(wetCups(state)).toEqual([]);
  });

  it('bears a phone clock set back, and an emptying corrected to before the first contact', () => {
    expect(onlyDeadline(buildOf(cupOf('a', 1, 10)), 5)?.at).toBe(minutes(70));
    const state = buildOf([...cupOf('a', 1, 10), { minute: 4, kind: 'cupEmpty', cup: 'a' }]);
    expect(onlyDeadline(state, 20)?.at).toBe(minutes(70));
  });

  it('is never before the usable life of its cup, never after twice that, and never put off by waiting', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 5, max: 120 }),
        fc.integer({ min: 0, max: 300 }),
        fc.integer({ min: 0, max: 300 }),
        (life, a, b) => {
          const state = buildOf(cupOf('a', 1, 10, life));
          const early = onlyDeadline(state, 10 + Math.min(a, b))?.at ?? Number.NaN;
          const late = onlyDeadline(state, 10 + Math.max(a, b))?.at ?? Number.NaN;
          expect(early).toBeLessThanOrEqual(minutes(10 + 2 * life));
          expect(late).toBeLessThanOrEqual(early);
          expect(late).toBeGreaterThanOrEqual(minutes(10 + life));
        },
      ),
    );
  });
});

describe('the clocks of the shop', () => {
  const state = buildOf(cupOf('a', 2, 10));
  const named = (clocks: readonly RunningClock[]) => clocks.map((c) => c.name);

  it('are none on a clear bench', () => {
    expect(listClocks(bench, begun)).toEqual([]);
  });

  it('name their cup and their tube, and count the tape from the same first contact', () => {
    const [cup, tape] = listClocks({ ...bench, builds: [state] }, minutes(20));
    expect(cup).toMatchObject({
      kind: 'potLife',
      name: 'Cup 2',
      of: 'Boom no.\u00a01',
      to: '/build/build-1',
      left: 1200,
    });
    expect(tape).toMatchObject({
      kind: 'tape',
      of: 'Boom no.\u00a01',
      clock: 'tape:1',
      startedAt: minutes(10),
    });
  });

  it('lose the pot life and keep the tape when the cup is empty', () => {
    const empty = buildOf([...cupOf('a', 2, 10), { minute: 16, kind: 'cupEmpty', cup: 'a' }]);
    expect(named(listClocks({ ...bench, builds: [empty] }, minutes(20)))).toEqual(['Tape all on']);
  });

  it('take in oven loads and the bench', () => {
    const oven = ovenOf([
      {
        minute: 0,
        kind: 'clockStarted',
        clock: 'hold',
        purpose: 'hold',
        label: 'Hold',
        lasts: 10800,
        warns: 600,
      },
    ]);
    const clocks = listClocks({ ...bench, ovenLoads: [oven], clocks: [timer('x', 0, 5)] }, minutes(1));
    expect(clocks.map((c) => [c.name, c.of])).toEqual([
      ['Timer x', undefined],
      ['Hold', 'Oven load 1'],
    ]);
  });

  it('leave out what was answered', () => {
    expect(
      listClocks({ ...bench, clocks: [{ ...timer('x', 0, 5), endedAt: minutes(2) }] }, minutes(3)),
    ).toEqual([]);
  });

  it('stand with what is over first, then what warns, then by time left, and what ended long ago last', () => {
    const clocks = [
      timer('long', 0, 200),
      timer('old', 0, 10),
      timer('short', 90, 30),
      timer('warns', 0, 140, 45),
      timer('over', 60, 39),
    ];
    expect(named(listClocks({ ...bench, clocks }, minutes(100)))).toEqual([
      'Timer over',
      'Timer warns',
      'Timer short',
      'Timer long',
      'Timer old',
    ]);
  });

  it('of two tubes have keys of their own for the same round of tape', () => {
    const other = buildOf(cupOf('b', 1, 12), { id: 'build-2', name: 'Sprit' });
    const clocks = listClocks({ ...bench, builds: [state, other] }, minutes(20));
    expect(new Set(clocks.map(clockKey)).size).toBe(4);
  });
});

describe('what a clock says', () => {
  const at = (minute: number, kind: 'cup' | 'timer' = 'timer') => {
    const [first] =
      kind === 'cup'
        ? listClocks({ ...bench, builds: [buildOf(cupOf('a', 2, 0))] }, minutes(minute))
        : listClocks({ ...bench, clocks: [timer('x', 0, 30, 5)] }, minutes(minute));
    if (!first) throw new Error('no clock');
    return first;
  };

  it('is time left while it runs', () => {
    expect(figureFor(at(16.3))).toEqual({ figure: '13:42', says: 'left' });
    expect(plain(shortFigure(at(16.3)))).toBe('13:42 left');
  });

  it('is time past when it is over, and its sentence tells how long ago', () => {
    expect(figureFor(at(33))).toEqual({ figure: '3:00', says: 'over' });
    expect(plain(overSentence(at(33)))).toBe('Timer x is over: 3 min ago');
    expect(plain(overSentence(at(30)))).toBe('Timer x is over: just now');
  });

  it('of the tape says that it was due', () => {
    const [tape] = listClocks({ ...bench, builds: [buildOf(cupOf('a', 2, 0))] }, minutes(200)).filter(
      (c) => c.kind === 'tape',
    );
    if (!tape) throw new Error('no tape deadline');
    expect(plain(overSentence({ ...tape, left: -180, phase: 'over' }))).toBe('Tape was due 3 min ago');
    expect(plain(shortFigure({ ...tape, left: -180, phase: 'over' }))).toBe('was due 3 min ago');
  });

  it('a day later is that it ended, without counting on', () => {
    expect(plain(shortFigure(at(30 + 360)))).toBe('ended 6 h ago');
    expect(figureFor(at(30 + 360)).says).toBe('ended');
    expect(wordsFor(at(30 + 360, 'cup')).word).toBe('ENDED');
    expect(plain(overSentence(at(30 + 1440)))).toBe('Timer x ended 1 day ago');
  });

  it('changes its word to what must happen now', () => {
    expect([20, 26, 31].map((m) => wordsFor(at(m, 'cup')).word)).toEqual([
      'WORKING TIME',
      'USE IT NOW',
      'STOP USING IT',
    ]);
  });

  it('has a tone of its own for each: a cup that is over stops, a wait that is over lets go on', () => {
    expect([20, 26, 31].map((m) => toneFor(at(m, 'cup')))).toEqual(['plain', 'amber', 'stop']);
    expect([20, 26, 31, 200].map((m) => toneFor(at(m)))).toEqual(['plain', 'amber', 'done', 'plain']);
  });

  it('is not to be trusted when more is left than it lasts', () => {
    expect(clockWentBack(at(0))).toBe(false);
    expect(clockWentBack(at(-0.5))).toBe(false);
    expect(clockWentBack(at(-2))).toBe(true);
  });

  it('is ruled in seconds, minutes or hours, whichever can be read', () => {
    expect([60, 120, 121, 7200, 7201, 86_400].map((s) => ruleUnit(s).unit)).toEqual([
      's',
      's',
      'min',
      'min',
      'h',
      'h',
    ]);
  });
});

describe('alarms', () => {
  const nobody: ReadonlySet<string> = new Set();
  const clocksAt = (minute: number) =>
    listClocks({ ...bench, clocks: [timer('x', 0, 30, 5)] }, minutes(minute));

  /** Rings every second from one minute to another: when, in seconds from the first, and how. */
  function ring(from: number, to: number, heard = nobody): [number, string][] {
    let rung: Rung = new Map();
    const said: [number, string][] = [];
    for (let s = 0; s <= (to - from) * 60; s++) {
      const minute = from + s / 60;
      const plan = planAlarms(clocksAt(minute), heard, rung, minutes(minute));
      rung = plan.rung;
      for (const { level } of plan.alarms) said.push([s, level]);
    }
    return said;
  }

  it('are silent while it runs', () => {
    expect(ring(0, 24.9)).toEqual([]);
  });

  it('warn once the warning begins, and again every ten seconds', () => {
    expect(ring(24.9, 25.5)).toEqual([
      [6, 'warning'],
      [16, 'warning'],
      [26, 'warning'],
      [36, 'warning'],
    ]);
  });

  it('change their sound when it comes due, and again when it goes on', () => {
    expect(ring(29.95, 30.4)).toEqual([
      [0, 'warning'],
      [3, 'due'],
      [13, 'over'],
      [23, 'over'],
    ]);
  });

  it('ring at once on a phone that slept through it', () => {
    expect(ring(45, 45.1)).toEqual([[0, 'due']]);
  });

  it('stay silent about what ended more than an hour ago', () => {
    expect(ring(91, 92)).toEqual([]);
    expect(clocksAt(91).every(isStale)).toBe(true);
  });

  it('keep quiet about a warning that was heard, and speak again when it is due', () => {
    const heard = new Set(clocksAt(26).map(heardKey));
    expect(ring(26, 29.9, heard)).toEqual([]);
    expect(ring(29.95, 30.1, heard)).toEqual([[3, 'due']]);
    expect(calling(clocksAt(26), heard)).toEqual([]);
    expect(calling(clocksAt(31), heard)).toHaveLength(1);
  });

  it('go on when the phone clock is set back inside the warning', () => {
    const rung: Rung = new Map([['bench/x', { phase: 'warning', at: minutes(29) }]]);
    expect(planAlarms(clocksAt(26), nobody, rung, minutes(26)).alarms).toHaveLength(1);
  });

  it('forget a clock that was answered, so that another of its kind rings afresh', () => {
    const rung: Rung = new Map([['bench/x', { phase: 'over', at: minutes(31) }]]);
    expect(planAlarms([], nobody, rung, minutes(31)).rung.size).toBe(0);
  });

  it('ring for each of two clocks at once', () => {
    const both = listClocks({ ...bench, clocks: [timer('x', 0, 30), timer('y', 0, 29)] }, minutes(31));
    expect(planAlarms(both, nobody, new Map(), minutes(31)).alarms.map((a) => a.clock.clock)).toEqual([
      'y',
      'x',
    ]);
  });
});
