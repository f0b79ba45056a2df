import { gasConstant } from '../constants.ts';
import { type CupOfResin, peakInCup, timeInCup } from './heat.ts';
import { gelShare, type Reaction, rateTemperature } from './reaction.ts';
import { crossing } from './root.ts';

/** What ends a pot life: as the data sheet says. */
export type LifeEnd = 'viscosityDoubled' | 'gel' | 'peakExotherm';

/** The data sheet's own point: so long, on so much, at such a temperature. */
export interface LifePoint {
  /** s */
  time: number;
  /** kg */
  mass: number;
  /** K */
  temperature: number;
  ends: LifeEnd;
}

export interface CupModel extends Reaction {
  /** Conversion that the pot life is measured to. */
  until: number;
  /** Of the time to that conversion; other than 1 where the sheet's end is the peak. */
  factor: number;
  reactionHeat: number;
  specificHeat: number;
}

/**
 * Viscosity of an unmoved resin is doubled when a third of the way to gel has reacted
 * (Castro and Macosko 1982, exponents 1.5 and 1, from memory).
 */
const doubledShare = 0.2;

/** The apparent energy is taken from so much colder to so much warmer, K */
const around = 5;

const untilOf = (ends: LifeEnd) => (ends === 'viscosityDoubled' ? doubledShare : gelShare);

type Heat = Pick<CupModel, 'reactionHeat' | 'specificHeat'>;

function cupOf(
  point: LifePoint,
  heat: Heat,
  reaction: Reaction,
  temperature = point.temperature,
): CupOfResin {
  return {
    ...heat,
    ...reaction,
    mass: point.mass,
    resinTemperature: temperature,
    shopTemperature: temperature,
  };
}

/** The rate at which the sheet's own cup ends at the sheet's own time. */
function rateFor(point: LifePoint, heat: Heat, activationEnergy: number): number {
  const cup = (log: number) => cupOf(point, heat, { rate: Math.exp(log), activationEnergy });
  const time = (log: number) =>
    point.ends === 'peakExotherm' ? peakInCup(cup(log)).time : timeInCup(cup(log), untilOf(point.ends));
  const guess =
    -Math.log(point.time) + (activationEnergy / gasConstant) * (1 / point.temperature - 1 / rateTemperature);
  const late = (log: number) => Math.log(time(log) / point.time);
  return Math.exp(crossing(late, { low: guess - 1.5, high: guess, within: 1e-7 }));
}

/** What the cup itself shows when it is warmed: its self-heating makes it more than the reaction's own. */
function apparent(point: LifePoint, heat: Heat, reaction: Reaction): number {
  const at = (temperature: number) =>
    timeInCup(cupOf(point, heat, reaction, temperature), untilOf(point.ends));
  const { temperature: t } = point;
  return (gasConstant * Math.log(at(t - around) / at(t + around))) / (1 / (t - around) - 1 / (t + around));
}

/**
 * The cup that shows what the data sheet says: its pot life at its mass and temperature, and about there the
 * activation energy that was fitted to pot lives, which are measured in cups.
 */
export function calibrated(point: LifePoint, activationEnergy: number, heat: Heat): CupModel {
  const under = (energy: number): Reaction => ({
    rate: rateFor(point, heat, energy),
    activationEnergy: energy,
  });
  const short = (energy: number) =>
    (activationEnergy - apparent(point, heat, under(energy))) / activationEnergy;
  const energy = crossing((e) => short(e * activationEnergy), { low: 0.4, high: 1, within: 1e-4 });
  const reaction = under(Math.max(0.02, energy) * activationEnergy);
  const until = untilOf(point.ends);
  return { ...heat, ...reaction, until, factor: point.time / timeInCup(cupOf(point, heat, reaction), until) };
}
