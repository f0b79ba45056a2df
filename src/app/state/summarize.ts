import { hardenerPerResin } from '#app/laying-up/mix/recipe.ts';
import { pointsOf, ringOf } from '#app/laying-up/proof/results.ts';
import { wallsMeasured } from '#app/made/results/by-thickness.ts';
import { planOfBuild } from '#app/planning/cutting/plan-of-build.ts';
import { fiberMassFraction, resinForCloth } from '#calc';
import type { BuildHeader } from '#shared/record/build.ts';
import { type BuildState, foldBuild } from '#shared/record/build-state.ts';
import type { AnyEntry } from '#shared/record/entry.ts';
import { foldOvenLoad, type OvenState } from '#shared/record/oven-state.ts';
import type { Header } from '#shared/record/read.ts';
import { type BuildSummary, foldVersion, type OvenSummary, type Summary } from '#shared/record/summary.ts';
import { drawsOf } from './draws.ts';
import { partMasses } from './masses.ts';
import { highestAir, tubesOf, wantedHold } from './oven-facts.ts';
import { wetOutTime, wrapTime } from './stage-times.ts';

const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);

function buildSummary(state: BuildState): BuildSummary {
  const { header } = state;
  const { cloth, cured, trimmed, filmLeft, core } = partMasses(state);
  const weighed = state.weights.get('cutCloth')?.entry.mass || undefined;
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
    ...(header.plan && { plannedMass: plannedMass(header) }),
    clothMass: cloth,
    ...(weighed !== undefined && { weighedCloth: weighed }),
    fiber: header.cloth.fiber,
    fiberDensity: header.cloth.fiberDensity,
    resinDensity: header.resin.curedDensity,
    wantedFiberVolume: header.goal.fiberVolumeFraction,
    ...(cured !== undefined && { curedMass: cured }),
    ...(trimmed !== undefined && { trimmedMass: trimmed }),
    ...(filmLeft !== undefined && { filmLeft }),
    ...(core !== undefined && { core }),
    ...(header.coreResin !== undefined && { coreResin: header.coreResin }),
    ...(mixed.length > 0 && { resinMixed: sum(mixed) }),
    cups: mixed.length,
    ovenLoads: state.ovenLoads.map((f) => f.entry.ovenLoad),
    ...made(state),
    ...worked(state),
  };
}

/** By its plan as it was frozen, void-free: the shelf and the plan may have changed since. */
function plannedMass(header: BuildHeader): number {
  const { cloth, clothMass, resin, coreMass = 0, coreResin = 0 } = header;
  const plan = planOfBuild(header);
  const { clothAmount } = plan ?? {};
  const dry =
    clothAmount === undefined
      ? clothMass
      : clothAmount.by === 'mass'
        ? clothAmount.mass
        : clothAmount.area * cloth.arealWeight;
  const fiber = fiberMassFraction({
    fiberVolumeFraction: (plan ?? header).goal.fiberVolumeFraction,
    fiberDensity: cloth.fiberDensity,
    resinDensity: resin.curedDensity,
  });
  return dry + resinForCloth({ clothMass: dry, resinMassFraction: 1 - fiber }) + coreMass + coreResin;
}

/** What it was made of, and how thick that came out. */
/** How it bore being squeezed, and what it gave way under. */
function tested({ squeezeTests, gaveWay }: BuildState) {
  const rings = squeezeTests.flatMap(({ entry }) => ringOf(entry).factor ?? []);
  return {
    ...(rings.length > 0 && { rings }),
    ...(gaveWay.length > 0 && {
      gaveWay: gaveWay.map(({ entry: { how, mass, at, place } }) => ({
        how,
        mass,
        at,
        ...(place !== undefined && { place }),
      })),
    }),
  };
}

function made(state: BuildState) {
  const { cloth, clothArea, resin, release, tape, plies } = state.header;
  const walls = wallsMeasured(state).map((w) => w.wall);
  const proof = pointsOf(state.proofLoads.map((f) => f.entry));
  return {
    cloth: cloth.name,
    arealWeight: cloth.arealWeight,
    ...(clothArea !== undefined && { clothArea }),
    resin: `${resin.name}, ${resin.hardener}`,
    ...(release && { release: release.name, releaseKind: release.kind }),
    ...(tape && { tape: tape.name }),
    ...(plies !== undefined && { plies }),
    ...(walls.length > 0 && { wall: sum(walls) / walls.length }),
    ...(proof.length > 0 && { proof }),
    ...tested(state),
    draws: drawsOf(state),
  };
}

/** How the work went, and how it was judged. */
function worked(state: BuildState) {
  const wanted = hardenerPerResin(state.header.resin);
  const captions = state.photos.flatMap(({ entry: { hash, caption } }) => (caption ? [[hash, caption]] : []));
  const used = state.cups.filter((c) => c.discardedAt === undefined && c.resin > 0 && c.hardener > 0);
  const leftover = state.weights.get('leftover')?.entry.mass;
  const wipings = state.weights.get('wipings')?.entry.mass;
  const shopTemperature = state.surroundings?.entry.resin ?? state.surroundings?.entry.air;
  const [wetOut, wrap] = [wetOutTime(state), wrapTime(state)];
  return {
    poured: used.map(({ resin, hardener }) => ({ resin, hardener, wanted })),
    ...(leftover !== undefined && { leftover }),
    ...(wipings !== undefined && { wipings }),
    ...(wetOut !== undefined && { wetOutTime: wetOut }),
    ...(wrap !== undefined && { wrapTime: wrap }),
    ...(shopTemperature !== undefined && { shopTemperature }),
    ratings: [...state.ratings.values()].map(({ entry }) => ({ what: entry.what, value: entry.value })),
    notes: state.notes.map((n) => n.entry.text),
    photos: state.photos.map((p) => p.entry.hash),
    ...(captions.length > 0 && { captions: Object.fromEntries(captions) }),
  };
}

function wordsOf({ header, notes, photos, disposition }: BuildState): string {
  const parts = [
    `${header.name} no. ${header.number}`,
    header.cloth.name,
    header.cloth.fiber,
    `${header.resin.name} ${header.resin.hardener} ${header.resin.lot ?? ''}`,
    header.release?.name,
    header.tape?.name,
    ...notes.map((n) => n.entry.text),
    ...photos.map((p) => p.entry.caption),
    disposition?.entry.outcome,
    disposition?.entry.text,
  ];
  return parts.filter(Boolean).join(' · ').toLowerCase();
}

function ovenSummary(state: OvenState): OvenSummary {
  const readings = state.readings.flatMap((r) => r.at);
  const logged = state.loggerFiles.flatMap((f) => f.entry.series);
  const highest = [...readings.map((r) => r.temperature), ...logged.map((s) => s.highest ?? 0)].reduce(
    (most, temperature) => Math.max(most, temperature),
    0,
  );
  const [hold, air] = [wantedHold(state.header.schedule), highestAir(state)];
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
    readings: readings.length + sum(logged.map((s) => s.readings)),
    ...(state.loggerFiles.length > 0 && { loggerFiles: state.loggerFiles.length }),
    ...(highest > 0 && { highestRead: highest }),
    ...(hold !== undefined && { wantedHold: hold }),
    ...(air !== undefined && { highestAir: air }),
    tubes: tubesOf(state),
  };
}

/** Folds a subject into the small record that lists, search and the ledger read. */
export function summarize(header: Header, entries: readonly AnyEntry[]): Summary {
  return header.record === 'build'
    ? buildSummary(foldBuild(header, entries))
    : ovenSummary(foldOvenLoad(header, entries));
}
