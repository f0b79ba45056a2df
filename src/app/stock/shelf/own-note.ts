/** How the sentences begin that belong to a typical value only. */
const ofTypical = /^(Typical|Check them|Weigh a square|Weigh a piece|Measure yours)/;

/** What is left of a starter's note once the values are the builder's own. */
export function ownNote(note: string): string {
  return note
    .replace(/\.\s+/g, '.\n')
    .split('\n')
    .map((s) => s.trim())
    .filter((s) => !ofTypical.test(s))
    .join(' ');
}
