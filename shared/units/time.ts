/**
 * Times of day, durations and time left never look alike: `10:52 AM`, `1 h 08`, `13:42`.
 * Whole minutes and days are counted on the clock of the place where it happened: minutes east of UTC.
 */
const minute = 60;
const hour = 3600;
const day = 86_400;
const space = '\u00a0';
/** Shown for what is not known. */
export const noFigure = '–';

const two = (n: number) => String(n).padStart(2, '0');

/** `1 h 08`, `8 h`, `42 min`, `13 s`; under ten minutes seconds are kept: `1 min 30 s`. Reads back as a duration. */
export function formatDuration(seconds: number): string {
  if (!Number.isFinite(seconds)) return noFigure;
  const size = Math.abs(seconds);
  const sign = seconds < 0 && Math.round(size) > 0 ? '−' : '';
  const whole = Math.round(size);
  if (whole < minute) return `${sign}${whole}${space}s`;
  if (whole < 10 * minute) {
    const rest = whole % minute;
    const minutes = `${sign}${Math.floor(whole / minute)}${space}min`;
    return rest === 0 ? minutes : `${minutes}${space}${rest}${space}s`;
  }
  const minutes = Math.round(size / minute);
  if (minutes < 60) return `${sign}${minutes}${space}min`;
  const rest = minutes % 60;
  return `${sign}${Math.floor(minutes / 60)}${space}h${rest === 0 ? '' : space + two(rest)}`;
}

/**
 * Time left: `13:42`, `1:08:05`. It is rounded up, so that `0:00` never shows while time is left. For a negative
 * number it gives the time past, rounded down and without a sign: the caller says `left` or `over`.
 */
export function formatCountdown(seconds: number): string {
  if (!Number.isFinite(seconds)) return noFigure;
  const whole = Math.abs(Math.ceil(seconds));
  const minutes = Math.floor(whole / minute);
  const rest = two(whole % minute);
  return minutes < 60 ? `${minutes}:${rest}` : `${Math.floor(minutes / 60)}:${two(minutes % 60)}:${rest}`;
}

export interface ClockTimeOptions {
  locale?: string;
  hour12?: boolean;
}

/** An instant that reads, in UTC, as the wall clock did at that offset. */
function wallClock(epochMs: number, zoneOffsetMin?: number): Date {
  const local = zoneOffsetMin ?? -new Date(epochMs).getTimezoneOffset();
  return new Date(epochMs + local * 60_000);
}

const makers = new Map<string, Intl.DateTimeFormat>();

// Making one costs more than a frame's share on a slow phone, and every entry of a time line needs one.
function maker(locale: string, options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  const key = locale + JSON.stringify(options);
  const made = makers.get(key) ?? new Intl.DateTimeFormat(locale, { ...options, timeZone: 'UTC' });
  makers.set(key, made);
  return made;
}

/** `10:52 AM`; with 24 hours `10:52 hrs`, since `10:52` alone is time left. Without an offset: this phone's own. */
export function formatClockTime(
  epochMs: number,
  zoneOffsetMin?: number,
  { locale = 'en-US', hour12 = true }: ClockTimeOptions = {},
): string {
  const at = wallClock(epochMs, zoneOffsetMin);
  if (Number.isNaN(at.getTime())) return noFigure;
  const text = maker(locale, {
    hour: 'numeric',
    minute: '2-digit',
    hourCycle: hour12 ? 'h12' : 'h23',
  }).format(at);
  return hour12 ? text.replace(/\s/g, space) : `${text}${space}hrs`;
}

/** `Today`, `Yesterday`, `Tomorrow`, `Nov 3`, `Nov 3, 2024`. */
export function formatDay(epochMs: number, zoneOffsetMin: number, nowMs: number, locale = 'en-US'): string {
  const at = wallClock(epochMs, zoneOffsetMin);
  const now = wallClock(nowMs, zoneOffsetMin);
  if (Number.isNaN(at.getTime())) return noFigure;
  const ahead = Math.floor(at.getTime() / 1000 / day) - Math.floor(now.getTime() / 1000 / day);
  const word = new Map([
    [-1, 'Yesterday'],
    [0, 'Today'],
    [1, 'Tomorrow'],
  ]).get(ahead);
  const sameYear = at.getUTCFullYear() === now.getUTCFullYear();
  return (
    word ??
    maker(locale, { month: 'short', day: 'numeric', ...(sameYear ? {} : { year: 'numeric' }) }).format(at)
  );
}

/** `just now`, `5 min ago`, `6 h ago`, `2 days ago`; for what is still to come `in 5 min`. */
export function formatAgo(seconds: number): string {
  if (!Number.isFinite(seconds)) return noFigure;
  const size = Math.abs(seconds);
  if (size < minute) return 'just now';
  const count = (unit: number) => Math.floor(size / unit);
  const days = count(day) === 1 ? '1 day' : `${count(day)} days`;
  const text = size < hour ? `${count(minute)} min` : size < day ? `${count(hour)} h` : days;
  const kept = text.replace(' ', space);
  return seconds < 0 ? `in ${kept}` : `${kept} ago`;
}
