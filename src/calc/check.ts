/** What a field may be. No bounds at all means any finite number. */
export type Bounds = {
  readonly above?: number;
  readonly from?: number;
  readonly below?: number;
  readonly to?: number;
};

type Holder<Field extends string> = { readonly [key in Field]?: number | null | undefined };

// Beyond these a quotient of two good fields can overflow, and NaN would leave the computation.
const LARGEST = 1e30;
const NOISE = 1e-15;

/**
 * Reads one numeric field and refuses what cannot be computed with.
 * What is closer to 0 than 1e-15 is rounding left over from a subtraction, and comes back as 0.
 *
 * @param holder what the field is in
 * @param field its name, for the message
 * @param unit its unit, for the message; '' for a plain number
 * @param bounds what it may be
 * @param path where the holder is, for the message: 'readings[3].'
 * @throws RangeError naming the field when it is missing, not a number, not finite or out of bounds
 */
export function numberIn<Field extends string>(
  holder: Holder<Field>,
  field: Field,
  unit: string,
  bounds: Bounds = {},
  path = '',
): number {
  const given: unknown = holder?.[field];
  if (typeof given === 'number' && Number.isFinite(given) && Math.abs(given) <= LARGEST) {
    const value = Math.abs(given) < NOISE ? 0 : given;
    if (fits(value, bounds)) return value;
  }
  const outsized = typeof given === 'number' && Math.abs(given) > LARGEST && fits(given, bounds);
  const wanted = range(outsized ? { to: LARGEST } : bounds, unit);
  throw new RangeError(`${path}${field} must be ${wanted}, got ${shown(given)}`);
}

/** A field that must be greater than 0. */
export function positive<Field extends string>(
  holder: Holder<Field>,
  field: Field,
  unit: string,
  path = '',
): number {
  return numberIn(holder, field, unit, { above: 0 }, path);
}

/** A field that may be 0 and nothing less. */
export function notNegative<Field extends string>(
  holder: Holder<Field>,
  field: Field,
  unit: string,
  path = '',
): number {
  return numberIn(holder, field, unit, { from: 0 }, path);
}

/** A list that must hold at least so many items. */
export function listOf<Item>(name: string, given: readonly Item[], atLeast: number): readonly Item[] {
  if (Array.isArray(given) && given.length >= atLeast) return given;
  const got = Array.isArray(given) ? `${given.length}` : shown(given);
  throw new RangeError(`${name} must be a list of at least ${atLeast}, got ${got}`);
}

/** Lets a result out only when it is a number; the blame goes to the field that drove it there. */
export function finite(result: number, field: string): number {
  if (Number.isFinite(result)) return result;
  throw new RangeError(`${field} is too far from the other values: the result is beyond any number`);
}

function fits(value: number, { above, from, below, to }: Bounds): boolean {
  return (
    (above === undefined || value > above) &&
    (from === undefined || value >= from) &&
    (below === undefined || value < below) &&
    (to === undefined || value <= to)
  );
}

function range({ above, from, below, to }: Bounds, unit: string): string {
  const words = [
    above === undefined ? '' : `greater than ${short(above)}`,
    from === undefined ? '' : `at least ${short(from)}`,
    below === undefined ? '' : `less than ${short(below)}`,
    to === undefined ? '' : `at most ${short(to)}`,
  ].filter((part) => part !== '');
  if (words.length === 0) return unit === '' ? 'a number' : `a number of ${unit}`;
  return `${words.join(' and ')}${unit && ` ${unit}`}`;
}

function short(bound: number): string {
  return `${Number(bound.toPrecision(6))}`;
}

function shown(given: unknown): string {
  if (given === undefined || given === null) return 'nothing';
  if (typeof given === 'string') return `"${given}"`;
  return typeof given === 'number' ? `${given}` : `a ${typeof given}`;
}
