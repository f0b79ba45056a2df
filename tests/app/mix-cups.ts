import type { CupState } from '#shared/record/cup-state.ts';
import type { ResinSystem } from '#shared/record/resin-system.ts';
import { starterCloths } from '#shared/reference/starter-cloths.ts';

/** 100:30, off by 3 % at most, cups of 100 g. */
export const slow: ResinSystem = {
  name: 'Laminating epoxy',
  hardener: 'SLOW',
  lot: '7',
  ratio: { by: 'weight', phr: 30 },
  resinDensity: 1150,
  hardenerDensity: 970,
  curedDensity: 1180,
  tolerance: 0.03,
  largestCup: 0.1,
  potLife: { time: 4500, mass: 0.15, temperature: 298.15, ends: 'gel' },
  curePoints: [],
};

const [cloth] = Object.values(starterCloths);
if (!cloth) throw new Error('the starter shelf has no cloth');
export const anyCloth = cloth;

export function cup(change: Partial<CupState> = {}): CupState {
  return {
    cup: 'cup-1',
    number: 1,
    of: 1,
    round: 1,
    startedAt: 1000,
    root: 'root-1',
    wanted: { resin: 0.07, hardener: 0.021 },
    holds: 0.1,
    resin: 0,
    hardener: 0,
    pours: [],
    ...change,
  };
}
