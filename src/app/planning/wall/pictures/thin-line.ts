/** Farther from the true line than this nobody sees, px */
const tolerance = 0.3;

const figure = (px: number): string => String(Math.round(px * 10) / 10);

/**
 * Points of a line drawn on the screen, without those that lie on it anyway: each stretch is as long as one
 * straight line stays within a third of a pixel of all it stands for. `xs` never go back; equal ones are a jump.
 */
export function thinned(xs: ArrayLike<number>, ys: ArrayLike<number>): number[] {
  const kept = xs.length > 0 ? [0] : [];
  let anchor = 0;
  let low = Number.NEGATIVE_INFINITY;
  let high = Number.POSITIVE_INFINITY;
  const keep = (i: number) => {
    kept.push(i);
    anchor = i;
    low = Number.NEGATIVE_INFINITY;
    high = Number.POSITIVE_INFINITY;
  };
  const slopeTo = (i: number, off: number) =>
    ((ys[i] ?? 0) + off - (ys[anchor] ?? 0)) / ((xs[i] ?? 0) - (xs[anchor] ?? 0));
  for (let i = 1; i < xs.length; i += 1) {
    const jumps = (xs[i] ?? 0) <= (xs[i - 1] ?? 0);
    const slope = jumps ? 0 : slopeTo(i, 0);
    if (i - 1 > anchor && (jumps || slope < low || slope > high)) keep(i - 1);
    if (jumps) {
      if (ys[i] !== ys[i - 1]) keep(i);
      continue;
    }
    low = Math.max(low, slopeTo(i, -tolerance));
    high = Math.min(high, slopeTo(i, tolerance));
  }
  if (anchor !== xs.length - 1 && xs.length > 1) kept.push(xs.length - 1);
  return kept;
}

/** 'M0 10L5 12…' through the points that are needed. */
export function linePath(xs: ArrayLike<number>, ys: ArrayLike<number>): string {
  return thinned(xs, ys)
    .map((i, k) => `${k === 0 ? 'M' : 'L'}${figure(xs[i] ?? 0)} ${figure(ys[i] ?? 0)}`)
    .join('');
}

/** The same closed down to a foot line. */
export function areaPath(xs: ArrayLike<number>, ys: ArrayLike<number>, foot: number): string {
  if (xs.length === 0) return '';
  return `${linePath(xs, ys)}V${figure(foot)}H${figure(xs[0] ?? 0)}Z`;
}

/** What lies between two lines over the same places. */
export function bandPath(xs: ArrayLike<number>, above: ArrayLike<number>, below: ArrayLike<number>): string {
  const back = thinned(xs, below).reverse();
  const under = back.map((i) => `L${figure(xs[i] ?? 0)} ${figure(below[i] ?? 0)}`).join('');
  return xs.length === 0 ? '' : `${linePath(xs, above)}${under}Z`;
}

/** A closed outline of a few points. */
export function outlinePath(
  points: readonly { x: number; y: number }[],
  x: (m: number) => number,
  y: (m: number) => number,
): string {
  return `${points.map((p, k) => `${k === 0 ? 'M' : 'L'}${figure(x(p.x))} ${figure(y(p.y))}`).join('')}Z`;
}
