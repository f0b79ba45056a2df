import { show } from '#app/state/show.ts';
import type { ResinSystem } from '#shared/record/resin-system.ts';
import { type CupLife, heaviestCup } from './cup-life.ts';
import { inCups } from './mix-words.ts';

/** No cup smaller than this is worth mixing, kg (common practice, no source). */
const smallest = 0.02;
/** Under this resin is too thick to wet cloth; over the second hardly a cup can be used, K (common practice, no source). */
const thickUnder = 288.15;
const hotOver = 308.15;

export const heatWords: Record<CupLife['heat'], string> = {
  staysCool: 'stays cool',
  getsHot: 'gets hot',
  runsAway: 'will run away',
};

/** '4 cups of 50 g', none heavier than what does not run away; nothing where no cup is small enough. */
export function cupsInstead(resin: ResinSystem, life: CupLife): string | undefined {
  const { mass, resin: warm, air } = life.basis;
  const heaviest = Math.min(resin.largestCup, heaviestCup(resin, { mass, resin: warm, air, assumed: false }));
  if (heaviest < smallest) return undefined;
  const cups = Math.ceil(mass / heaviest - 1e-9);
  return cups > 1 ? `${inCups(cups)} of ${show(mass / cups, 'mass', 0)}` : undefined;
}

/** What to do about a cup that does not stay cool; nothing for one that does. */
export function heatAdvice(resin: ResinSystem, life: CupLife): string | undefined {
  if (life.heat === 'staysCool') return undefined;
  if (life.heat === 'getsHot')
    return 'It warms itself as it stands: pour it out flat as soon as it is stirred.';
  const instead = cupsInstead(resin, life);
  return instead
    ? `Left standing it heats itself faster than it can cool, and smokes. Mix ${instead} in place of this one, one after the other, and pour each out flat at once.`
    : 'Left standing it heats itself faster than it can cool, and smokes. Pour it out flat as soon as it is stirred.';
}

/** What a shop far from usual does to resin. */
export function shopWords({ basis }: CupLife): string | undefined {
  const cold = Math.min(basis.resin, basis.air);
  const warm = Math.max(basis.resin, basis.air);
  if (cold < thickUnder) {
    return `At ${show(cold, 'temperature', 0)} resin is too thick to wet cloth and may never cure through: warm the resin and the shop to ${show(thickUnder, 'temperature', 0)} first.`;
  }
  if (warm > hotOver) {
    return `At ${show(warm, 'temperature', 0)} little of the pot life is left: mix small, in the cool of the day, or use a slower hardener.`;
  }
  return undefined;
}
