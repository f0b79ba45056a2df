import { tickDrafts } from '#app/laying-up/build/ticks.ts';
import { Action, Secondary } from '#app/parts/action.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { go } from '#app/router.ts';
import { record } from '#app/state/record.ts';
import { theStore } from '#app/state/shop.ts';
import { CupsSoFar } from './cups-so-far.tsx';
import { mixStep } from './mix-of-build.ts';
import { PlanFigures } from './plan-figures.tsx';
import { ScaleWarning } from './scale-line.tsx';
import { ThisCup, useCupSize } from './this-cup.tsx';
import { type PlannedProps, useStart } from './use-start.tsx';

/** Nothing is left to mix; one more cup can still be. */
export function AllMixed({ state, mix, plan, frame }: PlannedProps) {
  const { header } = state;
  const size = useCupSize(state, mix);
  const { start, sheet } = useStart(state, plan, size.total ?? 0, mix.mixing.ratio);
  const step = mixStep(state);
  const onward = async () => {
    const ticked = step ? await record(tickDrafts(state, step, () => theStore().newId())) : true;
    if (ticked) go(`/build/${header.id}`);
  };
  return (
    <Screen
      {...frame}
      title="All of it is mixed"
      actions={
        <>
          {size.total !== undefined && (
            <Secondary onPress={start}>Tare cup {plan.next.number} and start</Secondary>
          )}
          <Action onPress={onward}>{step ? 'All cups are mixed' : 'To the route'}</Action>
        </>
      }
    >
      <PlanFigures plan={plan} resin={header.resin} />
      <CupsSoFar state={state} mix={mix} />
      <ThisCup size={size} plan={plan} />
      {size.total !== undefined && <ScaleWarning cup={size.total} mix={mix} />}
      {sheet}
    </Screen>
  );
}
