import type { WalledPlan, WallShelf } from '#app/planning/wall/wall-model.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { EntryDraft, EntryOf } from '#shared/record/entry.ts';
import { type Fact, holding } from '#shared/record/journal.ts';
import type { StepState } from '#shared/record/route-state.ts';
import { type ClothGroup, clothGroups } from './cloth-groups.ts';
import type { CutPiece } from './cut-pieces.ts';

/** Cloth farther off its nominal weight than this is another cloth than the plan reckons with (common practice, no source). */
export const mostOff = 0.05;

/** A piece on the cut list. */
export interface CutLine {
  piece: CutPiece;
  /** As a line of the checklist: a piece is ticked like a step. */
  step: StepState;
  /** Dry, by its area, kg; absent where there is no telling. */
  byArea?: number;
  weighed?: number;
}

const isTick = (f: Fact): f is Fact<EntryOf<'tick'>> => f.entry.kind === 'tick';

/** When each piece was ticked, first; pieces are ticked by their ids. */
function ticksOf(state: BuildState): Map<string, Fact<EntryOf<'tick'>>> {
  const ticks = new Map<string, Fact<EntryOf<'tick'>>>();
  for (const fact of holding(state.facts).filter(isTick)) {
    if (!ticks.has(fact.entry.step)) ticks.set(fact.entry.step, fact);
  }
  return ticks;
}

function byArea({ area, rolled }: CutPiece): number | undefined {
  const { kind, arealWeight, thickness, density } = rolled.spec;
  if (kind === 'cloth') return arealWeight === undefined ? undefined : area * arealWeight;
  return density === undefined ? undefined : area * thickness * density;
}

export function cutLines(state: BuildState, pieces: readonly CutPiece[]): CutLine[] {
  const ticks = ticksOf(state);
  return pieces.map((piece) => {
    const tick = ticks.get(piece.id);
    const expected = byArea(piece);
    const weighed = state.pieceWeights.get(piece.id)?.entry.mass;
    const step: StepState = {
      key: piece.id,
      step: { id: piece.id, text: `${piece.number}  ${piece.name}` },
      stage: 'cut',
      round: 1,
      ...(tick && {
        done: {
          at: tick.entry.happenedAt,
          root: tick.root,
          timeNotSeen: tick.entry.timeNotSeen === true,
          zone: tick.entry.zone,
        },
      }),
    };
    return {
      piece,
      step,
      ...(expected !== undefined && { byArea: expected }),
      ...(weighed !== undefined && { weighed }),
    };
  });
}

export const cutDraft = (state: BuildState, { step: { step } }: CutLine): EntryDraft => ({
  kind: 'tick',
  subject: state.header.id,
  step: step.id,
  round: 1,
});

const isCloth = ({ piece }: CutLine) => piece.piece.kind === 'cloth';

/** All cloth of the tube, when every piece of it was weighed by itself, kg */
export function sumOfPieces(lines: readonly CutLine[]): number | undefined {
  const masses = lines.filter(isCloth).map((l) => l.weighed);
  return masses.reduce<number | undefined>(
    (sum, mass) => (sum === undefined || mass === undefined ? undefined : sum + mass),
    masses.length > 0 ? 0 : undefined,
  );
}

/** What a cloth turned out to weigh against what it is sold as. */
export interface ClothCheck {
  group: ClothGroup;
  /** kg, and m2 of what was weighed */
  mass: number;
  area: number;
  /** kg/m2 */
  arealWeight: number;
  /** Share above its nominal weight; below 0 lighter. */
  off: number;
}

function check(group: ClothGroup, mass: number, area: number): ClothCheck {
  const arealWeight = mass / area;
  return { group, mass, area, arealWeight, off: arealWeight / group.cloth.arealWeight - 1 };
}

const areaOf = (pieces: readonly CutPiece[]) => pieces.reduce((sum, p) => sum + p.area, 0);

/** Each cloth that was weighed, by its pieces; where all was weighed at once, only a tube of one cloth tells. */
export function clothChecks(
  state: BuildState,
  plan: WalledPlan,
  lines: readonly CutLine[],
  shelf: WallShelf,
): ClothCheck[] {
  const groups = clothGroups(
    plan,
    lines.map((l) => l.piece),
    shelf,
  );
  const weighed = new Map(lines.flatMap((l) => (l.weighed === undefined ? [] : [[l.piece.id, l.weighed]])));
  const [only] = groups;
  const all = state.weights.get('cutCloth')?.entry.mass;
  if (groups.length === 1 && only && all !== undefined && all > 0) {
    return [check(only, all, areaOf(only.pieces))];
  }
  return groups.flatMap((group) => {
    const own = group.pieces.filter((p) => weighed.has(p.id));
    const mass = own.reduce((sum, p) => sum + (weighed.get(p.id) ?? 0), 0);
    return mass > 0 ? [check(group, mass, areaOf(own))] : [];
  });
}
