import type { BuildState } from '#shared/record/build-state.ts';
import type { StageName } from '#shared/record/checklist.ts';

/** When a stage of the first round was through; undefined when a tick of it came later than the work. */
function throughAt({ stages }: BuildState, name: StageName): number | undefined {
  const stage = stages.find((s) => s.stage === name && s.round === 1);
  if (!stage?.done || stage.steps.length === 0) return undefined;
  if (stage.steps.some((s) => s.done?.timeNotSeen)) return undefined;
  return Math.max(...stage.steps.map((s) => s.done?.at ?? 0));
}

const between = (from: number | undefined, to: number | undefined): number | undefined =>
  from !== undefined && to !== undefined && to > from ? (to - from) / 1000 : undefined;

/** From the first cup poured out on the cloth to the end of wet-out, s */
export function wetOutTime(state: BuildState): number | undefined {
  const emptied = state.cups.filter((c) => c.round === 1).flatMap((c) => c.emptyAt ?? []);
  return emptied.length === 0 ? undefined : between(Math.min(...emptied), throughAt(state, 'wetOut'));
}

/** From the end of wet-out to the end of wrapping, s */
export const wrapTime = (state: BuildState): number | undefined =>
  between(throughAt(state, 'wetOut'), throughAt(state, 'wrap'));
