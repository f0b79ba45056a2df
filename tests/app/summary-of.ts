import { type Made, madeOf } from '#app/made/learned/made-facts.ts';
import type { BuildSummary, OvenSummary } from '#shared/record/summary.ts';
import { foldVersion } from '#shared/record/summary.ts';

const begun = Date.UTC(2026, 4, 1, 12);

/** A weighed tube of 100 g of cloth and 120 g of resin, from two cups of 80 g. */
export function summaryOf(number: number, more: Partial<BuildSummary> = {}): BuildSummary {
  return {
    of: 'build',
    subject: `build-${number}`,
    foldVersion,
    name: 'Spar',
    number,
    startedAt: begun + number * 86_400_000,
    lastAt: begun + number * 86_400_000,
    words: '',
    clothMass: 0.1,
    fiber: 'carbon',
    fiberDensity: 1800,
    resinDensity: 1180,
    wantedFiberVolume: 0.35,
    curedMass: 0.22,
    resinMixed: 0.16,
    cups: 2,
    ovenLoads: [],
    cloth: 'Plain 193',
    arealWeight: 0.193,
    resin: 'Epoxy, SLOW',
    poured: [],
    ratings: [],
    notes: [],
    photos: [],
    draws: [],
    ...more,
  };
}

export function ovenSummaryOf(number: number, more: Partial<OvenSummary> = {}): OvenSummary {
  return {
    of: 'ovenLoad',
    subject: `oven-${number}`,
    foldVersion,
    number,
    startedAt: begun,
    lastAt: begun,
    builds: [],
    readings: 0,
    tubes: [],
    ...more,
  };
}

export const madeFrom = (more: Partial<BuildSummary> = {}, number = 1, ovens: OvenSummary[] = []): Made =>
  madeOf(summaryOf(number, more), new Map(ovens.map((o) => [o.subject, o])));
