/** A time of day at an offset, as a date field wants it: '2026-05-03T10:14'. */
export function toFieldText(at: number, zone: number): string {
  return new Date(at + zone * 60_000).toISOString().slice(0, 16);
}

/** The instant a date field names at that offset; undefined while it is not one. */
export function fromFieldText(text: string, zone: number): number | undefined {
  const at = Date.parse(`${text}:00Z`);
  return Number.isNaN(at) ? undefined : at - zone * 60_000;
}

export function whenProblem(at: number | undefined, now: number): string | undefined {
  if (at === undefined) return 'Give a day and a time, like 5/3 10:14 AM.';
  return at > now + 60_000 ? 'That is still to come: give the time when it happened.' : undefined;
}
