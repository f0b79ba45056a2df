import { fiberVolumeByThickness, wallsMeasured } from '#app/made/results/by-thickness.ts';
import { curedByWeight, type LaminateByWeight, wetShare } from '#app/made/results/by-weight.ts';
import { verdict } from '#app/made/results/verdict.ts';
import { lotsInUse } from '#app/state/draws.ts';
import { partMasses } from '#app/state/masses.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { LotKind } from '#shared/record/lot.ts';
import { type Column, measured } from './csv.ts';
import { isoWithOffset } from './file-words.ts';

export interface BuildRow {
  state: BuildState;
  weight: LaminateByWeight | undefined;
  /** Mean over the stations, m */
  wall: number | undefined;
  byThickness: number | undefined;
  /** Mixed and not thrown out, kg */
  mixed: number;
  cups: number;
}

const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);

/** A build with everything that is computed from it. */
export function buildRow(state: BuildState): BuildRow {
  const byWeight = curedByWeight(state);
  const walls = wallsMeasured(state);
  const cups = state.cups.filter((c) => c.discardedAt === undefined);
  return {
    state,
    weight: byWeight.ok ? byWeight.value : undefined,
    wall: walls.length === 0 ? undefined : sum(walls.map((w) => w.wall)) / walls.length,
    byThickness: fiberVolumeByThickness(walls),
    mixed: sum(cups.map((c) => c.resin + c.hardener)),
    cups: cups.length,
  };
}

function wet({ state }: BuildRow): number | undefined {
  const share = wetShare(state);
  return typeof share === 'number' ? share : undefined;
}

/** By their labels then; cloth and tape of a roll that was put back were not used. */
function lotsOf({ lots }: BuildState, of: LotKind): string | undefined {
  const used =
    of === 'cloth' || of === 'tape'
      ? lotsInUse(lots, of).flatMap((shares) => shares.map((s) => s.entry.label))
      : lots.flatMap(({ entry }) => (entry.of === of ? [entry.label] : []));
  return used.length > 0 ? [...new Set(used)].join(', ') : undefined;
}

const made: Column<BuildRow>[] = [
  { head: 'Tube', cell: ({ state }) => state.header.name },
  { head: 'No.', cell: ({ state }) => state.header.number },
  { head: 'Started', cell: ({ state: { header } }) => isoWithOffset(header.startedAt, header.zone) },
  {
    head: 'Closed',
    cell: ({ state: { closedAt, header } }) =>
      closedAt === undefined ? undefined : isoWithOffset(closedAt, header.zone),
  },
  { head: 'Judged', cell: ({ state }) => state.disposition?.entry.outcome },
  { head: 'Because', cell: ({ state }) => state.disposition?.entry.text },
  { head: 'Cloth', cell: ({ state }) => state.header.cloth.name },
  { head: 'Fiber', cell: ({ state }) => state.header.cloth.fiber },
  { head: 'Resin', cell: ({ state }) => state.header.resin.name },
  { head: 'Hardener', cell: ({ state }) => state.header.resin.hardener },
  { head: 'Cloth lot', cell: ({ state }) => lotsOf(state, 'cloth') },
  { head: 'Resin lot', cell: ({ state }) => lotsOf(state, 'resin') ?? state.header.resin.lot },
  { head: 'Hardener lot', cell: ({ state }) => lotsOf(state, 'hardener') },
  { head: 'Tape lot', cell: ({ state }) => lotsOf(state, 'tape') },
  { head: 'Release', cell: ({ state }) => state.header.release?.name },
  { head: 'Tape', cell: ({ state }) => state.header.tape?.name },
];

export const buildColumns = (): Column<BuildRow>[] => [
  ...made,
  { head: 'Plies', cell: ({ state }) => state.header.plies },
  measured('Dry cloth', 'mass', ({ state }) => partMasses(state).cloth),
  { head: 'Cups', cell: ({ cups }) => cups },
  measured('Resin mixed', 'mass', ({ mixed, cups }) => (cups === 0 ? undefined : mixed)),
  measured('Resin share, wet before wrapping', 'fraction', wet),
  measured('Tube', 'mass', ({ weight }) => weight?.tube),
  measured('Film left in it', 'mass', ({ weight }) => weight?.filmLeft),
  measured('Resin in it', 'mass', ({ weight }) => weight?.resin),
  measured('Resin share by weight', 'fraction', ({ weight }) => weight?.resinShare),
  measured('Fiber volume wanted', 'fraction', ({ state }) => state.header.goal.fiberVolumeFraction),
  measured('Fiber volume by weight', 'fraction', ({ weight }) => weight?.fiberVolume),
  { head: 'Which is', cell: ({ weight }) => weight && verdict(weight.fiberVolume).word },
  measured('Wall, mean', 'thickness', ({ wall }) => wall),
  measured('Fiber volume by thickness', 'fraction', ({ byThickness }) => byThickness),
  { head: 'Oven loads', cell: ({ state }) => new Set(state.ovenLoads.map((f) => f.entry.ovenLoad)).size },
  { head: 'Photos', cell: ({ state }) => state.photos.length },
  {
    head: 'Words to photos',
    cell: ({ state }) => state.photos.flatMap((p) => p.entry.caption ?? []).join(' / '),
  },
  { head: 'Notes', cell: ({ state }) => state.notes.map((n) => n.entry.text).join(' / ') },
];
