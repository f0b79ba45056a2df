import { holdOf, hottestOf, onMandrel } from '#app/curing/oven/oven-schedule.ts';
import type { CureSchedule, CureStage } from '#shared/record/cure-schedule.ts';
import type { ResinSystem } from '#shared/record/resin-system.ts';
import { celsius, hours, kelvinPerMinute, minutes } from '#shared/reference/quantities.ts';
import { type CureDraft, type StageDraft, scheduleOf, stageDraft } from './cure-draft.ts';
import { reachedTransition } from './ramp-cautions.ts';
import { wholeDegrees } from './whole-degrees.ts';

// Ramps of 1 to 3 C a minute before gel; free-standing 10 to 20 C an hour, and about 10 C over the glass
// transition at the most: common practice, no source.
const usualRate = kelvinPerMinute(2);
const coolingRate = kelvinPerMinute(1.5);
const postcureRate = 15 / 3600;
const overTransition = 10;
const handWarm = celsius(35);

function replace(draft: CureDraft, stages: readonly StageDraft[]): void {
  draft.before.value = draft.stages.value;
  draft.stages.value = stages;
}

/** Takes the last thing back that was added, moved, removed or replaced. */
export function undo(draft: CureDraft): void {
  const { before } = draft;
  if (!before.value) return;
  const stages = before.value;
  before.value = undefined;
  draft.stages.value = stages;
  draft.chosen.value = undefined;
}

const lastTo = (stages: readonly StageDraft[], start: number): number =>
  stages.reduce((at, s) => (s.kind === 'hold' ? at : (s.to.si.value ?? at)), start);

function newStage(kind: CureStage['kind'], from: number): CureStage {
  if (kind === 'hold') return { kind, lasts: hours(1) };
  if (kind === 'cool') return { kind, to: Math.min(from, handWarm), rate: coolingRate };
  return { kind, to: wholeDegrees(from + 20), rate: usualRate };
}

/** A stage more after the open one, else at the end; it is opened. */
export function addStage(draft: CureDraft, kind: CureStage['kind']): void {
  const stages = draft.stages.value;
  const open = stages.findIndex((s) => s.key === draft.chosen.value);
  const at = open < 0 ? stages.length : open + 1;
  const from = lastTo(stages.slice(0, at), draft.start.si.value ?? celsius(23));
  const offMandrel = stages[at - 1]?.offMandrel === true;
  const added = stageDraft({ ...newStage(kind, from), ...(offMandrel && { offMandrel }) });
  replace(draft, [...stages.slice(0, at), added, ...stages.slice(at)]);
  draft.chosen.value = added.key;
}

export function moveStage(draft: CureDraft, key: number, by: 1 | -1): void {
  const stages = [...draft.stages.value];
  const at = stages.findIndex((s) => s.key === key);
  const [moved] = stages.splice(at, 1);
  if (!moved) return;
  stages.splice(Math.max(0, at + by), 0, moved);
  replace(draft, stages);
}

export function removeStage(draft: CureDraft, key: number): void {
  replace(
    draft,
    draft.stages.value.filter((s) => s.key !== key),
  );
  draft.chosen.value = undefined;
}

/** Puts another schedule into the fields; what stood there can be taken back. */
export function fillCure(draft: CureDraft, schedule: CureSchedule): void {
  replace(draft, schedule.stages.map(stageDraft));
  draft.base.value = schedule;
  draft.chosen.value = undefined;
  draft.start.set(schedule.start);
  draft.readHolding.set(schedule.readEvery);
  draft.readRamping.set(schedule.readRamping ?? Math.min(schedule.readEvery, minutes(15)));
}

/** The stages of a postcure off the mandrel, with typical values. */
export function postcureStages(schedule: CureSchedule, resin: ResinSystem | undefined): CureStage[] {
  const cured = onMandrel(schedule);
  const most = reachedTransition(hottestOf(cured), resin) + overTransition;
  const to = wholeDegrees(Math.min(most, resin?.highestTemperature ?? most));
  return [
    { kind: 'ramp', to, rate: postcureRate, offMandrel: true },
    { kind: 'hold', lasts: Math.max(hours(4), holdOf(cured).lasts), offMandrel: true },
    { kind: 'cool', to: handWarm, rate: postcureRate, offMandrel: true },
  ];
}

/** Cooled down and demolded first, then warmed slowly on its own. */
export function addPostcure(draft: CureDraft, resin: ResinSystem | undefined): void {
  const schedule = scheduleOf(draft);
  if (!schedule) return;
  const stages = draft.stages.value;
  const last = stages.at(-1);
  const warm = lastTo(stages, schedule.start) > handWarm + 1;
  const cool = warm && last?.kind !== 'cool' ? [stageDraft(newStage('cool', handWarm))] : [];
  replace(draft, [...stages, ...cool, ...postcureStages(schedule, resin).map(stageDraft)]);
}

/** Two steps with one press do not fit a thumb: the schedule that fits replaces the stages and keeps the rest. */
export function takeStages(draft: CureDraft, schedule: CureSchedule): void {
  replace(draft, schedule.stages.map(stageDraft));
  draft.chosen.value = undefined;
}
