import { buildName } from '#app/laying-up/clocks/clock-list.ts';
import { isMixed, lastsOnFilm, type WetCup } from '#app/laying-up/clocks/cup-clock.ts';
import { filmFactor } from '#app/laying-up/mix/recipe.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
import type { Inside } from './done-three.ts';
import { gelledAt } from './oven-acts.ts';
import { firstAt } from './oven-lag.ts';
import { litOf, type OvenSeries } from './oven-series.ts';

/** Over this resin flows too little for tape to press it together (common practice, no source). */
export const flowsTo = 0.7;

/** Whether the resin could still flow when the tape began to pull. */
export interface TapeBegins {
  build: string;
  tape: string;
  /** Where the tape begins to shrink, K */
  from: number;
  /** When the part got there, ms; undefined while it has not */
  at?: number;
  /** Share of the film life used then, or by the last reading */
  used: number;
  /** Gel was seen before that. */
  gelled: boolean;
  tooLate: boolean;
}

/**
 * Share of a cup's life used up to a time, ms, as the shop's clock counts it. The heat of the oven is left out: it
 * thins resin first and hardens it later.
 */
function filmUsed(state: BuildState, cup: WetCup, until: number): number {
  const film = cup.basis?.film ?? filmFactor * cup.usableLife;
  const empty = Math.min(cup.emptyAt ?? until, until);
  const left = lastsOnFilm(state, cup, empty) - (until - cup.hardenerAt) / 1000;
  return Math.max(0, 1 - left / film);
}

export function tapeBegins(
  load: OvenState,
  { state, round }: Inside,
  series: OvenSeries,
): TapeBegins | undefined {
  const { tape } = state.header;
  const cups = state.cups.filter(isMixed).filter((c) => c.round === round && c.discardedAt === undefined);
  const own = series.parts.find((s) => s.channel.build === state.header.id && s.readings.length > 0);
  const read = own?.readings ?? series.coldest;
  const last = read.at(-1);
  if (!tape || cups.length === 0 || !last) return undefined;
  const reached = firstAt(read, tape.shrinksFrom);
  const until = litOf(load) + (reached ?? last.time) * 1000;
  const used = Math.max(...cups.map((cup) => filmUsed(state, cup, until)));
  const gel = gelledAt(state, Math.min(...cups.map((c) => c.hardenerAt)));
  const gelled = gel !== undefined && gel <= until;
  return {
    build: state.header.id,
    tape: tape.name,
    from: tape.shrinksFrom,
    ...(reached !== undefined && { at: until }),
    used,
    gelled,
    tooLate: gelled || used > flowsTo,
  };
}

/** With its tube's name where there are several: ' on Boom no. 2'. */
export interface NamedTape {
  tape: TapeBegins;
  name: string;
}

export function tapesOf(load: OvenState, inside: readonly Inside[], series: OvenSeries): NamedTape[] {
  return inside.flatMap((one) => {
    const tape = tapeBegins(load, one, series);
    const name = inside.length > 1 ? ` on ${buildName(one.state)}` : '';
    return tape ? [{ tape, name }] : [];
  });
}
