import { effect, type ReadonlySignal, untracked } from '@preact/signals';
import { holdBusyLock } from '#app/platform/busy-lock.ts';
import { notify, withdraw } from '#app/platform/notify.ts';
import { lengthOf, play, readySound } from '#app/platform/sound.ts';
import { speak } from '#app/platform/speak.ts';
import { vibrate } from '#app/platform/vibrate.ts';
import { keepAwake } from '#app/platform/wake-lock.ts';
import { now } from '#app/state/now.ts';
import { settings } from '#app/state/settings.ts';
import { type Alarm, planAlarms, type Rung, type Spoken, saysAloud } from './alarm-plan.ts';
import { alarmLevels, alarmSignals } from './alarm-signals.ts';
import { callingClocks, heard } from './calling.ts';
import { clockKey } from './clock-list.ts';
import { overSentence, wordsFor } from './clock-words.ts';
import { followDone } from './done-from-note.ts';
import { anyClockRuns, resinIsWet, runningClocks } from './running.ts';
import { spokenWords } from './spoken-words.ts';

let spoken: Spoken = new Map();

/** One sentence for the most urgent, after the sound, so that both are heard. */
function sayAloud(alarms: readonly Alarm[], after: number): void {
  const said = saysAloud(alarms, spoken, now.value);
  spoken = said.spoken;
  const [first] = said.alarms;
  if (first) setTimeout(() => speak(spokenWords(first.clock)), 1000 * after);
}

function sayAll(alarms: readonly Alarm[]): void {
  const level = alarmLevels.filter((l) => alarms.some((a) => a.level === l)).at(-1);
  if (!level) return;
  const { beeps, shakes } = alarmSignals[level];
  const { sound, speech } = settings.value;
  if (sound) play(beeps);
  if (speech) sayAloud(alarms, sound ? lengthOf(beeps) : 0);
  vibrate(shakes);
  if (document.visibilityState !== 'hidden') return;
  for (const { clock } of alarms) {
    const title = clock.phase === 'warning' ? clock.name : overSentence(clock);
    const { word, todo } = wordsFor(clock);
    const body = [clock.of, word, todo].filter(Boolean).join('. ');
    const done = clock.phase === 'over' && clock.kind !== 'reading' ? 'It is done' : undefined;
    notify({ title, body, tag: clockKey(clock), hash: '#/clocks', done });
  }
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

/** Once, at the start: from here on clocks are heard, seen and kept awake for. */
export function startAlarms(): void {
  readySound();
  ringWhenDue();
  sayInTitle();
  holdWhile('a clock is running', anyClockRuns);
  holdWhile('resin is wet', resinIsWet);
  effect(() => keepAwake(anyClockRuns.value));
  followDone();
}
