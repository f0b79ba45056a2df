import { type Signal, signal } from '@preact/signals';
import { type QuantityInput, quantityInput } from '#app/parts/quantity-input.ts';
import type { CureSchedule, CureStage } from '#shared/record/cure-schedule.ts';
import { celsius, minutes } from '#shared/reference/quantities.ts';
import { starterSchedules } from '#shared/reference/starter-schedules.ts';
import { bandOf } from './bands.ts';
import { showRate } from './rate-words.ts';

/** One stage being written: a ramp and a cooling go to a temperature at a rate, a hold lasts. */
export interface StageDraft {
  key: number;
  kind: CureStage['kind'];
  offMandrel: boolean;
  to: QuantityInput;
  rate: QuantityInput;
  lasts: QuantityInput;
}

/** A schedule being written. It outlives its screen: nothing typed is lost. */
export interface CureDraft {
  /** As it was before anybody typed. */
  base: Signal<CureSchedule>;
  start: QuantityInput;
  stages: Signal<readonly StageDraft[]>;
  /** The stage that is open, by its key. */
  chosen: Signal<number | undefined>;
  /** The stages before the last one was added, moved, removed or all were replaced. */
  before: Signal<readonly StageDraft[] | undefined>;
  readHolding: QuantityInput;
  readRamping: QuantityInput;
}

export const firstSchedule: CureSchedule = starterSchedules['starter-schedule-66-3'].schedule;

/** Read while it ramps, s (10 to 15 min: common practice, no source) */
export const usualReadRamping = minutes(15);

const shop = { quantity: 'temperature', min: celsius(-20), max: celsius(60) } as const;
const oven = { quantity: 'temperature', min: celsius(-20), max: celsius(250) } as const;
const speed = { quantity: 'rampRate', positive: true, max: 20 / 60 } as const;
const length = { quantity: 'duration', min: 60, max: 30 * 86_400 } as const;
const often = { quantity: 'duration', min: 60, max: 2 * 86_400 } as const;

let lastKey = 0;

export function stageDraft(stage: CureStage): StageDraft {
  lastKey += 1;
  const rate = stage.kind === 'hold' ? undefined : stage.rate;
  const draft = {
    key: lastKey,
    kind: stage.kind,
    offMandrel: stage.offMandrel === true,
    to: quantityInput(stage.kind === 'hold' ? undefined : stage.to, oven),
    rate: quantityInput(rate, speed),
    lasts: quantityInput(stage.kind === 'hold' ? stage.lasts : undefined, length),
  };
  if (rate !== undefined && draft.offMandrel) draft.rate.text.value = showRate(rate);
  return draft;
}

export function cureDraft(schedule: CureSchedule = firstSchedule): CureDraft {
  return {
    base: signal(schedule),
    start: quantityInput(schedule.start, shop),
    stages: signal(schedule.stages.map(stageDraft)),
    chosen: signal(undefined),
    before: signal(undefined),
    readHolding: quantityInput(schedule.readEvery, often),
    readRamping: quantityInput(schedule.readRamping ?? Math.min(schedule.readEvery, usualReadRamping), often),
  };
}

export const stageFields = ({ kind, to, rate, lasts }: StageDraft): QuantityInput[] =>
  kind === 'hold' ? [lasts] : [to, rate];

export const cureFieldsOf = ({ start, stages, readHolding, readRamping }: CureDraft): QuantityInput[] => [
  start,
  ...stages.value.flatMap(stageFields),
  readHolding,
  readRamping,
];

function stageOf({ kind, to, rate, lasts, offMandrel }: StageDraft): CureStage | undefined {
  const off = offMandrel && { offMandrel };
  if (kind === 'hold') {
    const long = lasts.si.value;
    return long === undefined ? undefined : { kind, lasts: long, ...off };
  }
  const [goal, speed] = [to.si.value, rate.si.value];
  return goal === undefined || speed === undefined ? undefined : { kind, to: goal, rate: speed, ...off };
}

const said = (value: unknown) => JSON.stringify(value);

/** The schedule as typed, or as it was where nobody changed anything; undefined while a figure is missing. */
export function scheduleOf(draft: CureDraft): CureSchedule | undefined {
  const base = draft.base.value;
  const start = draft.start.si.value;
  const readEvery = draft.readHolding.si.value;
  const readRamping = draft.readRamping.si.value;
  const stages = draft.stages.value.map(stageOf).filter((s) => s !== undefined);
  if (start === undefined || readEvery === undefined || readRamping === undefined) return undefined;
  if (stages.length === 0 || stages.length < draft.stages.value.length) return undefined;
  const same = start === base.start && readEvery === base.readEvery && said(stages) === said(base.stages);
  const usual = base.readRamping ?? Math.min(base.readEvery, usualReadRamping);
  if (same && readRamping === usual) return base;
  return { start, stages, ...bandOf({ start, stages }, base), readEvery, readRamping };
}
