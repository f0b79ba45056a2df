import { readingClock, readingDueNow } from '#app/curing/oven/reading-due.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import {
  type ClockPhase,
  type ClockReading,
  type ClockState,
  readClock,
} from '#shared/record/clock-state.ts';
import type { ClockPurpose } from '#shared/record/entry.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
import { type CupWhy, isMixed, lastsInCup, whyOf } from './cup-clock.ts';
import { isPastResin, tapeClock, tapeDeadline } from './tape-deadline.ts';

export type ClockKind = ClockPurpose | 'tape' | 'reading';

/** One running clock, whatever it belongs to, as it reads now. */
export interface RunningClock extends ClockReading {
  clock: string;
  subject: string;
  kind: ClockKind;
  /** 'Cup 2', 'Wax coat 3' */
  name: string;
  /** 'Upper mast no. 3', 'Oven load 12'; the bench's own timers have none. */
  of?: string;
  /** Where its work is done. */
  to: string;
  startedAt: number;
  /** s */
  lasts: number;
  /** s before the end */
  warns: number;
  phase: Exclude<ClockPhase, 'ended'>;
  cup?: string;
  step?: string;
  round?: number;
  /** A tape deadline whose resin stands in its cup still, which brings it nearer. */
  stands?: boolean;
  /** Of a pot life: what it follows from. */
  why?: CupWhy;
}

export interface Bench {
  builds: readonly BuildState[];
  ovenLoads: readonly OvenState[];
  clocks: readonly ClockState[];
}

/** Tape takes minutes to wind, so its deadline warns this long before, s */
const tapeWarns = 600;

/** Over for longer than this, a clock is told but no longer rings, s */
export const ringsFor = 3600;

export const buildName = ({ header }: BuildState) => `${header.name} no.\u00a0${header.number}`;
export const ovenName = ({ header }: OvenState) => `Oven load ${header.number}`;

type Place = Pick<RunningClock, 'to'> & { of?: string; cups?: BuildState['cups'] };

function running(clock: ClockState, { to, of, cups }: Place, now: number): RunningClock[] {
  const { phase, ...reading } = readClock(clock, now);
  if (phase === 'ended') return [];
  const cup = clock.purpose === 'potLife' ? cups?.find((c) => c.cup === clock.cup) : undefined;
  return [
    {
      ...reading,
      phase,
      to,
      clock: clock.clock,
      subject: clock.subject,
      kind: clock.purpose,
      name: cup ? `Cup ${cup.number}` : clock.label,
      startedAt: clock.startedAt,
      lasts: clock.lasts,
      warns: clock.warns,
      ...(of !== undefined && { of }),
      ...(clock.cup !== undefined && { cup: clock.cup }),
      ...(clock.step !== undefined && { step: clock.step }),
      ...(clock.round !== undefined && { round: clock.round }),
    },
  ];
}

function tapeOf(state: BuildState, place: Place, now: number): RunningClock[] {
  const deadline = tapeDeadline(state, now);
  if (!deadline) return [];
  const { round, startedAt, at, stands } = deadline;
  const clock: ClockState = {
    clock: tapeClock(round),
    subject: state.header.id,
    root: '',
    purpose: 'hold',
    label: 'Tape all on',
    startedAt,
    lasts: (at - startedAt) / 1000,
    warns: tapeWarns,
    round,
  };
  return running(clock, place, now).map((c) => ({ ...c, kind: 'tape', stands }));
}

/** A pot life lasts as the cup does by what was entered since; it warns as early a share before. */
function ofCup(state: BuildState, place: Place, clock: ClockState, now: number): RunningClock[] {
  const cup = clock.purpose === 'potLife' ? state.cups.find((c) => c.cup === clock.cup) : undefined;
  if (!cup || !isMixed(cup) || cup.hardenerAt !== clock.startedAt) return running(clock, place, now);
  if (isPastResin(state, cup.round)) return [];
  const lasts = lastsInCup(state, cup);
  const why = whyOf(state, cup);
  const moved = { ...clock, lasts, warns: (clock.warns * lasts) / clock.lasts };
  return running(moved, place, now).map((c) => ({ ...c, ...(why && { why }) }));
}

/** A due reading calls for an hour; what is unread for longer the oven's own screen says. */
function readingOf(state: OvenState, place: Place, now: number): RunningClock[] {
  const due = readingDueNow(state, now);
  if (due === undefined || now - due > ringsFor * 1000) return [];
  const clock: ClockState = {
    clock: readingClock,
    subject: state.header.id,
    root: '',
    purpose: 'free',
    label: 'Reading due',
    startedAt: due,
    lasts: 0,
    warns: 0,
  };
  return running(clock, place, now).map((c) => ({ ...c, gone: 1, kind: 'reading' }));
}

/** Fresh trouble first, then what is nearest; what ended long ago comes last. */
function rank({ phase, left, kind }: RunningClock): number {
  // It can wait for resin that is nearly used up.
  if (kind === 'reading') return 1;
  if (phase === 'over') return left < -ringsFor ? 3 : 0;
  return phase === 'warning' ? 1 : 2;
}

/** Resin costs a tube, a timer a walk: while neither is due, resin comes first. */
const isResin = ({ kind }: RunningClock) => kind === 'potLife' || kind === 'tape';

/** Every clock that nobody has answered yet, the most urgent first. */
export function listClocks({ builds, ovenLoads, clocks }: Bench, now: number): RunningClock[] {
  const ofBuilds = builds.flatMap((state) => {
    const place = { to: `/build/${state.header.id}`, of: buildName(state), cups: state.cups };
    return [...state.clocks.flatMap((c) => ofCup(state, place, c, now)), ...tapeOf(state, place, now)];
  });
  const ofOvenLoads = ovenLoads.flatMap((state) => {
    const place = { to: `/oven/${state.header.id}`, of: ovenName(state) };
    return [...state.clocks.flatMap((c) => running(c, place, now)), ...readingOf(state, place, now)];
  });
  const own = clocks.flatMap((c) => running(c, { to: '/clocks' }, now));
  return [...ofBuilds, ...ofOvenLoads, ...own].sort(
    (a, b) => rank(a) - rank(b) || Number(isResin(b)) - Number(isResin(a)) || a.left - b.left,
  );
}

/** A clock that ended long ago is told, but does not ring, keep the screen on or hold back an update. */
export const isStale = (clock: RunningClock) => rank(clock) === 3;

/** Names a clock among those of all builds: two builds may both have a tape deadline of round 1. */
export const clockKey = ({ subject, clock }: Pick<RunningClock, 'subject' | 'clock'>) =>
  `${subject}/${clock}`;
