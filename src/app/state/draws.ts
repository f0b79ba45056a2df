import type { BuildState } from '#shared/record/build-state.ts';
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

function drawOfCloth(state: BuildState): Draw[] {
  const last = state.lots.filter((l) => l.entry.of === 'cloth').at(-1);
  if (!last) return [];
  const { lot, amount, happenedAt: at } = last.entry;
  const cut = amount ?? partMasses(state).cloth / state.header.cloth.arealWeight;
  return [{ of: 'cloth', lot, amount: cut, at }];
}

function drawsOfTape({ lots }: BuildState): Draw[] {
  return lots.flatMap(({ entry }): Draw[] =>
    entry.of === 'tape' && entry.amount !== undefined
      ? [{ of: 'tape', lot: entry.lot, amount: entry.amount, at: entry.happenedAt }]
      : [],
  );
}

/** Follows from what was weighed and poured, so that a correction there corrects the shelf too. */
export const drawsOf = (state: BuildState): Draw[] => [
  ...drawOfCloth(state),
  ...drawsOfCups(state),
  ...drawsOfTape(state),
];
