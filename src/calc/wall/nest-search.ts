import {
  type Copy,
  layByRoom,
  layInOrder,
  layOnShelves,
  lengthOf,
  type Placed,
  type Strip,
} from './nest-place.ts';

/** Rounding of a length; a saving of less is none. */
const SAME_LENGTH = 1e-6;

type Found = { order: readonly Copy[]; layout: Placed[]; length: number; spread: number };

/**
 * The shortest layout found in so many tries, beginning with shelf order; the same one every time. First
 * longest first, by the room there is, as given, widest first; then the best order changed a little,
 * again and again.
 */
export function shortestLayout(copies: readonly Copy[], strip: Strip, tries: number): Placed[] {
  const shelves = found(copies, layOnShelves(copies, strip));
  const least = copies.reduce((sum, { area }) => sum + area, 0) / (strip.to - strip.from);
  const longest = copies.reduce((most, { upright }) => Math.max(most, upright.width + 2 * upright.gap), 0);
  // Shorter than its longest piece, or than its area allows, no layout can be.
  const end = Math.max(longest, least) + SAME_LENGTH;
  let best = shelves;
  let left = tries;
  for (const order of startingOrders(copies, strip)) {
    if (left === 0 || best.length <= end) return best.layout;
    best = better(found(order, layInOrder(order, strip)), best);
    left -= 1;
  }
  const next = numbers();
  for (; left > 0 && best.length > end; left -= 1) {
    const order = changed(best.order, next);
    best = better(found(order, layInOrder(order, strip)), best);
  }
  return best.layout;
}

function* startingOrders(copies: readonly Copy[], strip: Strip): Generator<readonly Copy[]> {
  const by = (measure: (copy: Copy) => number): Copy[] =>
    [...copies].sort((a, b) => measure(b) - measure(a) || b.area - a.area);
  yield by(({ upright }) => upright.width);
  yield layByRoom(copies, strip).map(({ copy }) => copy);
  yield copies;
  yield by(({ upright }) => upright.height);
  yield by(({ area }) => area);
}

/** `spread` says which of two equally long layouts has more of its cloth near the start of the roll. */
function found(order: readonly Copy[], layout: Placed[]): Found {
  const spread = layout.reduce((sum, { copy, profile, x }) => sum + copy.area * (x + profile.width / 2), 0);
  // A layout that found no place for one of them is none, however short.
  const length = layout.length === order.length ? lengthOf(layout) : Number.POSITIVE_INFINITY;
  return { order, layout, length, spread };
}

function better(now: Found, best: Found): Found {
  if (now.length < best.length - SAME_LENGTH) return now;
  return now.length <= best.length + SAME_LENGTH && now.spread < best.spread ? now : best;
}

/** One or two copies taken out and put in elsewhere. */
function changed(order: readonly Copy[], next: (below: number) => number): Copy[] {
  const copies = [...order];
  for (let moves = 1 + next(2); moves > 0; moves -= 1) {
    const taken = copies.splice(next(copies.length), 1);
    copies.splice(next(copies.length + 1), 0, ...taken);
  }
  return copies;
}

/** Park and Miller's generator: the same numbers every time. */
function numbers(): (below: number) => number {
  let seed = 1;
  return (below) => {
    seed = (seed * 48271) % 2147483647;
    return Math.floor((seed / 2147483647) * below);
  };
}
