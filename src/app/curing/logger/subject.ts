import { corners } from '#app/curing/oven/oven-schedule.ts';
import { litOf } from '#app/curing/oven/oven-series.ts';
import type { EntryOf } from '#shared/record/entry.ts';
import type { Fact } from '#shared/record/journal.ts';
import type { OvenState } from '#shared/record/oven-state.ts';

/** The oven load that a file is for, and the file when it is in it already. */
export interface Subject {
  state: OvenState;
  fact?: Fact<EntryOf<'loggerFile'>> | undefined;
}

export const litAt = litOf;

/** The hottest that its schedule asks for, K */
export const hottestAsked = ({ header }: OvenState): number =>
  corners(header.schedule).reduce((most, r) => Math.max(most, r.temperature), header.schedule.start);
