/** What is told as a reserve where nothing acts: no number is large enough, and Infinity would leave a chart. */
export const MOST_RESERVE = 1e6;

/** How many times a load may grow until it reaches what is borne. */
export function reserveOf(borne: number, applied: number): number {
  const size = Math.abs(applied);
  return size > borne / MOST_RESERVE ? borne / size : MOST_RESERVE;
}
