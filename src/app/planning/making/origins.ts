import { type Signal, signal } from '@preact/signals';
import type { QuantityInput } from '#app/parts/quantity-input.ts';
import { type Learnable, learnable, type Origin, type ResinGoal } from '#shared/record/plan.ts';

/** Whose figure stands in a field, and which figure that was: typed over, it is nobody's but the builder's. */
export interface Taken extends Origin {
  value: number | undefined;
}

export type Origins = Readonly<Partial<Record<Learnable, Taken>>>;
export type LearnedInputs = Readonly<Record<Learnable, QuantityInput>>;

/** As a plan kept them. */
export function originsOf(goal: ResinGoal, inputs: LearnedInputs): Signal<Origins> {
  const kept = learnable.flatMap((key) => {
    const origin = goal.from?.[key];
    return origin ? [[key, { ...origin, value: inputs[key].si.peek() }] as const] : [];
  });
  return signal(Object.fromEntries(kept));
}

/** Those whose figure still stands in its field. */
export function standing(origins: Origins, inputs: LearnedInputs): Origins {
  const kept = learnable.flatMap((key) => {
    const taken = origins[key];
    return taken && inputs[key].si.value === taken.value ? [[key, taken] as const] : [];
  });
  return Object.fromEntries(kept);
}

/** What is kept of them in a plan or a build; nothing where all was typed. */
export function keptOrigins(origins: Origins): Pick<ResinGoal, 'from'> {
  const kept = Object.entries(origins).map(([key, { value: _, ...origin }]) => [key, origin] as const);
  return kept.length === 0 ? {} : { from: Object.fromEntries(kept) };
}
