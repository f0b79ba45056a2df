import { show } from '#app/state/show.ts';
import { formatAgo, formatClockTime, formatCountdown, formatDuration } from '#shared/units/time.ts';
import { type ClockKind, isStale, type RunningClock } from './clock-list.ts';
import type { CupWhy } from './cup-clock.ts';

interface Words {
  /** The word to read across the shop. */
  word: string;
  /** One line that says what to do. */
  todo: string;
}

const running: Record<ClockKind, Words> = {
  potLife: { word: 'WORKING TIME', todo: 'Out of the cup and onto the cloth: a deep cup heats itself.' },
  tape: {
    word: 'TAPE BY THEN',
    todo: 'Cloth rolled, films counted, tape wound end to end before this runs out.',
  },
  dry: { word: 'DRYING', todo: 'Leave it alone until it is dry.' },
  soak: { word: 'SOAKING', todo: 'Leave it to soak in by itself.' },
  hold: { word: 'HOLDING', todo: 'Read the temperatures while it holds.' },
  reading: { word: 'NOT DUE', todo: 'Nothing to read yet.' },
  free: { word: 'RUNNING', todo: 'Nothing to do until it is up.' },
};

const warning: Record<ClockKind, Words> = {
  potLife: { word: 'USE IT NOW', todo: 'Everything out of the cup and onto the cloth.' },
  tape: { word: 'TAPE IT NOW', todo: 'All of the tape on while the resin still flows.' },
  dry: { word: 'NEARLY DRY', todo: 'Get the next coat ready.' },
  soak: { word: 'NEARLY SOAKED', todo: 'Get ready to go on.' },
  hold: { word: 'NEARLY DONE', todo: 'Read the coldest part now: the hold counts from there.' },
  reading: { word: 'NEARLY DUE', todo: 'Have the meter ready.' },
  free: { word: 'NEARLY UP', todo: 'Get ready.' },
};

const over: Record<ClockKind, Words> = {
  potLife: {
    word: 'STOP USING IT',
    todo: 'See that it has not kicked. Hot or smoking: outside, uncovered, nobody over it.',
  },
  tape: {
    word: 'FEEL THE RESIN',
    todo: 'Still flows: finish the tape now. Strings or gelled: stop, more tape squeezes nothing out.',
  },
  dry: {
    word: 'FEEL IF IT IS DRY',
    todo: 'Dry to the touch at one end: go on. Still soft or smelling: wait longer.',
  },
  soak: { word: 'GO ON', todo: 'Dark all over: go on. Light spots: leave it a little longer.' },
  hold: { word: 'HOLD IS UP', todo: 'Coldest part long enough in its band? Then the oven may go off.' },
  reading: { word: 'READ THE OVEN', todo: 'What nobody reads does not count as hold.' },
  free: { word: 'TIME IS UP', todo: 'Answer it when you have seen it.' },
};

const byPhase = { running, warning, over };

const longOver: Words = { word: 'ENDED', todo: 'Answer it when you have seen it.' };

/** What a clock says: its word changes to what must happen now. */
export const wordsFor = (clock: RunningClock): Words =>
  isStale(clock) ? longOver : byPhase[clock.phase][clock.kind];

/** `13:42` with what it counts: time left, or time since. */
export function figureFor(clock: RunningClock): { figure: string; says: string } {
  if (isStale(clock)) return { figure: formatAgo(-clock.left), says: 'ended' };
  return { figure: formatCountdown(clock.left), says: clock.phase === 'over' ? 'over' : 'left' };
}

/** One short line: '13:42 left', 'ended 3 min ago'. */
export function shortFigure(clock: RunningClock): string {
  if (clock.phase === 'over')
    return `${clock.kind === 'tape' || clock.kind === 'reading' ? 'was due' : 'ended'} ${formatAgo(-clock.left)}`;
  return `${formatCountdown(clock.left)} left`;
}

/** 'Cup 2 is over: 3 min ago' */
export function overSentence(clock: RunningClock): string {
  if (clock.kind === 'tape') return `Tape was due ${formatAgo(-clock.left)}`;
  if (clock.kind === 'reading') return `Reading was due ${formatAgo(-clock.left)}`;
  if (isStale(clock)) return `${clock.name} ended ${formatAgo(-clock.left)}`;
  return `${clock.name} is over: ${formatAgo(-clock.left)}`;
}

const began: Record<ClockKind, string> = {
  potLife: 'into the resin',
  tape: 'first contact',
  dry: 'since',
  soak: 'since',
  hold: 'since',
  reading: 'since',
  free: 'since',
};

/** 'into the resin 10:14 AM' */
export const beganAt = ({ kind, startedAt }: RunningClock) => `${began[kind]} ${formatClockTime(startedAt)}`;

/** Why a tape deadline moves: every minute in the cup heats the resin. */
export const standsWords = 'sooner the longer it stands in the cup';

/** '24 C, 180 g: 31 min holds here, not the 49 min of the data sheet’s cup' */
export function whyWords({ mass, temperature, lasts, sheet, assumed }: CupWhy): string {
  const warmth = `${show(temperature, 'temperature', 0)}${assumed ? ' assumed' : ''}`;
  const now = formatDuration(60 * Math.round(lasts / 60));
  const own = formatDuration(60 * Math.round(sheet / 60));
  return `${warmth}, ${show(mass, 'mass', 0)}: ${now} ${now === own ? 'to work' : `holds here, not the ${own} of the data sheet’s cup`}`;
}

/** Time left may exceed the whole only when the phone's clock went back after it was started. */
export const clockWentBack = ({ left, lasts }: Pick<RunningClock, 'left' | 'lasts'>) => left > lasts + 60;

/** The unit a rule of this length is read in: seconds in one. */
export function ruleUnit(lasts: number): { unit: string; seconds: number } {
  if (lasts <= 120) return { unit: 's', seconds: 1 };
  return lasts <= 2 * 3600 ? { unit: 'min', seconds: 60 } : { unit: 'h', seconds: 3600 };
}

/** plain: running; amber: nearly; stop: it costs the tube; done: the wait is over, go on. */
export type ClockTone = 'plain' | 'amber' | 'stop' | 'done';

export function toneFor(clock: RunningClock): ClockTone {
  if (clock.phase === 'running' || isStale(clock)) return 'plain';
  if (clock.phase === 'warning') return 'amber';
  return clock.kind === 'potLife' || clock.kind === 'tape' ? 'stop' : 'done';
}
