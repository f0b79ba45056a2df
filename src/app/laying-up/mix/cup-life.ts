import { shopNow } from '#app/laying-up/clocks/shop-now.ts';
import { type CupHeat, heaviestCoolCup, potLifeNow } from '#calc';
import type { BuildState } from '#shared/record/build-state.ts';
import type { CupState } from '#shared/record/cup-state.ts';
import type { LifeBasis } from '#shared/record/entry.ts';
import type { ResinSystem } from '#shared/record/resin-system.ts';
import { filmLife, hardenerPerResin, usableLife } from './recipe.ts';
import { lifeEnergy } from './resin-energy.ts';

export interface CupLife {
  /** s that it can be worked in the cup */
  usable: number;
  basis: LifeBasis;
  heat: CupHeat;
  /** A data sheet whose figures no cup can be reckoned from: its own life stands, moved for temperature alone. */
  bySheetAlone: boolean;
}

export interface ShopOfCup {
  mass: number;
  /** K */
  resin: number;
  air: number;
  assumed: boolean;
}

/** What a cup comes to when it is mixed, kg. */
export function massOf({ header }: BuildState, cup: CupState): number {
  if (cup.hardener > 0) return cup.resin + cup.hardener;
  if (cup.resin > 0) return cup.resin * (1 + hardenerPerResin(header.resin));
  return cup.wanted.resin + cup.wanted.hardener;
}

function shopFor(resin: ResinSystem, shop: Omit<ShopOfCup, 'mass'>) {
  return {
    potLife: resin.potLife,
    activationEnergy: lifeEnergy(resin).energy,
    reactionHeat: heatOf(resin),
    specificHeat: resin.specificHeat,
    resinTemperature: shop.resin,
    shopTemperature: shop.air,
  };
}

/** Heat to a mole of epoxide, J: Horie 1970 has 100 to 110 kJ, from memory. */
const heatOfEpoxide = 100_000;

/** As the data sheet says, else from its equivalent weights, J/kg; nothing where neither is known. */
function heatOf({
  reactionHeat,
  ratio,
  epoxideEquivalent,
  amineEquivalent,
}: ResinSystem): number | undefined {
  if (reactionHeat !== undefined) return reactionHeat;
  const epoxide = ratio.by === 'equivalents' ? ratio.epoxide : epoxideEquivalent;
  const amine = ratio.by === 'equivalents' ? ratio.amineHydrogen : amineEquivalent;
  return epoxide !== undefined && amine !== undefined ? heatOfEpoxide / (epoxide + amine) : undefined;
}

/** Life of a cup of such a mass, resin and shop. */
export function lifeOfCup(resin: ResinSystem, { mass, resin: warm, air, assumed }: ShopOfCup): CupLife {
  const film = filmLife(resin, warm);
  const basis = {
    mass,
    resin: warm,
    air,
    energy: lifeEnergy(resin).energy,
    sheet: usableLife(resin),
    ...(assumed && { assumed }),
  };
  try {
    const { usable, heat } = potLifeNow({ ...shopFor(resin, { resin: warm, air, assumed }), mass });
    // No cup outlasts a film of the same resin.
    return { usable: Math.min(usable, film), basis: { ...basis, film }, heat, bySheetAlone: false };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    const usable = Math.min(usableLife(resin, warm), film);
    return { usable, basis: { ...basis, film }, heat: 'getsHot', bySheetAlone: true };
  }
}

/** Life of a cup of this build, from what was last entered of the shop. */
export function cupLife(state: BuildState, mass: number, now: number): CupLife {
  return lifeOfCup(state.header.resin, { ...shopNow(state, now), mass });
}

/** The heaviest cup that can be left standing, kg; 0 when even a small one runs away. */
export function heaviestCup(resin: ResinSystem, { mass, ...shop }: ShopOfCup): number {
  try {
    return heaviestCoolCup({ ...shopFor(resin, shop), heaviest: mass });
  } catch (error) {
    if (error instanceof RangeError) return mass;
    throw error;
  }
}
