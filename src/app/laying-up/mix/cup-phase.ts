import { correctionForOvershoot, hardenerForResin, ratioError, resinForHardener } from '#calc';
import type { CupState } from '#shared/record/cup-state.ts';
import type { ResinSystem } from '#shared/record/resin-system.ts';
import { hardenerPerResin } from './recipe.ts';

export type Part = 'resin' | 'hardener';

/** What weighing out needs of a resin system. */
export interface Mixing {
  /** kg of hardener to 1 kg of resin */
  ratio: number;
  /** Share of the hardener by which a cup may be off. */
  tolerance: number;
}

export function mixingOf(system: ResinSystem): Mixing {
  return { ratio: hardenerPerResin(system), tolerance: system.tolerance };
}

/** kg; sums of pours carry rounding far below any scale's step */
const hair = 1e-9;

/** Where a cup stands. `contact` waits for the first hardener; `pour` until the ratio is right or taken as it is. */
export type CupPhase = 'resin' | 'contact' | 'pour' | 'mixed' | 'empty' | 'thrownOut';

/** How far the hardener of a cup is off, as a signed share; nothing while a part is missing. */
export function cupError(cup: Pick<CupState, Part>, { ratio }: Mixing): number | undefined {
  if (cup.resin <= 0 || cup.hardener <= 0) return undefined;
  return ratioError({ resinPoured: cup.resin, hardenerPoured: cup.hardener, hardenerPerResin: ratio });
}

export function cupPhase(cup: CupState, mixing: Mixing): CupPhase {
  if (cup.discardedAt !== undefined) return 'thrownOut';
  if (cup.emptyAt !== undefined) return 'empty';
  if (cup.hardener <= 0) {
    if (cup.resin <= 0) return 'resin';
    return cup.hardenerAt === undefined ? 'contact' : 'pour';
  }
  const error = cupError(cup, mixing);
  if (error === undefined) return 'pour';
  const settled = cup.asItIs !== undefined || Math.abs(error) <= mixing.tolerance + hair;
  return settled ? 'mixed' : 'pour';
}

/** The pour that comes next, in kg of this pour alone. */
export interface PourTask {
  part: Part;
  wanted: number;
  /** From least to most the ratio is within its tolerance. */
  least: number;
  most: number;
  /** Puts an overshoot right, where a first pour would start from nothing. */
  correcting: boolean;
}

export function pourTask(cup: CupState, mixing: Mixing): PourTask {
  const { ratio, tolerance } = mixing;
  const { resin, hardener } = cup;
  if (resin <= 0 && hardener <= 0) {
    const wanted = cup.wanted.resin;
    const band = { least: wanted * (1 - tolerance), most: wanted * (1 + tolerance) };
    return { part: 'resin', wanted, ...band, correcting: false };
  }
  const correcting = hardener > 0;
  const { addResin } = correctionForOvershoot({
    resinPoured: resin,
    hardenerPoured: hardener,
    hardenerPerResin: ratio,
  });
  const of = (hardenerPerResin: number) =>
    addResin > 0
      ? resinForHardener({ hardenerPoured: hardener, hardenerPerResin }) - resin
      : hardenerForResin({ resinPoured: resin, hardenerPerResin }) - hardener;
  const rich = of(ratio * (1 + tolerance));
  const lean = tolerance < 1 ? of(ratio * (1 - tolerance)) : Number.POSITIVE_INFINITY;
  return addResin > 0
    ? { part: 'resin', wanted: addResin, least: rich, most: lean, correcting }
    : { part: 'hardener', wanted: of(ratio), least: lean, most: rich, correcting };
}

/** What a pour would make of the cup. */
export type Verdict =
  | { kind: 'short'; by: number; off: number | undefined }
  | { kind: 'good'; total: number; fits: boolean }
  | { kind: 'over'; off: number; next: Part; add: number; total: number; fits: boolean };

/**
 * Judges a pour before it is recorded. Resin poured first is never over: the hardener follows it.
 * `off` is the hardener's error with this pour in; `total` is what the cup comes to when it is right.
 */
export function judgePour(cup: CupState, mixing: Mixing, task: PourTask, mass: number): Verdict {
  const after = { resin: cup.resin, hardener: cup.hardener };
  after[task.part] += mass;
  const off = cupError(after, mixing);
  if (mass < task.least - hair) return { kind: 'short', by: task.wanted - mass, off };
  const { addResin, addHardener, total } = correctionForOvershoot({
    resinPoured: after.resin,
    hardenerPoured: after.hardener,
    hardenerPerResin: mixing.ratio,
  });
  const settled = off === undefined || mass <= task.most + hair;
  const comesTo = off !== undefined && settled ? after.resin + after.hardener : total;
  const fits = comesTo <= cup.holds + hair;
  if (settled) return { kind: 'good', total: comesTo, fits };
  const next: Part = addResin > 0 ? 'resin' : 'hardener';
  return { kind: 'over', off, next, add: addResin + addHardener, total, fits };
}

/** How a pour is marked when it is recorded as it is; resin alone in a cup is neither. */
export function asItIs(verdict: Verdict): 'lean' | 'rich' | undefined {
  if (verdict.kind === 'good' || verdict.off === undefined) return undefined;
  return verdict.off < 0 ? 'lean' : 'rich';
}
