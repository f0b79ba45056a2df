import { type ReadonlySignal, type Signal, useComputed, useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import type { BuildState } from '#shared/record/build-state.ts';
import { asItsLoads, expectedEach, gentleMass, mostBent, underOneKilogram } from './bend.ts';
import type { PlannedOfBuild } from './planned-of-build.ts';
import { firstSetup, fitted, type Held, heldFrom, type Setup } from './setup.ts';

/** Tenths of a kilogram: nobody hangs finer. */
const hangable = (kg: number) => Math.max(0.1, Math.round(kg * 10) / 10);

/** How much of what its loads do, or a weight of the builder's own. */
export type Times = 0.5 | 1 | 'own';

/** A test being planned: what is set, and what follows from it. */
export interface Planning {
  length: number;
  setup: ReadonlySignal<Setup>;
  times: Signal<Times>;
  /** Fields that hold what cannot be read. */
  wrongFields: Signal<ReadonlySet<string>>;
  wrong: ReadonlySignal<string | undefined>;
  hold: (held: Held) => void;
  change: (to: Partial<Setup>) => void;
}

function startSetup(state: BuildState, { tube, design }: PlannedOfBuild, length: number): Setup {
  const last = state.proofLoads.at(-1)?.entry;
  const held = heldFrom(last?.held);
  if (last && held) {
    const dials = state.proofLoads
      .filter(({ entry }) => entry.test === last.test)
      .map((f) => f.entry.station);
    const to = held.held === 'clamp0' ? length : held.to;
    return { ...held, to, hangAt: last.at, mass: last.mass, dials };
  }
  const first = firstSetup(length, 'rests', design && mostBent(design.solution).at);
  return tube && !design ? { ...first, mass: hangable(gentleMass(tube, first)) } : first;
}

/** What the loads ask to be hung in this setup, once; undefined where a weight there would not bend that place. */
export function asked({ tube, design }: PlannedOfBuild, setup: Setup) {
  return tube && design ? asItsLoads(tube, setup, design.solution) : undefined;
}

export function usePlanning(state: BuildState, planned: PlannedOfBuild): Planning | undefined {
  const length = state.header.tubeLength ?? 0;
  const set = useSignal(useMemo(() => startSetup(state, planned, Math.max(length, 0.05)), []));
  const times = useSignal<Times>(state.proofLoads.length > 0 || !planned.design ? 'own' : 1);
  const wrongFields = useSignal<ReadonlySet<string>>(new Set());
  const setup = useComputed(() => {
    const now = set.value;
    const once = times.value === 'own' ? undefined : asked(planned, now);
    return once && times.value !== 'own' ? { ...now, mass: hangable(once.mass * times.value) } : now;
  });
  const wrong = useComputed(() =>
    wrongFields.value.size > 0 ? 'Look at the figure that is wrong' : undefined,
  );
  if (length <= 0) return undefined;
  const change = (to: Partial<Setup>) => {
    if (to.mass !== undefined) times.value = 'own';
    const mass = to.mass ?? setup.peek().mass;
    const next = { ...set.peek(), ...to, mass };
    // The dial under the weight goes with it.
    const dials =
      to.hangAt !== undefined && !to.dials
        ? next.dials.map((dial) => (dial === set.peek().hangAt ? next.hangAt : dial))
        : next.dials;
    set.value = fitted({ ...next, dials }, length);
  };
  const hold = (held: Held) => {
    const hangAt = held === 'rests' && planned.design ? mostBent(planned.design.solution).at : undefined;
    set.value = { ...firstSetup(length, held, hangAt), mass: setup.peek().mass };
  };
  return { length, setup, times, wrongFields, wrong, hold, change };
}

/** What one kilogram does in this setup, and what is expected at each dial under all of it. */
export function expectedIn({ tube, counted }: PlannedOfBuild, setup: Setup) {
  if (!tube) return undefined;
  return {
    bent: underOneKilogram(tube, setup),
    down: (at: number) => (expectedEach(tube, setup, at) * setup.mass) / counted,
  };
}
