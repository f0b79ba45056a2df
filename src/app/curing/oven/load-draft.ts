import { type Signal, signal } from '@preact/signals';
import { splitPostcure } from '#app/curing/cure/bands.ts';
import { type CureDraft, cureDraft, firstSchedule, scheduleOf } from '#app/curing/cure/cure-draft.ts';
import { fillCure } from '#app/curing/cure/cure-edits.ts';
import { presentStage } from '#app/laying-up/build/position.ts';
import { wetCups } from '#app/laying-up/clocks/tape-deadline.ts';
import { show } from '#app/state/show.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { stageNames } from '#shared/record/checklist.ts';
import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
import { starterSchedules } from '#shared/reference/starter-schedules.ts';
import { type ErrorDraft, errorDraft } from './error-draft.ts';
import { holdOf } from './oven-schedule.ts';

/** An oven load being set up. */
export interface LoadDraft {
  builds: Signal<ReadonlySet<string>>;
  /** Builds that go in without a sensor on them. */
  unread: Signal<ReadonlySet<string>>;
  schedule: Signal<string>;
  cure: CureDraft;
  errors: ErrorDraft;
}

export const isIn = ({ builds }: OvenState, { header, rounds }: BuildState): boolean =>
  builds.some((b) => b.build === header.id && b.round === rounds);

/** The oven load that a build of this round is in already, and not out of. */
export const loadOf = (state: BuildState, loads: readonly OvenState[]): OvenState | undefined =>
  loads.find((load) => load.outAt === undefined && isIn(load, state));

/**
 * Its route stands before wet-out, and no cup has its hardener: an empty mandrel, which may go in to be dried, but is
 * not a tube that cures.
 */
export function nothingWet(state: BuildState): boolean {
  const stage = presentStage(state)?.stage;
  const before = stage !== undefined && stageNames.indexOf(stage) < stageNames.indexOf('wetOut');
  return before && wetCups(state).length === 0;
}

/** Resin is wet on its cloth, its plan has shrink tape, and nothing of the taping was ticked in this round. */
export function tapeNotOn(state: BuildState): boolean {
  const taping = state.stages.filter((s) => s.stage === 'shrinkTape').at(-1);
  const begun = taping?.steps.some((s) => s.done !== undefined) ?? true;
  return state.header.tape !== undefined && !begun && wetCups(state).length > 0;
}

/** Its route stands at the oven, or resin lies wet on its cloth. */
export const wantsHeat = (state: BuildState): boolean =>
  presentStage(state)?.stage === 'cure' || wetCups(state).length > 0;

export interface ScheduleChoice {
  value: string;
  label: string;
  schedule: CureSchedule;
}

/** '66 °C, 3 h', 'Postcure 90 °C, 4 h' */
function scheduleSays(schedule: CureSchedule): string {
  const hold = holdOf(schedule);
  const free = schedule.stages[0]?.offMandrel ? 'Postcure ' : '';
  return `${free}${show(hold.temperature, 'temperature')}, ${show(hold.lasts, 'duration')}`;
}

/** What the chosen builds were planned with, each schedule once; where they have none, the starter schedules. */
export function scheduleChoices(builds: readonly BuildState[]): ScheduleChoice[] {
  const planned = new Map<string, ScheduleChoice>();
  for (const { header } of builds) {
    const { schedule } = header;
    if (!schedule) continue;
    const { cure, postcure } = splitPostcure(schedule);
    for (const part of postcure ? [cure, postcure] : [cure]) {
      const key = JSON.stringify(part);
      const name = `${header.name} no. ${header.number}`;
      const known = planned.get(key);
      const label = known ? `${known.label} and ${name}` : `${scheduleSays(part)}, planned for ${name}`;
      planned.set(key, { value: key, label, schedule: known?.schedule ?? part });
    }
  }
  const starters = Object.entries(starterSchedules).map(([value, { name, schedule }]) => ({
    value,
    label: name,
    schedule,
  }));
  return [...planned.values(), ...starters];
}

export function loadDraft(builds: readonly BuildState[], loads: readonly OvenState[]): LoadDraft {
  const chosen = builds.filter((b) => wantsHeat(b) && !loadOf(b, loads));
  const choices = scheduleChoices(chosen);
  const free = chosen.length > 0 && chosen.every((b) => presentStage(b)?.stage === 'postcure');
  const [first] = Object.entries(starterSchedules).filter(([, s]) => s.schedule === firstSchedule);
  const planned = choices.slice(0, choices.length - Object.keys(starterSchedules).length);
  const fits = planned.find((c) => (c.schedule.stages[0]?.offMandrel === true) === free) ?? planned[0];
  return {
    builds: signal(new Set(chosen.map((b) => b.header.id))),
    unread: signal(new Set()),
    schedule: signal(fits?.value ?? first?.[0] ?? ''),
    cure: cureDraft(fits?.schedule ?? firstSchedule),
    errors: errorDraft(),
  };
}

export function chooseSchedule(draft: LoadDraft, { value, schedule }: ScheduleChoice): void {
  draft.schedule.value = value;
  fillCure(draft.cure, schedule);
}

/** The schedule to freeze: as chosen while nobody retyped it, else as typed. */
export const scheduleFrom = (draft: LoadDraft): CureSchedule | undefined => scheduleOf(draft.cure);

export function toggled(set: ReadonlySet<string>, id: string): ReadonlySet<string> {
  const next = new Set(set);
  if (!next.delete(id)) next.add(id);
  return next;
}
