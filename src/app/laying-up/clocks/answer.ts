import { record } from '#app/state/record.ts';
import { theStore } from '#app/state/shop.ts';
import { recordUndoable } from '#app/state/undo.ts';
import { benchSubject, type EntryDraft } from '#shared/record/entry.ts';
import type { RunningClock } from './clock-list.ts';

/** The wait is over and seen: the clock ends. */
const answerDraft = ({ subject, clock }: RunningClock): EntryDraft => ({
  kind: 'clockAnswered',
  subject,
  clock,
});

export const answerClock = (clock: RunningClock): Promise<boolean> =>
  recordUndoable(answerDraft(clock), {
    said: clock.kind === 'reading' ? 'Reading put off 10 min' : `${clock.name}: seen`,
  });

/** Nothing left in the cup; its pot life ends with it. */
export function emptyCup({ subject, cup, name }: RunningClock): Promise<boolean> {
  if (cup === undefined) return Promise.resolve(false);
  return recordUndoable({ kind: 'cupEmpty', subject, cup }, { said: `${name} is empty` });
}

/** What its main key says: a cup is empty, any other wait is over. */
export const doneWith = (clock: RunningClock): Promise<boolean> =>
  clock.kind === 'potLife' ? emptyCup(clock) : answerClock(clock);

/** Waits on: the old clock is answered, and a new one lasts as long as was left and so much more, s. */
export function addTime(clock: RunningClock, seconds: number): Promise<boolean> {
  const { subject, kind, name, warns, step, round, left } = clock;
  if (kind === 'tape' || kind === 'potLife' || kind === 'reading') return Promise.resolve(false);
  const drafts: EntryDraft[] = [
    answerDraft(clock),
    {
      kind: 'clockStarted',
      subject,
      clock: theStore().newId(),
      purpose: kind,
      label: name,
      lasts: Math.max(0, left) + seconds,
      warns: Math.min(warns, seconds / 2),
      ...(step !== undefined && { step }),
      ...(round !== undefined && { round }),
    },
  ];
  return recordUndoable(drafts, { said: `${name}: ${seconds / 60} min more` });
}

/** A timer warns a minute before its end, unless it is short, s */
const longEnoughToWarn = 600;

export function startTimer(seconds: number, label: string): Promise<boolean> {
  return record({
    kind: 'clockStarted',
    subject: benchSubject,
    clock: theStore().newId(),
    purpose: 'free',
    label,
    lasts: seconds,
    warns: seconds >= longEnoughToWarn ? 60 : 0,
  });
}
