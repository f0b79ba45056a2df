import { numberIn } from './check.ts';
import { type CupModel, calibrated, type LifeEnd, type LifePoint } from './cup/calibrate.ts';
import { peakInCup, timeInCup } from './cup/heat.ts';
import { crossing } from './cup/root.ts';

export type { LifeEnd, LifePoint } from './cup/calibrate.ts';

/** Of a pot life that ends with gel or peak exotherm, this share can be worked (common practice, no source). */
export const usableOfGel = 0.65;

/** Usual for a laminating epoxy with its thinners, J/kg: 100 kJ to an equivalent (Horie 1970, from memory). */
const usualHeat = 400_000;
/** Liquid epoxy, J/(kg K) (common practice, no source) */
const usualSpecificHeat = 2000;

/** How a cup that is left standing ends. */
export type CupHeat = 'staysCool' | 'getsHot' | 'runsAway';

/** Shares of the adiabatic rise from which on a cup gets hot, and runs away (common practice, no source). */
const hotFrom = 0.1;
const runsAwayFrom = 0.3;

function heatAt(riseShare: number): CupHeat {
  if (riseShare >= runsAwayFrom) return 'runsAway';
  return riseShare >= hotFrom ? 'getsHot' : 'staysCool';
}

export interface ResinInShop {
  potLife: LifePoint;
  activationEnergy: number;
  reactionHeat?: number | undefined;
  specificHeat?: number | undefined;
  resinTemperature: number;
  shopTemperature: number;
}

const ends: readonly LifeEnd[] = ['viscosityDoubled', 'gel', 'peakExotherm'];
const shopRange = { from: 233.15, to: 393.15 };
const cupRange = { from: 0.001, to: 100 };

const models = new Map<string, CupModel>();
const keptModels = 20;

function modelOf(input: ResinInShop): CupModel {
  const path = 'potLife.';
  const point = {
    time: numberIn(input.potLife, 'time', 's', { from: 30, to: 30 * 86_400 }, path),
    mass: numberIn(input.potLife, 'mass', 'kg', cupRange, path),
    temperature: numberIn(input.potLife, 'temperature', 'K', shopRange, path),
    ends: input.potLife.ends,
  };
  if (!ends.includes(point.ends)) throw new RangeError(`ends must be one of ${ends.join(', ')}`);
  const energy = numberIn(input, 'activationEnergy', 'J/mol', { from: 10_000, to: 150_000 });
  const { reactionHeat = usualHeat, specificHeat = usualSpecificHeat } = input;
  const heat = {
    reactionHeat: numberIn({ reactionHeat }, 'reactionHeat', 'J/kg', { from: 10_000, to: 800_000 }),
    specificHeat: numberIn({ specificHeat }, 'specificHeat', 'J/(kg K)', { from: 500, to: 5000 }),
  };
  const key = JSON.stringify([point, energy, heat]);
  const model = models.get(key) ?? calibrated(point, energy, heat);
  // Calibrating takes some forty runs: without this every redraw would do it again.
  if (models.size >= keptModels) models.clear();
  models.set(key, model);
  return model;
}

function shopOf(input: ResinInShop) {
  return {
    resinTemperature: numberIn(input, 'resinTemperature', 'K', shopRange),
    shopTemperature: numberIn(input, 'shopTemperature', 'K', shopRange),
  };
}

function riseShareOf(model: CupModel, mass: number, shop: ReturnType<typeof shopOf>): number {
  const warmest = Math.max(shop.resinTemperature, shop.shopTemperature);
  const rise = peakInCup({ ...model, ...shop, mass }).temperature - warmest;
  return Math.max(0, (rise * model.specificHeat) / model.reactionHeat);
}

/**
 * How long this cup lasts, here and now: from the data sheet's own pot life by the heat balance of a cup.
 * Warmer never lasts longer; a bigger cup never does while the resin is no colder than the shop.
 *
 * @param potLife the data sheet's: `time` s, `mass` kg, `temperature` K, and what `ends` it
 * @param activationEnergy that pot lives show, J/mol, 10,000 to 150,000
 * @param reactionHeat J/kg; 400,000 when not given
 * @param specificHeat J/(kg K); 2,000 when not given
 * @param mass of mixed resin in the cup, kg, 0.001 to 100
 * @param resinTemperature K, 233.15 to 393.15, as hardener goes in
 * @param shopTemperature K, the same range
 * @returns `time` to the data sheet's end, s; `usable` of it, s; `riseShare`, how hot it gets when it is left
 *   standing as a share of the adiabatic rise; `heat`, what that comes to: under 0.1 'staysCool', from 0.3 on
 *   'runsAway', between them 'getsHot'
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: dT/dt = (H/c) d(alpha)/dt - (U A/(m c))(T - shop), d(alpha)/dt = k exp(-Ea/RT)(c0 + alpha)(1 - alpha)^2
 * until gel; k and Ea so that the sheet's point and the activation energy come out.
 * Source: Horie 1970, from memory, for the reaction; heat loss and thresholds common practice, no source.
 *
 * @example
 * // 20 min to its peak for 100 g at 25 C. How long do 500 g last?
 * potLifeNow({
 *   potLife: { time: 1200, mass: 0.1, temperature: 298.15, ends: 'peakExotherm' },
 *   activationEnergy: 55000,
 *   mass: 0.5,
 *   resinTemperature: 298.15,
 *   shopTemperature: 298.15,
 * })
 * // => { time: 836.4, usable: 543.7, riseShare: 0.7589, heat: 'runsAway' }
 */
export function potLifeNow(input: ResinInShop & { mass: number }): {
  time: number;
  usable: number;
  riseShare: number;
  heat: CupHeat;
} {
  const mass = numberIn(input, 'mass', 'kg', cupRange);
  const shop = shopOf(input);
  const model = modelOf(input);
  const time = model.factor * timeInCup({ ...model, ...shop, mass }, model.until);
  const usable = input.potLife.ends === 'viscosityDoubled' ? time : usableOfGel * time;
  const riseShare = riseShareOf(model, mass, shop);
  return { time, usable, riseShare, heat: heatAt(riseShare) };
}

/**
 * The heaviest cup that does not run away when it is left standing.
 *
 * @param potLife as in `potLifeNow`, and so are the others
 * @param heaviest that is asked about, kg, 0.001 to 100
 * @returns kg, at most `heaviest`; 0 when even 1 g runs away
 * @throws RangeError naming the field that is missing or out of range
 *
 * Formula: the mass at which `riseShare` of `potLifeNow` reaches 0.3.
 * Source: as `potLifeNow`; the threshold is common practice, no source.
 *
 * @example
 * // 20 min to its peak for 100 g at 25 C. Of up to 3 kg, how much does not run away?
 * heaviestCoolCup({
 *   potLife: { time: 1200, mass: 0.1, temperature: 298.15, ends: 'peakExotherm' },
 *   activationEnergy: 55000,
 *   heaviest: 3,
 *   resinTemperature: 298.15,
 *   shopTemperature: 298.15,
 * })
 * // => 0.09969
 */
export function heaviestCoolCup(input: ResinInShop & { heaviest: number }): number {
  const heaviest = numberIn(input, 'heaviest', 'kg', cupRange);
  const shop = shopOf(input);
  const model = modelOf(input);
  const room = (log: number) => runsAwayFrom - riseShareOf(model, Math.exp(log), shop);
  const [low, high] = [Math.log(cupRange.from), Math.log(heaviest)];
  if (room(high) >= 0) return heaviest;
  if (room(low) < 0) return 0;
  return Math.exp(crossing(room, { low, high, within: 1e-4 }));
}
