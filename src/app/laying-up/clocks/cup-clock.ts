import { filmFactor } from '#app/laying-up/mix/recipe.ts';
import { type LifeSpan, lifeEnd, timeAtTemperature } from '#calc';
import type { BuildState } from '#shared/record/build-state.ts';
import type { CupState } from '#shared/record/cup-state.ts';
import { surroundingsOf } from './shop-now.ts';

export type WetCup = CupState & { hardenerAt: number; usableLife: number };

export const isMixed = (cup: CupState): cup is WetCup =>
  cup.hardenerAt !== undefined && cup.usableLife !== undefined;

interface Warmth {
  /** s after first contact */
  from: number;
  /** K */
  resin: number;
  air: number;
}

/**
 * Temperatures as they were entered since hardener went in. Where only the air was read again, the resin is
 * taken to have moved with it.
 */
function warmthOf(state: BuildState, { hardenerAt, basis }: WetCup): Warmth[] {
  if (!basis) return [];
  const history: Warmth[] = [{ from: 0, resin: basis.resin, air: basis.air }];
  let last: Pick<Warmth, 'resin' | 'air'> = basis;
  for (const { happenedAt, resin, air } of surroundingsOf(state)) {
    if (happenedAt <= hardenerAt || (resin === undefined && air === undefined)) continue;
    const moved = air === undefined ? 0 : air - last.air;
    last = { resin: resin ?? last.resin + moved, air: air ?? last.air };
    history.push({ from: (happenedAt - hardenerAt) / 1000, ...last });
  }
  return history;
}

/** A life at the temperature it was reckoned for, at another. */
function movedLife(time: number, { basis }: WetCup, temperature: number): number {
  if (!basis) return time;
  return timeAtTemperature({ time, at: basis.resin, temperature, activationEnergy: basis.energy });
}

function inCupSpans(state: BuildState, cup: WetCup): LifeSpan[] {
  const warmth = warmthOf(state, cup);
  if (warmth.length === 0) return [{ from: 0, life: cup.usableLife }];
  return warmth.map(({ from, resin }) => ({ from, life: movedLife(cup.usableLife, cup, resin) }));
}

/** A film takes the warmth of the shop at once. */
function onFilmSpans(state: BuildState, cup: WetCup, from: number): LifeSpan[] {
  const fresh = cup.basis?.film ?? filmFactor * cup.usableLife;
  const warmth = warmthOf(state, cup);
  if (warmth.length === 0) return [{ from, life: fresh }];
  const spans = warmth.map((w) => ({ from: w.from, life: movedLife(fresh, cup, w.air) }));
  const begun = spans.filter((s) => s.from <= from).at(-1)?.life ?? fresh;
  return [{ from, life: begun }, ...spans.filter((s) => s.from > from)];
}

/** s from first contact that it can be worked while it stands in its cup */
export function lastsInCup(state: BuildState, cup: WetCup): number {
  return lifeEnd({ spans: inCupSpans(state, cup) });
}

/** s from first contact until it is used up: in the cup until it is emptied, then on the film. */
export function lastsOnFilm(state: BuildState, cup: WetCup, emptied: number): number {
  const spans = inCupSpans(state, cup);
  const inCup = lifeEnd({ spans });
  // A corrected time, or a phone clock set back, must not make it negative.
  const out = Math.max(0, (emptied - cup.hardenerAt) / 1000);
  if (out >= inCup) return inCup;
  return lifeEnd({ spans: [...spans.filter((s) => s.from < out), ...onFilmSpans(state, cup, out)] });
}

/** Why a cup lasts as long as it does. */
export interface CupWhy {
  /** kg */
  mass: number;
  /** Resin as last entered, K */
  temperature: number;
  /** s it lasts, and would by the data sheet's own point */
  lasts: number;
  sheet: number;
  assumed: boolean;
}

/** Nothing for a cup that an older version started. */
export function whyOf(state: BuildState, cup: WetCup): CupWhy | undefined {
  const warmest = warmthOf(state, cup).at(-1);
  if (!cup.basis || !warmest) return undefined;
  return {
    mass: cup.basis.mass,
    temperature: warmest.resin,
    lasts: lastsInCup(state, cup),
    sheet: cup.basis.sheet,
    assumed: cup.basis.assumed === true && warmest.from === 0,
  };
}
