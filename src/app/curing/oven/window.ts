/** The stretch of time that a chart shows, ms */
export interface Window {
  from: number;
  to: number;
}

/** Closer than this shows nothing more, ms */
const shortest = 20_000;

/** Moved or zoomed, but never out of what there is. */
export function within({ from, to }: Window, all: Window): Window {
  const lasts = Math.min(all.to - all.from, Math.max(shortest, to - from));
  const begins = Math.min(Math.max(all.from, from), all.to - lasts);
  return { from: begins, to: begins + lasts };
}

/** By a factor about a place in it, 0 at its left edge and 1 at its right. */
export function zoomed({ from, to }: Window, by: number, about: number, all: Window): Window {
  const lasts = Math.max(shortest, (to - from) * by);
  const at = from + about * (to - from);
  return within({ from: at - about * lasts, to: at - about * lasts + lasts }, all);
}

/** By a share of its width, to the right when above 0. */
export function panned({ from, to }: Window, by: number, all: Window): Window {
  const step = by * (to - from);
  return within({ from: from + step, to: to + step }, all);
}
