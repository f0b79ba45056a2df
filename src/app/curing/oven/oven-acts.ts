import { roleTick } from '#app/laying-up/build/ticks.ts';
import { record } from '#app/state/record.ts';
import { theStore } from '#app/state/shop.ts';
import { recordUndoable } from '#app/state/undo.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { EntryDraft } from '#shared/record/entry.ts';
import { holding } from '#shared/record/journal.ts';
import type { OvenState } from '#shared/record/oven-state.ts';

const subjectOf = ({ header }: OvenState) => header.id;

export const ovenOff = (state: OvenState): Promise<boolean> =>
  record({ kind: 'ovenStage', subject: subjectOf(state), stage: 'off' });

/** The load is over with its last tube out. */
export const outOfOven = (state: OvenState): Promise<boolean> =>
  record([
    { kind: 'ovenStage', subject: subjectOf(state), stage: 'out' },
    { kind: 'closed', subject: subjectOf(state) },
  ]);

function rootsOf(
  state: OvenState,
  is: (entry: ReturnType<typeof holding>[number]['entry']) => boolean,
): EntryDraft[] {
  return holding(state.facts)
    .filter((f) => is(f.entry))
    .map((f) => ({ kind: 'retracted', subject: subjectOf(state), corrects: f.root }));
}

export const undoOff = (state: OvenState): Promise<boolean> =>
  record(rootsOf(state, (e) => e.kind === 'ovenStage' && e.stage === 'off'));

export const undoOut = (state: OvenState): Promise<boolean> =>
  record(rootsOf(state, (e) => (e.kind === 'ovenStage' && e.stage === 'out') || e.kind === 'closed'));

/** Gel ends turning: the check, and with it the step of the route that waits for it. */
export function gelSeen(build: BuildState, round: number): Promise<boolean> {
  const tick = roleTick(build, 'rotationOff', { round, newId: () => theStore().newId() });
  const check: EntryDraft = { kind: 'check', subject: build.header.id, what: 'gel', outcome: 'gelled' };
  return recordUndoable(tick.some((d) => d.kind === 'check') ? tick : [...tick, check], { said: 'Gel seen' });
}

/** When gel was seen on a tube since it went in, ms */
export function gelledAt(build: BuildState, since: number): number | undefined {
  return build.checks.find(
    ({ entry: e }) => e.what === 'gel' && e.outcome === 'gelled' && e.happenedAt >= since,
  )?.entry.happenedAt;
}
