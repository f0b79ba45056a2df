import { finite, notNegative, positive } from './check.ts';
import { gasConstant } from './constants.ts';
import { eachStretch, type Reading } from './readings.ts';

// Four-point Gauss-Legendre on [-1, 1]: Abramowitz and Stegun, table 25.4.
const NODE_IN = 0.3399810435848563;
const NODE_OUT = 0.8611363115940526;
const WEIGHT_IN = 0.6521451548625461 / 2;
const WEIGHT_OUT = 0.3478548451374538 / 2;

// A piece is integrated as one when the rate changes by less than e over it and the temperature by less
// than a quarter: the four points are then good to 1e-9.
const EXPONENT_SPAN = 1;
const TEMPERATURE_RATIO = 1.25;

// Over stretches that change exponent and temperature no more than this the trapezoid corrected by the slopes at its ends (Euler and Maclaurin) is good to
// span^4/720, below 1e-9. A logger's file has hardly any other.
const SHORT_SPAN = 0.02;

// Where the rate is below e^-60 of the highest in its stretch it adds nothing that a double can hold.
const NEGLIGIBLE = 60;

/**
 * Time at one temperature that does as much as a whole history, where the rate follows Arrhenius.
 * Temperature is straight between readings; equal times are a step. Relative error of the integral
 * below 1e-8.
 *
 * @param readings in order of time, K; none or one gives 0
 * @param referenceTemperature K, greater than 0
 * @param activationEnergy J/mol, at least 0
 * @returns s at the reference temperature
 * @throws RangeError naming the field; `referenceTemperature` when the time is beyond any number
 *
 * Formula: integral of exp(-(Ea/R)(1/T - 1/Tref)) dt.
 * Source: ASTM C1074, equivalent age; USP <1160> has the same kernel.
 *
 * @example
 * // An hour from 20 up to 60 C with 55 kJ/mol. How long at 60 C is that worth?
 * equivalentTime({
 *   readings: [{ time: 0, temperature: 293.15 }, { time: 3600, temperature: 333.15 }],
 *   referenceTemperature: 333.15,
 *   activationEnergy: 55000,
 * })
 * // => 1305
 */
export function equivalentTime(input: {
  readings: readonly Reading[];
  referenceTemperature: number;
  activationEnergy: number;
}): number {
  const energy = notNegative(input, 'activationEnergy', 'J/mol');
  const reference = positive(input, 'referenceTemperature', 'K');
  const worth = stretchWorth(reference, energy);
  let total = 0;
  eachStretch(input, (lasts, from, to) => {
    total += worth(lasts, from, to);
  });
  return finite(total, 'referenceTemperature');
}

/** How much time at the reference a straight stretch is worth, s. Made for stretches that follow each other. */
export type StretchWorth = (lasts: number, from: number, to: number) => number;

export function stretchWorth(reference: number, activationEnergy: number): StretchWorth {
  const pull = activationEnergy / gasConstant;
  const atReference = pull / reference;
  // The end of a stretch is the beginning of the next: what holds there is not reckoned twice.
  let last = reference;
  let lastPull = atReference;
  let lastRate = 1;
  return (lasts, from, to) => {
    const fromPull = from === last ? lastPull : pull / from;
    const begins = from === last ? lastRate : Math.exp(atReference - fromPull);
    last = to;
    lastPull = fromPull;
    lastRate = begins;
    if (from === to) return lasts * begins;
    const toPull = pull / to;
    const ends = Math.exp(atReference - toPull);
    lastPull = toPull;
    lastRate = ends;
    const isShort =
      Math.abs(to - from) <= SHORT_SPAN * Math.min(from, to) && Math.abs(fromPull - toPull) <= SHORT_SPAN;
    if (!isShort) {
      return lasts * meanRate(from, to, pull, reference, pull / Math.max(from, to) + NEGLIGIBLE);
    }
    const bend = (to - from) * ((begins * fromPull) / from - (ends * toPull) / to);
    return lasts * ((begins + ends) / 2 + bend / 12);
  };
}

/** Mean of the rate over a straight stretch, halved until each half is smooth. */
function meanRate(from: number, to: number, pull: number, reference: number, deepest: number): number {
  const low = Math.min(from, to);
  const high = Math.max(from, to);
  if (low === high) return rate(low, pull, reference);
  if (pull / high > deepest) return 0;
  const middle = (low + high) / 2;
  // Two neighboring doubles cannot be halved: without this the halving never ends.
  const smallest = middle === low || middle === high;
  const smooth = high <= TEMPERATURE_RATIO * low && pull / low - pull / high <= EXPONENT_SPAN;
  if (smallest || smooth) return gauss(low, high, pull, reference);
  return (
    (meanRate(low, middle, pull, reference, deepest) + meanRate(middle, high, pull, reference, deepest)) / 2
  );
}

function gauss(low: number, high: number, pull: number, reference: number): number {
  const middle = (low + high) / 2;
  const half = (high - low) / 2;
  const inner =
    rate(middle - NODE_IN * half, pull, reference) + rate(middle + NODE_IN * half, pull, reference);
  const outer =
    rate(middle - NODE_OUT * half, pull, reference) + rate(middle + NODE_OUT * half, pull, reference);
  return WEIGHT_IN * inner + WEIGHT_OUT * outer;
}

function rate(temperature: number, pull: number, reference: number): number {
  return Math.exp(pull / reference - pull / temperature);
}
