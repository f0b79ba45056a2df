import { numberIn } from './check.ts';
import { zeroCelsius } from './constants.ts';

// Magnus coefficients over water, -45 to 60 C: Sonntag 1990, as in WMO-No. 8, annex 4.B. From 5 to 45 C, and
// down to a dew point of 0 C, within 0.04 K of the vapor pressure equation of the ASHRAE Handbook.
const MAGNUS = 17.62;
const MAGNUS_C = 243.12;

/**
 * Temperature at which the air of the shop leaves water on a mandrel or on cloth. Stay 3 K above it.
 *
 * @param temperature of the air, K, 228.15 to 333.15 (-45 to 60 C)
 * @param relativeHumidity greater than 0, at most 1
 * @returns K
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: g = ln(RH) + 17.62 T/(243.12 + T), Td = 243.12 g/(17.62 - g), T in C.
 * Source: Magnus form, Sonntag 1990; the 3 K margin as in ISO 8502-4.
 *
 * @example
 * // 20 C and 65 % in the shop. At what temperature does a mandrel get wet?
 * dewPoint({ temperature: 293.15, relativeHumidity: 0.65 })
 * // => 286.4
 */
export function dewPoint(input: { temperature: number; relativeHumidity: number }): number {
  const celsius = numberIn(input, 'temperature', 'K', { from: 228.15, to: 333.15 }) - zeroCelsius;
  const humidity = numberIn(input, 'relativeHumidity', '', { above: 0, to: 1 });
  const g = Math.log(humidity) + (MAGNUS * celsius) / (MAGNUS_C + celsius);
  return zeroCelsius + (MAGNUS_C * g) / (MAGNUS - g);
}
