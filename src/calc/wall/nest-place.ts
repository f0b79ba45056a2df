import { clearance, type Profile, turned } from './nest-profile.ts';

/** One copy that is to go on the roll, lying either way. */
export type Copy = {
  readonly id: string;
  readonly copy: number;
  readonly area: number;
  readonly upright: Profile;
  readonly flipped: Profile;
};

/** Where the cloth of a copy starts, m; `profile` is the way it lies. */
export type Placed = {
  readonly copy: Copy;
  readonly profile: Profile;
  readonly x: number;
  readonly y: number;
};

/** Between the selvages. */
export type Strip = { readonly from: number; readonly to: number };

const TOUCH = 1e-9;
/** Pieces are slid together to a millimeter; nobody cuts closer. */
const SLIDE = 0.001;

export function copyOf(id: string, copy: number, area: number, upright: Profile): Copy {
  return { id, copy, area, upright, flipped: turned(upright) };
}

/** Cloth off the roll that a layout takes, allowance and all. */
export function lengthOf(layout: readonly Placed[]): number {
  return layout.reduce((most, { profile, x }) => Math.max(most, x + profile.width + profile.gap), 0);
}

/**
 * Lays copies one after the other, each where it ends soonest along the roll, and of those places the
 * lowest, the way round that fits better.
 */
export function layInOrder(copies: readonly Copy[], strip: Strip): Placed[] {
  const layout: Placed[] = [];
  for (const copy of copies) {
    const place = bestPlace(layout, copy, strip);
    if (place) layout.push(place);
  }
  return layout;
}

/** Lays next, each time, the copy that starts soonest along the roll; of those the largest. */
export function layByRoom(copies: readonly Copy[], strip: Strip): Placed[] {
  const layout: Placed[] = [];
  const left = [...copies];
  while (left.length > 0) {
    // Copies of one piece are alike: one of each is enough to try.
    const kinds = left.filter(({ id }, k) => left.findIndex((other) => other.id === id) === k);
    let next: Placed | undefined;
    for (const copy of kinds) {
      const place = bestPlace(layout, copy, strip);
      if (place && (!next || startsBefore(place, next))) next = place;
    }
    if (!next) return layout;
    layout.push(next);
    left.splice(left.indexOf(next.copy), 1);
  }
  return layout;
}

function bestPlace(layout: readonly Placed[], copy: Copy, strip: Strip): Placed | undefined {
  const upright = firstPlace(layout, copy.upright, strip);
  const flipped = firstPlace(layout, copy.flipped, strip);
  const better = !upright || (flipped && comesBefore(flipped, upright)) ? flipped : upright;
  return better && { copy, ...better };
}

function startsBefore(a: Placed, b: Placed): boolean {
  if (Math.abs(a.x - b.x) > SLIDE) return a.x < b.x;
  return a.copy.area > b.copy.area;
}

/**
 * Shelf order: side by side across the roll in the order given until one does not fit, then on past the
 * longest of them. What any other layout must not be worse than.
 */
export function layOnShelves(copies: readonly Copy[], strip: Strip): Placed[] {
  const layout: Placed[] = [];
  let shelf = 0;
  let next = 0;
  let y = strip.from;
  for (const copy of copies) {
    const { width, height, gap } = copy.upright;
    if (y > strip.from && y + height + 2 * gap > strip.to + TOUCH) {
      shelf = next;
      y = strip.from;
    }
    layout.push({ copy, profile: copy.upright, x: shelf + gap, y: y + gap });
    next = Math.max(next, shelf + width + 2 * gap);
    y += height + 2 * gap;
  }
  return layout;
}

type Place = { profile: Profile; x: number; y: number };

function comesBefore(a: Place, b: Place): boolean {
  const [endA, endB] = [a.x + a.profile.width, b.x + b.profile.width];
  if (Math.abs(endA - endB) > SLIDE) return endA < endB;
  return a.y + a.profile.height < b.y + b.profile.height - TOUCH;
}

/** The first place along the roll where a piece is clear of all others. */
function firstPlace(layout: readonly Placed[], profile: Profile, strip: Strip): Place | undefined {
  let blocked = 0;
  for (const x of startsFor(layout, profile)) {
    const y = lowestClear(layout, profile, x, strip);
    if (y === undefined) blocked = x;
    else return slidBack(layout, profile, strip, { profile, x, y }, blocked);
  }
  return undefined;
}

function startsFor(layout: readonly Placed[], { width, gap, reach }: Profile): number[] {
  const starts = layout.flatMap((other) => {
    const end = other.x + other.profile.width;
    const apart = reach + other.profile.reach;
    return [end + apart, other.x, end - width, other.x - width - apart];
  });
  return [gap, ...starts]
    .filter((x) => x >= gap)
    .sort((a, b) => a - b)
    .filter((x, k, all) => k === 0 || x - (all[k - 1] ?? 0) > TOUCH);
}

/** Tapered pieces slip past each other: as far back toward the last place that was blocked as it goes. */
function slidBack(
  layout: readonly Placed[],
  profile: Profile,
  strip: Strip,
  found: Place,
  blocked: number,
): Place {
  let best = found;
  let low = Math.max(blocked, profile.gap);
  while (best.x - low > SLIDE) {
    const x = (best.x + low) / 2;
    const y = lowestClear(layout, profile, x, strip);
    if (y === undefined) low = x;
    else best = { profile, x, y };
  }
  return best;
}

/** The lowest place across the roll where a piece that starts at x is clear of all others. */
function lowestClear(
  layout: readonly Placed[],
  profile: Profile,
  x: number,
  strip: Strip,
): number | undefined {
  const most = strip.to - profile.height - profile.gap + TOUCH;
  let y = strip.from + profile.gap;
  if (y > most) return undefined;
  const taken: { from: number; to: number }[] = [];
  for (const other of layout) {
    const to = clearance(other.profile, profile, x - other.x);
    if (to === Number.NEGATIVE_INFINITY) continue;
    taken.push({ from: other.y - clearance(profile, other.profile, other.x - x), to: other.y + to });
  }
  taken.sort((a, b) => a.from - b.from);
  for (const { from, to } of taken) {
    if (y > from + TOUCH && y < to - TOUCH) y = to;
    if (y > most) return undefined;
  }
  return y;
}
