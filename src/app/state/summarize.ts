import { type BuildState, foldBuild } from '#shared/record/build-state.ts';
import type { AnyEntry } from '#shared/record/entry.ts';
import { foldOvenLoad, type OvenState } from '#shared/record/oven-state.ts';
import type { Header } from '#shared/record/read.ts';
import { type BuildSummary, foldVersion, type OvenSummary, type Summary } from '#shared/record/summary.ts';
import { partMasses } from './masses.ts';

const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);

function buildSummary(state: BuildState): BuildSummary {
  const { header } = state;
  const { cloth, cured, filmLeft, core } = partMasses(state);
  const mixed = state.cups.filter((c) => c.discardedAt === undefined).map((c) => c.resin + c.hardener);
  return {
    of: 'build',
    ...(state.closedAt === undefined ? { open: 1 as const } : { closedAt: state.closedAt }),
    subject: header.id,
    foldVersion,
    name: header.name,
    number: header.number,
    startedAt: header.startedAt,
    lastAt: state.lastAt,
    ...(state.disposition && { outcome: state.disposition.entry.outcome }),
    ...(state.next && { stage: state.next.stage }),
    words: wordsOf(state),
    ...(header.plan && { plan: header.plan.doc }),
    clothMass: cloth,
    fiber: header.cloth.fiber,
    fiberDensity: header.cloth.fiberDensity,
    resinDensity: header.resin.curedDensity,
    wantedFiberVolume: header.goal.fiberVolumeFraction,
    ...(cured !== undefined && { curedMass: cured }),
    ...(filmLeft !== undefined && { filmLeft }),
    ...(core !== undefined && { core }),
    ...(mixed.length > 0 && { resinMixed: sum(mixed) }),
    cups: mixed.length,
    ovenLoads: state.ovenLoads.map((f) => f.entry.ovenLoad),
  };
}

function wordsOf({ header, notes, disposition }: BuildState): string {
  const parts = [
    `${header.name} no. ${header.number}`,
    header.cloth.name,
    header.cloth.fiber,
    `${header.resin.name} ${header.resin.hardener} ${header.resin.lot ?? ''}`,
    header.release?.name,
    header.tape?.name,
    ...notes.map((n) => n.entry.text),
    disposition?.entry.outcome,
    disposition?.entry.text,
  ];
  return parts.filter(Boolean).join(' · ').toLowerCase();
}

function ovenSummary(state: OvenState): OvenSummary {
  const readings = state.readings.flatMap((r) => r.at);
  const highest = readings.reduce((most, r) => Math.max(most, r.temperature), 0);
  return {
    of: 'ovenLoad',
    ...(state.closedAt === undefined ? { open: 1 as const } : { closedAt: state.closedAt }),
    subject: state.header.id,
    foldVersion,
    number: state.header.number,
    startedAt: state.header.startedAt,
    lastAt: state.lastAt,
    ...(state.litAt !== undefined && { litAt: state.litAt }),
    ...(state.offAt !== undefined && { offAt: state.offAt }),
    builds: [...new Set(state.builds.map((b) => b.build))],
    readings: readings.length,
    ...(highest > 0 && { highestRead: highest }),
  };
}

/** Folds a subject into the small record that lists, search and the ledger read. */
export function summarize(header: Header, entries: readonly AnyEntry[]): Summary {
  return header.record === 'build'
    ? buildSummary(foldBuild(header, entries))
    : ovenSummary(foldOvenLoad(header, entries));
}
