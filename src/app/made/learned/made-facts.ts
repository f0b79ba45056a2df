import { factorOf } from '#app/laying-up/proof/results.ts';
import { laminateByWeight } from '#app/made/results/by-weight.ts';
import type { AllSummaries } from '#app/state/all-summaries.ts';
import { ratioError, spread } from '#calc';
import type { RatingOf } from '#shared/record/entry.ts';
import type { BuildSummary, OvenSummary } from '#shared/record/summary.ts';

/** A build with what is computed from its facts; nothing is there that was not weighed, measured or read. */
export interface Made {
  build: BuildSummary;
  /** 'Sprit no. 2' */
  title: string;
  /** Resin as a share of resin and cloth, by weight */
  resinShare?: number;
  fiberVolume?: number;
  /** Tube without film left in it, kg */
  tube?: number;
  plyThickness?: number;
  /** Stiffness in proof tests over what the plan's wall foretold */
  stiffness?: number;
  /** The same around, from squeezes */
  ring?: number;
  /** Film that stayed inside, kg; 0 where the release has none */
  filmLeft?: number;
  /** Left in cups and on gloves, as weighed, kg a cup */
  lossPerCup?: number;
  /** Share of what reached the cloth that did not stay in it; known only beside weighed losses */
  squeezedOut?: number;
  /** All that was mixed and is not in the tube, kg a cup */
  totalLossPerCup?: number;
  /** How far each cup was off the ratio its sheet asks for. */
  ratioErrors: number[];
  /** kg/s of mixed resin laid down */
  workingRate?: number;
  /** By its own sensors, K and K/s */
  peak?: number;
  held?: number;
  steepest?: number;
}

function laminate(build: BuildSummary) {
  const { clothMass: cloth, curedMass: cured, filmLeft, core, fiberDensity, resinDensity } = build;
  const result = laminateByWeight({ cloth, cured, filmLeft, core, fiberDensity, resinDensity });
  return result.ok ? result.value : undefined;
}

/** Where the mixed resin went, as far as it was weighed. Less mixed than is in the tube is a slip, and tells nothing. */
function losses({ resinMixed: mixed, cups, leftover, wipings }: BuildSummary, kept: number | undefined) {
  const lost = leftover === undefined ? undefined : leftover + (wipings ?? 0);
  const perCup = cups > 0 && lost !== undefined ? { lossPerCup: lost / cups } : {};
  if (mixed === undefined || cups === 0 || kept === undefined || kept > mixed) return perCup;
  const total = { totalLossPerCup: (mixed - kept) / cups };
  const applied = lost === undefined ? undefined : mixed - lost;
  if (applied === undefined || applied < kept || applied <= 0) return { ...perCup, ...total };
  return { ...perCup, ...total, squeezedOut: 1 - kept / applied };
}

/** The hottest, the longest hold's mean and the steepest rise of all its oven loads. */
function cure(build: BuildSummary, ovens: ReadonlyMap<string, OvenSummary>) {
  const tubes = build.ovenLoads.flatMap(
    (load) => ovens.get(load)?.tubes.filter((t) => t.build === build.subject) ?? [],
  );
  const most = (values: (number | undefined)[]) => {
    const known = values.filter((v) => v !== undefined);
    return known.length === 0 ? undefined : Math.max(...known);
  };
  return {
    peak: most(tubes.map((t) => t.highest)),
    held: most(tubes.map((t) => t.held)),
    steepest: most(tubes.map((t) => t.steepest)),
  };
}

function filmLeft({ filmLeft: weighed, releaseKind }: BuildSummary): number | undefined {
  return weighed ?? (releaseKind === 'waxAndPva' || releaseKind === 'semiPermanent' ? 0 : undefined);
}

type Known<T> = { [K in keyof T]?: Exclude<T[K], undefined> };

function known<T extends object>(values: T): Known<T> {
  return Object.fromEntries(Object.entries(values).filter(([, v]) => v !== undefined)) as Known<T>;
}

/** kg/s; the rate is over the time from the first cup on the cloth to the end of wet-out */
function workingRate({ resinMixed, wetOutTime, ovenLoads }: BuildSummary): number | undefined {
  // Cups of a second round were not laid down in the first one's time.
  if (resinMixed === undefined || wetOutTime === undefined || ovenLoads.length > 1) return undefined;
  return resinMixed / wetOutTime;
}

export function madeOf(build: BuildSummary, ovens: ReadonlyMap<string, OvenSummary>): Made {
  const weighed = laminate(build);
  const { wall, plies } = build;
  return {
    build,
    title: `${build.name} no. ${build.number}`,
    ratioErrors: build.poured.map((cup) =>
      ratioError({
        resinPoured: cup.resin,
        hardenerPoured: cup.hardener,
        hardenerPerResin: cup.wanted,
      }),
    ),
    ...(weighed && {
      resinShare: weighed.resinShare,
      fiberVolume: weighed.fiberVolume,
      tube: weighed.tube,
    }),
    ...known({
      filmLeft: filmLeft(build),
      plyThickness: wall === undefined || plies === undefined ? undefined : wall / plies,
      stiffness: factorOf(build.proof ?? [])?.factor,
      ring: build.rings && spread({ values: build.rings }).median,
      workingRate: workingRate(build),
      ...losses(build, weighed && weighed.resin + (build.coreResin ?? 0)),
      ...cure(build, ovens),
    }),
  };
}

export const ratingOf = ({ build }: Made, what: RatingOf): number | undefined =>
  build.ratings.find((r) => r.what === what)?.value;

const kept = new WeakMap<BuildSummary, { made: Made; ovens: AllSummaries['ovens'] }>();

/** Every build with its results, newest first; kept until it or an oven load is written to. */
export function madeOfAll({ builds, ovens }: AllSummaries): Made[] {
  const byId = new Map(ovens.map((o) => [o.subject, o]));
  return builds.map((build) => {
    const before = kept.get(build);
    if (before?.ovens === ovens) return before.made;
    const made = madeOf(build, byId);
    kept.set(build, { made, ovens });
    return made;
  });
}
