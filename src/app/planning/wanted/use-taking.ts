import { type Signal, useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { tubeMassOf } from '#app/planning/carry/sections-along.ts';
import type { CheckedPlan } from '#app/planning/loads/margins-of-plan.ts';
import type { WallState } from '#app/planning/wall/wall-edits.ts';
import type { Doc } from '#app/state/documents.ts';
import { isKept } from './steps.tsx';
import { type Stretch, stretchesOf } from './stretches.ts';
import { massWith, pliesToCut, type Station, withPlies } from './take.ts';
import { type Asking, pliesToday } from './wanted-input.ts';
import type { Wanted } from './wanted-worker.ts';

/** What was found, made ready to be taken into the wall. */
export interface Taking {
  wanted: Wanted;
  stretches: readonly Stretch[];
  /** Plies of today at each station. */
  today: readonly number[];
  /** As it would be cut: wanted where taken, today's where kept. */
  stations: readonly Station[];
  /** Each ply ends a station later than the steps show. */
  later: boolean;
  next: WallState;
  /** kg; undefined where a density is missing */
  masses: { taken: number | undefined; constant: number | undefined; today: number | undefined };
  /** Most plies of what would be cut. */
  most: number;
}

interface Props {
  doc: Doc<'plan'>;
  checked: CheckedPlan;
  state: WallState;
  asking: Asking;
  wanted: Wanted | undefined;
}

/** First stations of the stretches that stay as they are. */
export type Kept = Signal<ReadonlySet<number>>;

export function useTaking({ doc, checked, state, asking, wanted }: Props): {
  taking: Taking | undefined;
  kept: Kept;
} {
  const kept: Kept = useSignal<ReadonlySet<number>>(new Set());
  const found = useMemo(() => {
    kept.value = new Set();
    if (!wanted) return undefined;
    const places = wanted.stations.map(({ at }) => at);
    const cut = pliesToCut({ doc: doc.doc, plan: doc.body, state, asking, wanted });
    const later = cut.some((n, i) => n !== wanted.stations[i]?.plies);
    return {
      places,
      cut,
      later,
      stretches: stretchesOf(wanted),
      today: pliesToday(checked.tube, asking, places),
    };
  }, [wanted, state]);
  const taking = useMemo((): Taking | undefined => {
    if (!found || !wanted) return undefined;
    const { places, cut, stretches, today, later } = found;
    const stays = new Set(stretches.filter((s) => isKept(kept.value, s)).flatMap((s) => s.stations));
    const stations = places.map((at, i) => ({ at, value: (stays.has(i) ? today[i] : cut[i]) ?? 0 }));
    const most = Math.max(...stations.map(({ value }) => value));
    const even = stations.map(({ at }) => ({ at, value: most }));
    const next = withPlies(state, asking, stations);
    const masses = {
      taken: massWith(doc.body, next),
      constant: massWith(doc.body, withPlies(state, asking, even)),
      today: tubeMassOf(checked.tube),
    };
    return { wanted, stretches, today, stations, later, next, masses, most };
  }, [found, kept.value]);
  return { taking, kept };
}
