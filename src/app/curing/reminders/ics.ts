/** One thing to do at a time, with an alarm when it begins. */
export interface Reminder {
  /** The same from export to export, so that a calendar replaces it instead of doubling it. */
  uid: string;
  /** ms */
  at: number;
  what: string;
  /** What to do, in a sentence. */
  says: string;
}

interface Calendar {
  reminders: readonly Reminder[];
  /** When the file was made, ms */
  madeAt: number;
  /** Grows with every export: the newest of the same uid holds. */
  sequence: number;
}

/** A line longer than this is folded, octets without its line break: RFC 5545, 3.1 */
const longest = 75;
/** An event needs an end, ms */
const lasts = 5 * 60_000;

const encoder = new TextEncoder();

/** RFC 5545, 3.3.11: backslash, semicolon, comma and line break are escaped. */
const escaped = (text: string) => text.replace(/[\\;,]/g, (c) => `\\${c}`).replace(/\r\n|\r|\n/g, '\\n');

/** RFC 5545, 3.3.5, form 2: a time in UTC. */
const utc = (ms: number) => `${new Date(ms).toISOString().slice(0, 19).replace(/[-:]/g, '')}Z`;

/** Folded between characters, never inside one: a continuation begins with a space, which counts. */
export function folded(line: string): string {
  const lines: string[] = [];
  let current = '';
  let size = 0;
  for (const character of line) {
    const octets = encoder.encode(character).length;
    if (size + octets > longest) {
      lines.push(current);
      current = ' ';
      size = 1;
    }
    current += character;
    size += octets;
  }
  return [...lines, current].join('\r\n');
}

function eventOf({ uid, at, what, says }: Reminder, { madeAt, sequence }: Calendar): string[] {
  return [
    'BEGIN:VEVENT',
    `UID:${escaped(uid)}`,
    `SEQUENCE:${sequence}`,
    `DTSTAMP:${utc(madeAt)}`,
    `DTSTART:${utc(at)}`,
    `DTEND:${utc(at + lasts)}`,
    `SUMMARY:${escaped(what)}`,
    `DESCRIPTION:${escaped(says)}`,
    'BEGIN:VALARM',
    'ACTION:DISPLAY',
    `DESCRIPTION:${escaped(what)}`,
    'TRIGGER:PT0S',
    'END:VALARM',
    'END:VEVENT',
  ];
}

/** A calendar file, RFC 5545: every line ends with CR LF. */
export function calendarFile(calendar: Calendar): string {
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Tubewright//Oven reminders//EN',
    'CALSCALE:GREGORIAN',
    'METHOD:PUBLISH',
    ...calendar.reminders.flatMap((r) => eventOf(r, calendar)),
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join('');
}
