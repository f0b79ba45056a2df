/** Between two stations: the fourth root of a stiffness at both, and how far it bows between, for each m squared. */
export type Span = {
  readonly from: number;
  readonly to: number;
  readonly left: number;
  readonly right: number;
  readonly bow: number;
};

/** A bow takes no more than this share off the smaller end: nothing may come near to no stiffness by guessing. */
const MOST_BOW = 0.1;

/**
 * The fourth root of a stiffness between stations: straight for a cone, where the root is the diameter; bowed as much
 * as both neighbors agree on. At a kink one of them sees none, so that a straight taper beside it stays straight.
 */
export function spansOf(at: readonly number[], stiffness: readonly number[]): Span[] {
  const root = stiffness.map((value) => value ** 0.25);
  const bows = root.map((_, k) => bowAt(at, root, k));
  const last = at.length - 2;
  return at.slice(0, -1).map((from, k) => {
    const to = at[k + 1] ?? from;
    const [left, right] = [root[k] ?? 1, root[k + 1] ?? 1];
    // The two nearest places that have a neighbor on either side.
    const near = Math.min(Math.max(k, 1), last - 1);
    const bow = agreed(bows[near] ?? 0, bows[near + 1] ?? 0);
    const most = (4 * MOST_BOW * Math.min(left, right)) / (to - from) ** 2;
    return { from, to, left, right, bow: to > from ? Math.max(-most, Math.min(most, bow)) : 0 };
  });
}

export function rootAt({ from, to, left, right, bow }: Span, x: number): number {
  if (to <= from) return right;
  return left + ((right - left) * (x - from)) / (to - from) + bow * (x - from) * (x - to);
}

/** Second difference round a station; none at an end or beside a step. */
function bowAt(at: readonly number[], root: readonly number[], k: number): number {
  const [x0, x1, x2] = [at[k - 1], at[k], at[k + 1]];
  const [y0, y1, y2] = [root[k - 1], root[k], root[k + 1]];
  if (x0 === undefined || x1 === undefined || x2 === undefined) return 0;
  if (y0 === undefined || y1 === undefined || y2 === undefined) return 0;
  if (x1 - x0 < 1e-6 || x2 - x1 < 1e-6) return 0;
  return ((y2 - y1) / (x2 - x1) - (y1 - y0) / (x1 - x0)) / (x2 - x0);
}

function agreed(one: number, other: number): number {
  if (one * other <= 0) return 0;
  return Math.abs(one) < Math.abs(other) ? one : other;
}
