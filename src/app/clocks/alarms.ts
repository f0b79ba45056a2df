import { computed, effect, type ReadonlySignal, signal, untracked } from '@preact/signals';
import { holdBusyLock } from '#app/platform/busy-lock.ts';
import { notify, withdraw } from '#app/platform/notify.ts';
import { type Beep, play, readySound } from '#app/platform/sound.ts';
import { vibrate } from '#app/platform/vibrate.ts';
import { keepAwake } from '#app/platform/wake-lock.ts';
import { now } from '#app/state/now.ts';
import { settings } from '#app/state/settings.ts';
import { type Alarm, type AlarmLevel, calling, heardKey, planAlarms, type Rung } from './alarm-plan.ts';
import { clockKey, type RunningClock } from './clock-list.ts';
import { overSentence, toneFor, wordsFor } from './clock-words.ts';
import { anyClockRuns, resinIsWet, runningClocks } from './running.ts';

const low = 660;
const high = 990;

/** Told apart with the eyes shut: a rising pair, three even beeps, a long two-tone call. */
const sounds: Record<AlarmLevel, readonly Beep[]> = {
  warning: [
    { pitch: low, lasts: 0.18, rest: 0.08 },
    { pitch: high, lasts: 0.18, rest: 0 },
  ],
  due: Array.from({ length: 3 }, () => ({ pitch: high, lasts: 0.3, rest: 0.15 })),
  over: Array.from({ length: 6 }, (_, i) => ({ pitch: i % 2 ? low : high, lasts: 0.35, rest: 0.02 })),
};

const shakes: Record<AlarmLevel, number[]> = {
  warning: [150, 100, 150],
  due: [500, 150, 500, 150, 500],
  over: [800, 200, 800],
};

const loudest: readonly AlarmLevel[] = ['over', 'due', 'warning'];

const heard = signal<ReadonlySet<string>>(new Set());

/** Clocks that ask for a thumb now. */
export const callingClocks: ReadonlySignal<readonly RunningClock[]> = computed(() =>
  calling(runningClocks.value, heard.value),
);

/** Quiets a warning, whose clock runs on. What is over is answered by an entry instead. */
export function hearWarnings(): void {
  const warnings = runningClocks.value.filter((c) => c.phase === 'warning').map(heardKey);
  if (warnings.length > 0) heard.value = new Set([...heard.value, ...warnings]);
}

function sayAll(alarms: readonly Alarm[]): void {
  const level = loudest.find((l) => alarms.some((a) => a.level === l));
  if (!level) return;
  if (settings.value.sound) play(sounds[level]);
  vibrate(shakes[level]);
  if (document.visibilityState !== 'hidden') return;
  for (const { clock } of alarms) {
    const title = clock.phase === 'warning' ? clock.name : overSentence(clock);
    const { word, todo } = wordsFor(clock);
    const body = [clock.of, word, todo].filter(Boolean).join('. ');
    notify({ title, body, tag: clockKey(clock), hash: '#/clocks' });
  }
}

/** What a clock that is over sounds like, for trying out; a touch has to have unlocked it. */
export function tryAlarm(): void {
  play(sounds.due);
  vibrate(shakes.due);
}

function ringWhenDue(): void {
  let rung: Rung = new Map();
  effect(() => {
    const plan = planAlarms(runningClocks.value, heard.value, rung, now.value);
    for (const key of rung.keys()) if (!plan.rung.has(key)) withdraw(key);
    rung = plan.rung;
    untracked(() => sayAll(plan.alarms));
  });
}

/** The tab's title says it too; screens set their own title underneath. */
function sayInTitle(): void {
  let said = '';
  effect(() => {
    const first = callingClocks.value[0];
    const own = said && document.title.startsWith(said) ? document.title.slice(said.length) : document.title;
    said = first ? `${wordsFor(first).word}: ${first.name} · ` : '';
    // A tick later a screen may have put its own title back.
    if (now.value > 0 && document.title !== said + own) document.title = said + own;
  });
}

function holdWhile(reason: string, busy: ReadonlySignal<boolean>): void {
  let release: (() => void) | undefined;
  effect(() => {
    if (busy.value) release ??= holdBusyLock(reason);
    else {
      release?.();
      release = undefined;
    }
  });
}

/** How the whole screen flashes: with the sound, since a respirator, a fan and a silent switch defeat it. */
export const flashTone = computed(() => {
  const first = callingClocks.value[0];
  return first && toneFor(first);
});

/** Once, at the start: from here on clocks are heard, seen and kept awake for. */
export function startAlarms(): void {
  readySound();
  ringWhenDue();
  sayInTitle();
  holdWhile('a clock is running', anyClockRuns);
  holdWhile('resin is wet', resinIsWet);
  effect(() => keepAwake(anyClockRuns.value));
}
