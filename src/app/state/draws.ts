import type { BuildState } from '#shared/record/build-state.ts';
import type { StageName } from '#shared/record/checklist.ts';
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

/** Cloth is cut and tape is pulled in one go: of each thing on the shelf the lot turned to last gives all of it. */
function lastLots({ lots }: BuildState, of: LotKind) {
  const own = lots.filter((l) => l.entry.of === of);
  return [...new Map(own.map((l) => [l.entry.item ?? '', l.entry])).values()];
}

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
  return lastLots(state, 'cloth').map(({ lot, amount, happenedAt }) => ({
    of: 'cloth',
    lot,
    amount: amount === undefined ? cut / cloth.arealWeight : (amount * cut) / clothMass,
    at: at ?? happenedAt,
  }));
}

function drawsOfTape(state: BuildState): Draw[] {
  const at = firstTick(state, 'shrinkTape');
  return lastLots(state, 'tape').flatMap(({ lot, amount, happenedAt }): Draw[] =>
    amount === undefined ? [] : [{ of: 'tape', lot, amount, at: at ?? happenedAt }],
  );
}

/** Follows from what was weighed and poured, so that a correction there corrects the shelf too. */
export const drawsOf = (state: BuildState): Draw[] => [
  ...drawsOfCloth(state),
  ...drawsOfCups(state),
  ...drawsOfTape(state),
];
