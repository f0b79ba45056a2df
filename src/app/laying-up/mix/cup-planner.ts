import { isMixed, lastsOnFilm, type WetCup } from '#app/laying-up/clocks/cup-clock.ts';
import { shopNow } from '#app/laying-up/clocks/shop-now.ts';
import { partMasses } from '#app/state/masses.ts';
import { cupTimes, lifeEnd } from '#calc';
import type { BuildState } from '#shared/record/build-state.ts';
import { type CupLife, lifeOfCup, massOf } from './cup-life.ts';
import { planOf } from './mix-of-build.ts';

/** From first contact until it is poured out, s (common practice, no source) */
export const stirs = 180;

export interface PlannedCup {
  number: number;
  /** kg */
  mass: number;
  /** Time of day, ms */
  mixAt: number;
  emptyAt: number;
  /** As it was, as it is, or as it should be. */
  is: 'past' | 'standing' | 'toCome';
}

export interface CupPlan {
  cups: PlannedCup[];
  /** kg of mixed resin worked into cloth in a second: as entered, or as this build has shown */
  rate: number;
  shown: boolean;
  /** Of each cup to come; nothing when all is mixed */
  life?: CupLife;
  /** Tape all on, ms: from the cup that is used up first */
  tapeBy?: number;
  /** What stands in the way. */
  trouble?: 'noCup' | 'tooSlow' | 'tapeTooSoon';
}

const wetFor = 24 * 3600_000;

/** How fast the emptied cups of this round went onto the cloth, kg/s. */
export function shownRate(state: BuildState): number | undefined {
  const emptied = state.cups.filter(
    (c): c is WetCup & { emptyAt: number } =>
      isMixed(c) && c.round === state.rounds && c.emptyAt !== undefined && c.discardedAt === undefined,
  );
  const mass = emptied.reduce((sum, c) => sum + massOf(state, c), 0);
  const time = emptied.reduce((sum, c) => sum + Math.max(1, (c.emptyAt - c.hardenerAt) / 1000 - stirs), 0);
  return mass > 0 ? mass / Math.max(time, mass / fastest) : undefined;
}

/** Nobody wets cloth faster than this, kg/s: a cup ticked off late must not say so. */
const fastest = 0.01;

/** Mixed resin to a square meter of cloth, kg/m2, for a rate that is told in cloth. */
export function resinToArea(state: BuildState): number | undefined {
  const planned = planOf(state);
  const area = partMasses(state).cloth / state.header.cloth.arealWeight;
  return planned.ok && area > 0 ? planned.plan.total / area : undefined;
}

function sizes(state: BuildState, rate: number, now: number) {
  const { fewest = 0, most = 0 } = planned(state) ?? {};
  let slow: { cups: number; mass: number; life: CupLife } | undefined;
  for (let cups = fewest; cups <= most && cups > 0; cups++) {
    const mass = planned(state, cups)?.each.total ?? 0;
    const life = lifeOfCup(state.header.resin, { mass, ...shopNow(state, now) });
    const inTime = stirs + mass / rate <= life.usable;
    if (inTime && life.heat !== 'runsAway') return { cups, mass, life, fits: true };
    slow = { cups, mass, life };
  }
  return slow && { ...slow, fits: false };
}

function planned(state: BuildState, wish?: number) {
  const result = planOf(state, wish);
  return result.ok ? result.plan : undefined;
}

/** How many cups of what size, and when each is mixed, from what is entered and what this round has shown so far. */
export function planCups(state: BuildState, entered: number | undefined, now: number): CupPlan | undefined {
  const measured = shownRate(state);
  const rate = measured ?? entered;
  if (rate === undefined) return undefined;
  const begun = state.cups
    .filter((c) => c.round === state.rounds && c.discardedAt === undefined)
    .filter(isMixed)
    .map((c): PlannedCup => {
      const mass = massOf(state, c);
      const due = c.hardenerAt + 1000 * (stirs + mass / rate);
      return {
        number: c.number,
        mass,
        mixAt: c.hardenerAt,
        emptyAt: c.emptyAt ?? Math.max(now, due),
        is: c.emptyAt === undefined ? 'standing' : 'past',
      };
    });
  const size = sizes(state, rate, now);
  const free = Math.max(now, ...begun.filter((c) => c.is === 'standing').map((c) => c.emptyAt));
  const toCome = cupTimes({
    cups: Array.from({ length: size?.cups ?? 0 }, () => ({ mass: size?.mass ?? 0 })),
    workingRate: rate,
    stir: stirs,
    begin: 0,
  });
  const first = planned(state)?.next.number ?? 1;
  const cups = [
    ...begun,
    ...toCome.map(
      ({ mixAt, emptyAt }, i): PlannedCup => ({
        number: first + i,
        mass: size?.mass ?? 0,
        mixAt: free + 1000 * mixAt,
        emptyAt: free + 1000 * emptyAt,
        is: 'toCome',
      }),
    ),
  ];
  const tapeBy = tapeOf(state, cups, size?.life, now);
  const last = cups.at(-1)?.emptyAt ?? 0;
  const trouble =
    size && !size.fits
      ? size.life.heat === 'runsAway' && size.life.usable > stirs + size.mass / rate
        ? 'noCup'
        : 'tooSlow'
      : tapeBy !== undefined && size && last > tapeBy
        ? 'tapeTooSoon'
        : undefined;
  return {
    cups,
    rate,
    shown: measured !== undefined,
    ...(size && { life: size.life }),
    ...(tapeBy !== undefined && { tapeBy }),
    ...(trouble && { trouble }),
  };
}

/** The earliest of all deadlines; of a cup to come it follows from its time in the cup, then the film. */
function tapeOf(state: BuildState, cups: readonly PlannedCup[], life: CupLife | undefined, now: number) {
  const wet = state.cups
    .filter((c) => c.round === state.rounds && c.discardedAt === undefined)
    .filter(isMixed)
    .filter((c) => now - c.hardenerAt < wetFor)
    .map((c) => c.hardenerAt + 1000 * lastsOnFilm(state, c, c.emptyAt ?? now));
  const fresh = cups
    .filter((c) => c.is === 'toCome')
    .flatMap(({ mixAt, emptyAt }) => {
      if (!life) return [];
      const out = Math.min((emptyAt - mixAt) / 1000, life.usable);
      const spans = [
        { from: 0, life: life.usable },
        { from: out, life: life.basis.film },
      ];
      return [mixAt + 1000 * lifeEnd({ spans })];
    });
  const all = [...wet, ...fresh];
  return all.length > 0 ? Math.min(...all) : undefined;
}
