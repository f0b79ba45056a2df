import { endOfDay, formatISO, isValid, parseISO } from 'date-fns';

/** A day as a date field wants it: '2026-05-03'. */
export const toDayText = (at: number | undefined): string =>
  at === undefined ? '' : formatISO(at, { representation: 'date' });

/** Its first moment here; undefined while the field is empty or no day. */
export function fromDayText(text: string): number | undefined {
  const day = parseISO(text.trim());
  return isValid(day) && day.getTime() >= 0 ? day.getTime() : undefined;
}

/** Its last moment: what is good until a day is good all that day. */
export function endOfDayText(text: string): number | undefined {
  const at = fromDayText(text);
  return at === undefined ? undefined : endOfDay(at).getTime();
}
