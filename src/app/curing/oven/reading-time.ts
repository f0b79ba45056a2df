/** Offered as chips, minutes ago */
export const minutesAgo = [5, 10, 15, 30] as const;

const minute = 60_000;
const halfDay = 12 * 60 * minute;

export type TypedTime = { ok: true; at: number } | { ok: false; says: string };

const notATime = { ok: false, says: 'Write the time of day like 10:40, or 10:40 PM.' } as const;

function onDay(now: number, days: number, hours: number, minutes: number): number {
  const day = new Date(now);
  day.setDate(day.getDate() + days);
  return day.setHours(hours, minutes, 0, 0);
}

/**
 * A time of day as it is typed: 10:40, 1040, 10:40 pm, 22:40. It is the last such time that was, within half a day;
 * otherwise the one to come today, for the screen to refuse.
 */
export function readTimeOfDay(text: string, now: number): TypedTime {
  const parts = /^(\d{1,2})[:. ]?(\d{2})\s*([ap])?\.?m?\.?$/i.exec(text.trim());
  if (!parts) return notATime;
  const [, h = '', m = '', half] = parts;
  const hours = Number(h);
  const minutes = Number(m);
  if (hours > 23 || minutes > 59 || (half && (hours < 1 || hours > 12))) return notATime;
  const afternoon = (hours % 12) + 12;
  const exact = half ? [half.toLowerCase() === 'p' ? afternoon : hours % 12] : [hours];
  const open = !half && hours >= 1 && hours <= 12;
  const wanted = open ? [hours % 12, afternoon] : exact;
  const times = wanted.flatMap((hour) => [onDay(now, -1, hour, minutes), onDay(now, 0, hour, minutes)]);
  const was = times.filter((at) => at <= now).reduce((latest, at) => Math.max(latest, at), 0);
  if (now - was < halfDay) return { ok: true, at: was };
  const toCome = times.filter((at) => at > now).reduce((next, at) => Math.min(next, at), Number.MAX_VALUE);
  return { ok: true, at: toCome < Number.MAX_VALUE ? toCome : was };
}
