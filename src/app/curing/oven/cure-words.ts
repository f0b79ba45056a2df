import { show } from '#app/state/show.ts';
import { formatClockTime, formatDay, formatDuration } from '#shared/units/time.ts';
import type { TubeCure } from './oven-cure.ts';
import type { Finish, Stall } from './oven-finish.ts';

const degrees = (kelvin: number) => show(kelvin, 'temperature', 0);
const percent = (share: number) => `${Math.floor(100 * share + 1e-9)}\u00a0%`;

/** '5:40 PM', with its day when that is not today */
export function atWords(at: number, now: number): string {
  const zone = -new Date(at).getTimezoneOffset();
  const day = formatDay(at, zone, now);
  return day === formatDay(now, zone, now) ? formatClockTime(at) : `${day}, ${formatClockTime(at)}`;
}

const doneAt = (at: number, now: number): string =>
  at <= now ? 'now' : `${atWords(at, now)}, in ${formatDuration((at - now) / 1000)}`;

/** What is predicted, line by line: what goes on, and when the cure time is used up by it. */
export function finishRows({ temperature, atThis, tooCool, onSchedule }: Finish, now: number): string[][] {
  const never = tooCool ? 'never: too cool' : 'in more than a year';
  return [
    [`Used up, staying at ${degrees(temperature)}`, atThis === undefined ? never : doneAt(atThis, now)],
    ...(onSchedule
      ? [
          [
            'Used up, on the schedule',
            onSchedule.at === undefined
              ? `not by its end: ${percent(onSchedule.share)}`
              : doneAt(onSchedule.at, now),
          ],
        ]
      : []),
  ];
}

/** How much the data sheet's cure times are worth. */
export function sheetSays({ asked: { curePoints }, counting }: TubeCure): string {
  if (curePoints.length === 1) {
    return 'The sheet gives one cure time only, so other heat is counted on the safe side.';
  }
  if (curePoints.length === 2) {
    return 'By two cure times of the sheet: a third would tell whether they are right.';
  }
  return `By ${curePoints.length} cure times of the sheet; the worst lies ${percent(counting.misfit)} off the line through them.`;
}

export function stallSays({ share, isNow, hottest, needs, wanted, isOwn }: Stall) {
  const at = degrees(hottest);
  const target = isOwn ? 'the most this resin gives' : 'the Tg you want';
  return {
    title: isNow ? `Stalled at ${percent(share)}` : `${at} is not hot enough`,
    says: isNow
      ? `It will go no further at ${at}; it needs ${degrees(needs)} for ${target}.`
      : `However long it is held there, the cure stops at ${percent(share)}; it needs ${degrees(needs)} for ${target}.`,
    why: `Resin hardens until its glass transition (Tg) is about ${show(15, 'temperatureDifference', 0)} above the hottest it has been, however long it waits. ${isOwn ? 'This resin ends at' : 'The hottest in service asks for'} ${degrees(wanted)}.`,
    now: isNow
      ? `Warm it to ${degrees(needs)} or more, here or in a postcure: it goes on from where it stopped.`
      : `Choose a hotter hold, or plan a postcure at ${degrees(needs)} or more.`,
  };
}
