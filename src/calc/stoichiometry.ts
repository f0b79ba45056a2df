import { listOf, notNegative, positive } from './check.ts';

/** One part of a blend. An inert part has no equivalent weight: Infinity, or null as JSON keeps it. */
export type BlendPart = { mass: number; equivalentWeight: number | null };

/**
 * Hardener that uses up every epoxide group, in parts by mass per hundred of resin.
 *
 * @param amineHydrogenEquivalentWeight of the hardener, g (or kg/kmol) per equivalent, greater than 0
 * @param epoxideEquivalentWeight of the resin, in the same unit, greater than 0
 * @returns parts per hundred resin, by mass
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: 100 AHEW / EEW.
 * Source: Lee and Neville, Handbook of Epoxy Resins.
 *
 * @example
 * // DETA, 20.6 g per active hydrogen, with a resin of 190 g per epoxide. How many parts?
 * stoichiometricPhr({ amineHydrogenEquivalentWeight: 20.6, epoxideEquivalentWeight: 190 })
 * // => 10.84
 */
export function stoichiometricPhr(input: {
  amineHydrogenEquivalentWeight: number;
  epoxideEquivalentWeight: number;
}): number {
  return (
    (100 * positive(input, 'amineHydrogenEquivalentWeight', 'g per equivalent')) /
    positive(input, 'epoxideEquivalentWeight', 'g per equivalent')
  );
}

/**
 * Equivalent weight of a blend. Inert parts add mass and no groups.
 *
 * @param parts each `mass` at least 0, in any one unit; each `equivalentWeight` greater than 0 in
 *   g per equivalent, or Infinity or null for an inert part. At least one part must react
 * @returns g per equivalent
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: sum of m over sum of m/EW.
 * Source: Lee and Neville, Handbook of Epoxy Resins.
 *
 * @example
 * // 80 parts at 189, 10 of diluent at 183 and 10 of inert filler. What is the blend?
 * blendEquivalentWeight([
 *   { mass: 80, equivalentWeight: 189 },
 *   { mass: 10, equivalentWeight: 183 },
 *   { mass: 10, equivalentWeight: Infinity },
 * ])
 * // => 209.2
 */
export function blendEquivalentWeight(parts: readonly BlendPart[]): number {
  let total = 0;
  let groups = 0;
  listOf('parts', parts, 1).forEach((part, index) => {
    const path = `parts[${index}].`;
    const mass = notNegative(part, 'mass', 'kg', path);
    total += mass;
    if (part.equivalentWeight === null || part.equivalentWeight === Number.POSITIVE_INFINITY) return;
    groups += mass / positive(part, 'equivalentWeight', 'g per equivalent', path);
  });
  if (groups > 0) return total / groups;
  throw new RangeError(
    'equivalentWeight must be finite for at least one part with mass, got only inert parts',
  );
}

/**
 * Hardener by mass for each unit mass of resin, where the label gives parts by volume.
 *
 * @param resinParts by volume, greater than 0
 * @param hardenerParts by volume, greater than 0
 * @param resinDensity of the liquid, kg/m3, greater than 0
 * @param hardenerDensity of the liquid, kg/m3, greater than 0
 * @returns kg of hardener per kg of resin
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: (Vh rh) / (Vr rr).
 *
 * @example
 * // 3:1 by volume, resin 1.15 and hardener 0.97 g/cm3. How much hardener to a gram of resin?
 * massRatioFromVolumeRatio({ resinParts: 3, hardenerParts: 1, resinDensity: 1150, hardenerDensity: 970 })
 * // => 0.2812
 */
export function massRatioFromVolumeRatio(input: {
  resinParts: number;
  hardenerParts: number;
  resinDensity: number;
  hardenerDensity: number;
}): number {
  const hardener =
    positive(input, 'hardenerParts', 'parts by volume') * positive(input, 'hardenerDensity', 'kg/m3');
  return (
    hardener / (positive(input, 'resinParts', 'parts by volume') * positive(input, 'resinDensity', 'kg/m3'))
  );
}
