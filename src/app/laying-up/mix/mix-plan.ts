import { cupsFor, resinToMix } from '#calc';
import type { CupState } from '#shared/record/cup-state.ts';
import { hardenerPerResin, type RecipeInput, recipe, usableLife } from './recipe.ts';

export interface MixPlan {
  /** Resin that stays in the part, kg */
  kept: number;
  /** Mixed resin in all, for the whole build, kg */
  total: number;
  /** In cups that were not thrown out, kg */
  mixed: number;
  /** Still to mix, kg; 0 when enough is mixed */
  left: number;
  /** Cups still to mix, and how few and how many they may be. */
  cups: number;
  fewest: number;
  most: number;
  /** What goes into each of them, kg */
  each: { resin: number; hardener: number; total: number };
  /** Of the next cup: number in its round, and how many there will be. */
  next: { number: number; of: number };
}

export interface PlanInput extends RecipeInput {
  /** Every cup of the build, of all its rounds. */
  cups: readonly CupState[];
  round: number;
  /** How many cups the builder wants to make of the rest. */
  wish?: number | undefined;
}

/** No further cup is asked for when less than this share of all the resin is missing (common practice, no source). */
const notWorthACup = 0.05;
/** A pour that stopped a little short must not split the last cup in two. */
const slack = 0.02;
const manyMore = 8;

/** What is in a cup when it is mixed: as poured, else as it will be. */
function comesTo(cup: CupState, ratio: number): number {
  if (cup.hardener > 0) return cup.resin + cup.hardener;
  return cup.resin > 0 ? cup.resin * (1 + ratio) : cup.wanted.resin + cup.wanted.hardener;
}

/** How many cups were still to come by the last one that was started. */
function promised(cups: readonly CupState[]): number | undefined {
  const last = cups.at(-1);
  if (!last) return undefined;
  const lost = cups.filter((c) => c.discardedAt !== undefined && c.discardedAt >= last.startedAt);
  return last.of - last.number + lost.length;
}

/** What each of so many cups holds, kg of mixed resin. */
function split(cups: number, kept: number, { goal, resin }: RecipeInput): number {
  const { squeezeOut: squeezeOutShare, lossPerCup } = goal;
  return Math.min(resin.largestCup, resinToMix({ kept, squeezeOutShare, cups, lossPerCup }) / cups);
}

/**
 * What is left to mix follows what was really mixed: all that is to be applied, less what the cups so far
 * give after their loss, in even cups. Throws the RangeError of `recipe` when no cups can do it.
 */
export function mixPlan(input: PlanInput): MixPlan {
  const { goal, resin } = input;
  const whole = recipe(input);
  const ratio = hardenerPerResin(resin);
  const counted = input.cups.filter((c) => c.discardedAt === undefined);
  const inRound = input.cups.filter((c) => c.round === input.round);
  const mixed = counted.reduce((sum, c) => sum + comesTo(c, ratio), 0);
  const given = counted.reduce((sum, c) => sum + Math.max(0, comesTo(c, ratio) - goal.lossPerCup), 0);
  const applied = resinToMix({
    kept: whole.kept,
    squeezeOutShare: goal.squeezeOut,
    cups: 1,
    lossPerCup: 0,
  });
  const missing = applied - given;
  const number = inRound.length + 1;
  const base = { kept: whole.kept, mixed };
  if (missing <= notWorthACup * applied) {
    const none = { left: 0, cups: 0, fewest: 0, most: 0, each: { resin: 0, hardener: 0, total: 0 } };
    return { ...base, ...none, total: mixed, next: { number, of: number } };
  }
  const kept = missing * (1 - goal.squeezeOut);
  const fewest = cupsFor({
    kept: counted.length > 0 ? kept * (1 - slack) : kept,
    squeezeOutShare: goal.squeezeOut,
    lossPerCup: goal.lossPerCup,
    largestCup: resin.largestCup,
    ...(goal.workingRate !== undefined && {
      workingRate: goal.workingRate,
      usableLife: usableLife(resin, input.temperature),
    }),
  }).cups;
  const most = fewest + manyMore;
  const cups = Math.min(most, Math.max(fewest, input.wish ?? promised(inRound) ?? fewest));
  const total = split(cups, kept, input);
  return {
    ...base,
    left: cups * total,
    total: mixed + cups * total,
    cups,
    fewest,
    most,
    each: eachOf(total, ratio),
    next: { number, of: number + cups - 1 },
  };
}

/** A cup of so much mixed resin, by its parts. */
export function eachOf(total: number, ratio: number): MixPlan['each'] {
  const resin = total / (1 + ratio);
  return { resin, hardener: total - resin, total };
}
