import type { BuildState } from '#shared/record/build-state.ts';
import type { StageName } from '#shared/record/checklist.ts';
import type { EntryOf } from '#shared/record/entry.ts';
import type { LotKind } from '#shared/record/lot.ts';
import { partMasses } from './masses.ts';

/** What a build took from a lot: cloth m2, resin and hardener kg, tape m. */
export interface Draw {
  of: LotKind;
  lot: string;
  amount: number;
  /** ms */
  at: number;
}

/** The lot that was in use then: the one turned to last, or the first of all for what was taken before any was named. */
function lotAt({ lots }: BuildState, of: LotKind, at: number): string | undefined {
  const own = lots.filter((l) => l.entry.of === of);
  return (own.filter((l) => l.entry.happenedAt <= at).at(-1) ?? own[0])?.entry.lot;
}

function drawsOfCups(state: BuildState): Draw[] {
  return state.cups.flatMap(({ pours }) =>
    pours.flatMap(({ entry }): Draw[] => {
      const at = entry.happenedAt;
      const lot = lotAt(state, entry.part, at);
      return lot === undefined ? [] : [{ of: entry.part, lot, amount: entry.mass, at }];
    }),
  );
}

interface Share {
  entry: EntryOf<'lotDrawn'>;
  /** Of a lot that gives only a part */
  own?: number;
}

/**
 * The lots that one thing on the shelf is from: the last that was to give all of it, and those turned to after it for
 * a part.
 */
export function lotsInUse(all: BuildState['lots'], of: LotKind): Share[][] {
  const items = new Map<string, Share[]>();
  for (const { entry } of all) {
    if (entry.of !== of) continue;
    const item = entry.item ?? '';
    const before = entry.besides ? (items.get(item) ?? []).filter((s) => s.entry.lot !== entry.lot) : [];
    items.set(item, [...before, { entry, ...(entry.besides && { own: entry.amount ?? 0 }) }]);
  }
  return [...items.values()];
}

/** Cloth is cut and tape is pulled in one go: what no other lot gave is from the first one. */
function shared(
  shares: readonly Share[],
  total: (entry: Share['entry']) => number | undefined,
  at: number | undefined,
): Draw[] {
  const besides = sumOf(shares.map((s) => s.own ?? 0));
  return shares.flatMap(({ entry, own }): Draw[] => {
    const whole = total(entry);
    const amount = own ?? (whole === undefined ? undefined : Math.max(0, whole - besides));
    const { of, lot, happenedAt } = entry;
    return amount === undefined ? [] : [{ of, lot, amount, at: at ?? happenedAt }];
  });
}

const sumOf = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);

/** When work of a stage was first ticked: a lot that was counted before then still held what this build took. */
function firstTick({ stages }: BuildState, stage: StageName): number | undefined {
  const times = stages
    .filter((s) => s.stage === stage)
    .flatMap((s) => s.steps.flatMap(({ done }) => done?.at ?? []));
  return times.length > 0 ? Math.min(...times) : undefined;
}

function drawsOfCloth(state: BuildState): Draw[] {
  const { cloth, clothMass } = state.header;
  const cut = partMasses(state).cloth;
  const at = firstTick(state, 'cut') ?? state.weights.get('cutCloth')?.entry.happenedAt;
  const total = ({ amount }: Share['entry']) =>
    amount === undefined ? cut / cloth.arealWeight : (amount * cut) / clothMass;
  return lotsInUse(state.lots, 'cloth').flatMap((shares) => shared(shares, total, at));
}

function drawsOfTape(state: BuildState): Draw[] {
  const at = firstTick(state, 'shrinkTape');
  return lotsInUse(state.lots, 'tape').flatMap((shares) => shared(shares, (entry) => entry.amount, at));
}

/** Follows from what was weighed and poured, so that a correction there corrects the shelf too. */
export const drawsOf = (state: BuildState): Draw[] => [
  ...drawsOfCloth(state),
  ...drawsOfCups(state),
  ...drawsOfTape(state),
];
