import {
  type CureCounting,
  type CureProgress,
  cureCounting,
  cureProgress,
  glassTransitionReached,
  heatForTransition,
  type Reading,
  shareReachable,
} from '#calc';
import type { BuildHeader } from '#shared/record/build.ts';
import { serviceMargin } from '#shared/reference/service-margin.ts';

/** What of a build its cure is judged by. */
export interface Tube extends Pick<BuildHeader, 'resin' | 'serviceTemperature' | 'mandrel'> {
  /** What it had in oven loads before this one, in the same round */
  earlier?: readonly Reading[][];
}

/** What a resin's sheet and its plan ask for, as calc takes it. */
export interface Asked {
  curePoints: BuildHeader['resin']['curePoints'];
  /** Glass transition wanted, and the resin's own highest, K */
  wanted?: number | undefined;
  own?: number | undefined;
}

/** The cure of one tube, counted to the last reading. */
export interface TubeCure {
  resin: string;
  asked: Asked;
  counting: CureCounting;
  progress: CureProgress;
}

export type Cure =
  /** Of the tube that is furthest from done. `assumed`: its sheet gives one time only, counted on the safe side. */
  | { known: true; share: number; resin: string; assumed: boolean; slowest: TubeCure; all: TubeCure[] }
  | { known: false; why: 'noCurePoints' | 'curePointsDisagree' | 'noTube' };

export const wantedTransition = ({ serviceTemperature }: Pick<Tube, 'serviceTemperature'>) =>
  serviceTemperature === undefined ? undefined : serviceTemperature + serviceMargin;

function cureOfTube(tube: Tube, runs: readonly Reading[][]): TubeCure {
  const { name, curePoints, glassTransition } = tube.resin;
  const asked: Asked = { curePoints, wanted: wantedTransition(tube), own: glassTransition };
  const none: CureProgress = { share: 0, hottest: 0 };
  const progress = [...(tube.earlier ?? []), ...runs].reduce(
    (before, readings) => cureProgress({ readings, ...asked, before }),
    none,
  );
  return { resin: name, asked, counting: cureCounting(asked), progress };
}

/** How far the cure time is used, by what the coldest part was at. */
export function cureOf(tubes: readonly Tube[], runs: readonly Reading[][]): Cure {
  if (tubes.some((t) => t.resin.curePoints.length === 0)) return { known: false, why: 'noCurePoints' };
  try {
    const all = tubes.map((tube) => cureOfTube(tube, runs));
    const [first, ...others] = all;
    if (!first) return { known: false, why: 'noTube' };
    const slowest = others.reduce((a, b) => (b.progress.share < a.progress.share ? b : a), first);
    const assumed = slowest.asked.curePoints.length === 1;
    return { known: true, share: slowest.progress.share, resin: slowest.resin, assumed, slowest, all };
  } catch (error) {
    // Times on a data sheet that no one energy fits: hotter that takes longer, or one temperature twice.
    if (error instanceof RangeError) return { known: false, why: 'curePointsDisagree' };
    throw error;
  }
}

/** Heat that the wanted glass transition asks for, K; undefined where none is wanted */
export const heatNeeded = ({ wanted, own }: Asked): number | undefined =>
  wanted === undefined ? undefined : heatForTransition({ wanted, own });

/** How far it can come without more heat than this; 1 is whole. */
export const reachableAt = (hottest: number, { wanted, own }: Asked): number =>
  wanted === undefined ? 1 : shareReachable({ hottest, wanted, own });

/** The hottest that the coldest part has been, and what becomes of it. */
export interface Heat {
  /** K */
  hottest: number;
  /** Glass transition it ends at, K */
  becomes: number;
  wanted?: number | undefined;
  own?: number | undefined;
  /** Heat that the wanted one asks for, K */
  needs?: number | undefined;
}

const hottestIn = (runs: readonly Reading[][]): number =>
  runs.reduce((most, run) => run.reduce((m, r) => Math.max(m, r.temperature), most), 0);

/** Of the tube that is furthest from what it wants; undefined while nothing was read. */
export function heatOf(tubes: readonly Tube[], runs: readonly Reading[][]): Heat | undefined {
  const heats = tubes.flatMap((tube): Heat[] => {
    const hottest = Math.max(hottestIn(runs), hottestIn(tube.earlier ?? []));
    if (hottest === 0) return [];
    const [wanted, own] = [wantedTransition(tube), tube.resin.glassTransition];
    const becomes = glassTransitionReached({ hottest, own });
    return [{ hottest, becomes, wanted, own, needs: heatNeeded({ curePoints: [], wanted, own }) }];
  });
  const room = (h: Heat) => (h.wanted === undefined ? Number.POSITIVE_INFINITY : h.becomes - h.wanted);
  return heats.sort((a, b) => room(a) - room(b))[0];
}
