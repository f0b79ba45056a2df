import { Action, Beside, LinkButton, Secondary } from '#app/parts/action.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Caution, Warning } from '#app/parts/warning.tsx';
import { show } from '#app/state/show.ts';
import { oldLot } from '#app/stock/lots/old-words.ts';
import { TooOld } from '#app/stock/lots/too-old.tsx';
import type { BuildState } from '#shared/record/build-state.ts';
import { AllMixed } from './all-mixed.tsx';
import { cupLife } from './cup-life.ts';
import { CupLifeLines } from './cup-life-lines.tsx';
import { CupsSoFar } from './cups-so-far.tsx';
import { planOf } from './mix-of-build.ts';
import { hardenerWords, ratioWords } from './mix-words.ts';
import { PlanFigures } from './plan-figures.tsx';
import { ReadAgain } from './read-again.tsx';
import { ScaleLine, ScaleWarning } from './scale-line.tsx';
import { ThisCup, useCupSize } from './this-cup.tsx';
import { useTyped } from './typed-draft.ts';
import { type PlannedProps, type PlanProps, useStart } from './use-start.tsx';

/** How much to mix, in how many cups, and whether this scale can do it. */
export function PlanView({ state, mix }: PlanProps) {
  const wish = useTyped(`${state.header.id}:${mix.round}:${mix.cups.length}:wish`);
  const planned = planOf(state, wish.value === '' ? undefined : Number(wish.value));
  const { header } = state;
  const frame = {
    back: { to: `/build/${header.id}`, label: 'Route' },
    kicker: `${header.name} no. ${header.number} · ${hardenerWords(header.resin)}`,
  };
  if (!planned.ok) {
    return (
      <Screen {...frame} title="Resin to mix">
        <Warning kind="amber" title="No cups can do this">
          {planned.says}
        </Warning>
        <LinkButton to="/start">Start the tube again with other figures</LinkButton>
      </Screen>
    );
  }
  const { plan } = planned;
  const change = (cups: number) => {
    wish.value = String(cups);
  };
  return plan.cups > 0 || mix.cups.length === 0 ? (
    <ToMix {...{ state, mix, plan, frame }} onCups={change} />
  ) : (
    <AllMixed {...{ state, mix, plan, frame }} />
  );
}

const pouredFrom = ['resin', 'hardener'] as const;

/** Resin is reckoned from the cloth: whether it was on the scale decides whether the figure is worth its tenth. */
function clothWords({ header, weights }: BuildState): string {
  const weighed = weights.get('cutCloth')?.entry.mass;
  return weighed === undefined
    ? `For ${show(header.clothMass, 'mass')} of cloth, as the tube was begun with: not weighed since it was cut.`
    : `For ${show(weighed, 'mass')} of cloth, as weighed.`;
}

function ToMix({ state, mix, plan, frame, onCups }: PlannedProps & { onCups: (cups: number) => void }) {
  const { resin } = state.header;
  const old = pouredFrom.flatMap((of) => oldLot(state, of) ?? []);
  const size = useCupSize(state, mix);
  const { start, sheet } = useStart(state, plan, size.total ?? plan.each.total, mix.mixing.ratio);
  return (
    <Screen
      {...frame}
      title={mix.cups.length === 0 ? 'Resin to mix' : 'Still to mix'}
      actions={
        <Action onPress={start} not={size.problem && 'Check the size of this cup'}>
          Tare cup {plan.next.number} and start
        </Action>
      }
    >
      {old.map((lot) => (
        <TooOld key={lot.name} lot={lot} />
      ))}
      <PlanFigures plan={plan} resin={resin} />
      {old.length > 0 && <LinkButton to={`/lots/build/${state.header.id}`}>Take another can</LinkButton>}
      <ScaleWarning cup={size.total ?? plan.each.total} mix={mix} />
      <p>
        <strong>{ratioWords(resin)}</strong>
      </p>
      <p>{clothWords(state)}</p>
      {mix.cups.length === 0 && (
        <Caution>
          Amine hardener burns eyes and can make skin allergic for life: glasses on before the can is opened,
          fresh gloves. A deep cup heats itself: pour it out flat at once. One that smokes goes outside,
          uncovered, with nobody over it.
        </Caution>
      )}
      <Beside>
        {plan.cups > plan.fewest && (
          <Secondary onPress={() => onCups(plan.cups - 1)}>Fewer, bigger cups</Secondary>
        )}
        {plan.cups < plan.most && (
          <Secondary onPress={() => onCups(plan.cups + 1)}>More, smaller cups</Secondary>
        )}
      </Beside>
      <CupLifeLines resin={resin} life={cupLife(state, size.total ?? plan.each.total, Date.now())} />
      <Beside>
        <LinkButton to={`/mix/${state.header.id}/times`}>When to mix each cup</LinkButton>
        <ReadAgain state={state} />
      </Beside>
      <ScaleLine />
      <ThisCup size={size} plan={plan} />
      <CupsSoFar state={state} mix={mix} />
      {sheet}
    </Screen>
  );
}
