import { notNegative, positive } from './check.ts';

/**
 * Hardener that belongs to the resin really in the cup.
 *
 * @param resinPoured kg, at least 0
 * @param hardenerPerResin by mass, greater than 0: 0.3 for 100:30
 * @returns kg
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: r q.
 *
 * @example
 * // 78.2 g of resin went in at 100:30. How much hardener?
 * hardenerForResin({ resinPoured: 0.0782, hardenerPerResin: 0.3 })
 * // => 0.02346
 */
export function hardenerForResin(input: { resinPoured: number; hardenerPerResin: number }): number {
  return notNegative(input, 'resinPoured', 'kg') * positive(input, 'hardenerPerResin', '');
}

/**
 * Resin that belongs to the hardener really in the cup. The way back from `hardenerForResin`.
 *
 * @param hardenerPoured kg, at least 0
 * @param hardenerPerResin by mass, greater than 0
 * @returns kg
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: h / q.
 *
 * @example
 * // 25 g of hardener went in at 100:30. How much resin does it need?
 * resinForHardener({ hardenerPoured: 0.025, hardenerPerResin: 0.3 })
 * // => 0.08333
 */
export function resinForHardener(input: { hardenerPoured: number; hardenerPerResin: number }): number {
  return notNegative(input, 'hardenerPoured', 'kg') / positive(input, 'hardenerPerResin', '');
}

/**
 * How far the hardener is off, as a signed share of what it should be: above 0 is rich in hardener,
 * below 0 is lean, -1 is none.
 *
 * @param resinPoured kg, greater than 0
 * @param hardenerPoured kg, at least 0
 * @param hardenerPerResin by mass, greater than 0
 * @returns share, at least -1
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: (h/r)/q - 1.
 *
 * @example
 * // 25 g of hardener in 78.2 g of resin at 100:30. How far off?
 * ratioError({ resinPoured: 0.0782, hardenerPoured: 0.025, hardenerPerResin: 0.3 })
 * // => 0.06564
 */
export function ratioError(input: {
  resinPoured: number;
  hardenerPoured: number;
  hardenerPerResin: number;
}): number {
  const ratio = notNegative(input, 'hardenerPoured', 'kg') / positive(input, 'resinPoured', 'kg');
  return ratio / positive(input, 'hardenerPerResin', '') - 1;
}

/**
 * What to add to put a cup right: resin when hardener ran over, hardener when it is short. One of the
 * two is always 0.
 *
 * @param resinPoured kg, at least 0
 * @param hardenerPoured kg, at least 0
 * @param hardenerPerResin by mass, greater than 0
 * @returns `addResin`, `addHardener` and `total`, what the cup holds afterwards; all kg
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: h/q - r, or r q - h.
 *
 * @example
 * // 25 g of hardener in 78.2 g of resin at 100:30. What puts it right?
 * correctionForOvershoot({ resinPoured: 0.0782, hardenerPoured: 0.025, hardenerPerResin: 0.3 })
 * // => { addResin: 0.005133, addHardener: 0, total: 0.1083 }
 */
export function correctionForOvershoot(input: {
  resinPoured: number;
  hardenerPoured: number;
  hardenerPerResin: number;
}): { addResin: number; addHardener: number; total: number } {
  const resin = notNegative(input, 'resinPoured', 'kg');
  const hardener = notNegative(input, 'hardenerPoured', 'kg');
  const addResin = Math.max(0, resinForHardener(input) - resin);
  const addHardener = addResin > 0 ? 0 : Math.max(0, hardenerForResin(input) - hardener);
  return { addResin, addHardener, total: resin + hardener + addResin + addHardener };
}
