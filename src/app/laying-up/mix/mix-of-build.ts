import { shopNow } from '#app/laying-up/clocks/shop-now.ts';
import { partMasses } from '#app/state/masses.ts';
import { now } from '#app/state/now.ts';
import { scaleRatioError, smallestCupForScale } from '#calc';
import type { BuildState } from '#shared/record/build-state.ts';
import type { CupState } from '#shared/record/cup-state.ts';
import type { StepState } from '#shared/record/route-state.ts';
import { type CupPhase, cupPhase, type Mixing, mixingOf } from './cup-phase.ts';
import { type MixPlan, mixPlan } from './mix-plan.ts';

export interface RoundCup {
  cup: CupState;
  phase: CupPhase;
}

export interface MixOfBuild {
  round: number;
  mixing: Mixing;
  /** Cups of this round in the order they were started. */
  cups: RoundCup[];
  /** The cup on the scale: begun, and not yet mixed. */
  weighing?: RoundCup;
  /** Mixed and still in the cup, oldest first. */
  inCup: CupState[];
}

/** The cups of the present round. */
export function mixOf(state: BuildState): MixOfBuild {
  const mixing = mixingOf(state.header.resin);
  const cups = state.cups
    .filter((c) => c.round === state.rounds)
    .map((cup) => ({ cup, phase: cupPhase(cup, mixing) }));
  const weighing = cups.find((c) => ['resin', 'contact', 'pour'].includes(c.phase));
  const inCup = cups.filter((c) => c.phase === 'mixed').map((c) => c.cup);
  return { round: state.rounds, mixing, cups, ...(weighing && { weighing }), inCup };
}

export type Planned = { ok: true; plan: MixPlan } | { ok: false; says: string };

/** Why no number of cups can do it, and what to change. */
function whyNot(error: unknown): string {
  if (!(error instanceof RangeError)) throw error;
  const field = error.message.split(' ')[0];
  switch (field) {
    case 'lossPerCup':
      return 'A cup loses as much as it may hold: with these losses and this resin no cup leaves anything for the cloth.';
    case 'workingRate':
      return 'At this working rate a cup goes off before any of it is laid down: more than a thousand cups would be needed.';
    case 'largestCup':
      return 'The largest cup of this resin is too small for this tube: more than a thousand cups would be needed.';
    default:
      return 'What to mix cannot be worked out from the figures this tube was started with: check its cloth, its losses and its resin.';
  }
}

/** What is left to mix for a build; `wish` is how many cups the builder wants to make of it. */
export function planOf(state: BuildState, wish?: number): Planned {
  const { cloth, resin, goal, coreResin } = state.header;
  const { resin: temperature } = shopNow(state, now.peek());
  const input = {
    clothMass: partMasses(state).cloth,
    cloth,
    resin,
    goal,
    extraKept: coreResin,
    temperature,
  };
  try {
    return { ok: true, plan: mixPlan({ ...input, cups: state.cups, round: state.rounds, wish }) };
  } catch (error) {
    return { ok: false, says: whyNot(error) };
  }
}

export interface ScaleDoubt {
  /** Share by which the scale alone can be off on this cup. */
  error: number;
  /** kg of mixed resin that it can hold the tolerance on */
  smallest: number;
}

/** Whether the scale's step is too coarse for the tolerance on a cup of this size, before anything is poured. */
export function scaleDoubt(
  cup: number,
  scaleStep: number,
  { ratio, tolerance }: Mixing,
): ScaleDoubt | undefined {
  if (cup <= 0 || tolerance <= 0) return undefined;
  const error = scaleRatioError({ cup, scaleStep, hardenerPerResin: ratio });
  if (error <= tolerance) return undefined;
  return { error, smallest: smallestCupForScale({ scaleStep, hardenerPerResin: ratio, tolerance }) };
}

/** The step of the route that mixing answers, while it is not ticked. */
export function mixStep(state: BuildState): StepState | undefined {
  return state.stages
    .filter((s) => s.round === state.rounds)
    .flatMap((s) => s.steps)
    .find((s) => s.step.role === 'mix' && !s.done);
}
