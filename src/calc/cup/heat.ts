import { Solver } from 'odex';
import { type Reaction, reactionRate } from './reaction.ts';

/** What stands in a cup, checked by who calls. */
export interface CupOfResin extends Reaction {
  /** kg */
  mass: number;
  /** K, as hardener goes in */
  resinTemperature: number;
  /** K */
  shopTemperature: number;
  /** J/kg */
  reactionHeat: number;
  /** J/(kg K) */
  specificHeat: number;
}

/** Mixed resin, kg/m3; as near as a cup's shape is known. */
const density = 1100;
/** Liquid epoxy conducts badly, W/(m K): handbooks give 0.17 to 0.25, from memory. */
const conductivity = 0.2;
/**
 * Heat comes out through the resin itself, so a surface loses so many times conductivity over radius, and a
 * deep cup keeps its heat. A ball that warms itself evenly is on average q R^2/(15 k) above its skin and gives
 * off q R/3 there, which makes 5 (Carslaw and Jaeger, Conduction of Heat in Solids, from memory); with it 100 g
 * of 20 min at 25 C makes 500 g come out within 25 % of 12 min.
 */
const conducted = 5;

/** Share of its excess over the shop that a cup loses in a second: a cylinder as tall as it is wide. */
function coolingOf(mass: number, specificHeat: number): number {
  const radius = (mass / density / (2 * Math.PI)) ** (1 / 3);
  const surface = 6 * Math.PI * radius ** 2;
  return ((conducted * conductivity) / radius) * (surface / (mass * specificHeat));
}

/** Reacted to here the cup is past everything that is asked of it. */
const through = 0.985;
const samplesOfStep = 16;

/** Temperature and time, by conversion. */
function slopeOf(cup: CupOfResin) {
  const { mass, shopTemperature, reactionHeat, specificHeat } = cup;
  const rise = reactionHeat / specificHeat;
  const cooling = coolingOf(mass, specificHeat);
  return (share: number, [temperature = 0]: number[]) => {
    const rate = reactionRate(cup, share, temperature);
    return [rise - (cooling * (temperature - shopTemperature)) / rate, 1 / rate];
  };
}

function solver(accuracy: number): Solver {
  const made = new Solver(2);
  made.relativeTolerance = accuracy;
  made.absoluteTolerance = accuracy;
  made.maxSteps = 200_000;
  return made;
}

/**
 * Time until so much of it has reacted, s, by the heat balance of a cup with one temperature for all of it.
 * Conversion is what runs: so the time can only get shorter when anything is warmer, whatever the solver's steps.
 */
export function timeInCup(cup: CupOfResin, until: number): number {
  const { y } = solver(1e-9).solve(slopeOf(cup), 0, [cup.resinTemperature, 0], until);
  return y[1] ?? Number.NaN;
}

/** Hottest on the way to a cup that has reacted through, K, and when, s; the beginning when it only cools. */
export function peakInCup(cup: CupOfResin): { temperature: number; time: number } {
  const peak = { temperature: cup.resinTemperature, time: 0 };
  const watched = solver(1e-7);
  watched.denseOutput = true;
  watched.solve(slopeOf(cup), 0, [cup.resinTemperature, 0], through, (_step, from, to, _y, dense) => {
    if (!dense || to <= from) return;
    for (let i = 1; i <= samplesOfStep; i++) {
      const at = from + ((to - from) * i) / samplesOfStep;
      const temperature = dense(0, at);
      if (!(temperature > peak.temperature)) continue;
      peak.temperature = temperature;
      peak.time = dense(1, at);
    }
  });
  return peak;
}
