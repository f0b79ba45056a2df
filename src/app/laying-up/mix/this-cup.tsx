import { useSignal } from '@preact/signals';
import { Secondary } from '#app/parts/action.tsx';
import { QuantityField } from '#app/parts/field.tsx';
import { type QuantityInput, useQuantity } from '#app/parts/quantity-input.ts';
import { show } from '#app/state/show.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { MixOfBuild } from './mix-of-build.ts';
import type { MixPlan } from './mix-plan.ts';
import { useTyped } from './typed-draft.ts';

export interface CupSize {
  input: QuantityInput;
  open: { value: boolean };
  /** kg of mixed resin the builder wants in this cup; nothing while the plan's own share holds. */
  total: number | undefined;
  problem: string | undefined;
}

/** The size of the next cup, when it is to be another than the even share. */
export function useCupSize(state: BuildState, mix: MixOfBuild): CupSize {
  const text = useTyped(`${state.header.id}:${mix.round}:${mix.cups.length}:size`);
  const open = useSignal(text.value !== '');
  const max = state.header.resin.largestCup;
  const input = useQuantity(undefined, { quantity: 'mass', positive: true, optional: true, max }, text);
  const used = open.value && text.value.trim() !== '';
  return {
    input,
    open,
    total: used ? input.si.value : undefined,
    problem: used ? input.problem.value : undefined,
  };
}

export function ThisCup({ size, plan }: { size: CupSize; plan: MixPlan }) {
  const label = plan.cups > 0 ? 'Another size for this cup' : 'Mix one more cup';
  if (!size.open.value) {
    return (
      <Secondary
        onPress={() => {
          size.open.value = true;
        }}
      >
        {label}
      </Secondary>
    );
  }
  const hint =
    plan.cups > 0
      ? `Resin and hardener together; left empty it is ${show(plan.each.total, 'mass')}.`
      : 'Resin and hardener together.';
  return <QuantityField label={`Mix in cup ${plan.next.number}`} input={size.input} hint={hint} />;
}
