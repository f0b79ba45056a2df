import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { LinkButton } from '#app/parts/action.tsx';
import { Screen } from '#app/parts/screen.tsx';
import type { Params } from '#app/router.ts';
import { buildState, loadJournals } from '#app/state/journals.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { ContactView } from './contact-view.tsx';
import { mixOf } from './mix-of-build.ts';
import { MixedView } from './mixed-view.tsx';
import { PlanView } from './plan-view.tsx';
import { PourView } from './pour-view.tsx';
import { TimesView } from './times-view.tsx';
import './mix.css';

function NoSuchBuild() {
  return (
    <Screen title="No such tube" back={{ to: '/', label: 'Bench' }}>
      <p>This tube is not on this phone. It may have been begun on another one: restore its backup first.</p>
      <LinkButton to="/">To the bench</LinkButton>
    </Screen>
  );
}

function Closed({ state }: { state: BuildState }) {
  const to = `/record/build/${state.header.id}`;
  return (
    <Screen title="This tube is finished" back={{ to, label: 'Record' }}>
      <p>Nothing more is mixed for it. Open it again in the record if it is not done after all.</p>
      <LinkButton to={to}>To its record</LinkButton>
    </Screen>
  );
}

/** Which view: the cup on the scale comes first, then the newest one mixed, then what is left to mix. */
function Mixing({ state, planning }: { state: BuildState; planning: boolean }) {
  const mix = mixOf(state);
  const { mixing, inCup, weighing } = mix;
  const newest = inCup.at(-1);
  const stands = weighing
    ? `${weighing.cup.cup}:${weighing.phase}:${weighing.cup.pours.length}`
    : newest?.cup;
  // A new question is read from its top, wherever the thumb had scrolled to.
  useEffect(() => scrollTo(0, 0), [stands]);
  if (weighing) {
    const props = { state, cup: weighing.cup, mixing, inCup };
    return weighing.phase === 'contact' ? (
      <ContactView key={stands} {...props} />
    ) : (
      <PourView key={stands} {...props} />
    );
  }
  if (newest && !planning) {
    return (
      <MixedView key={newest.cup} state={state} cup={newest} mixing={mixing} others={inCup.slice(0, -1)} />
    );
  }
  return <PlanView key={mix.cups.length} state={state} mix={mix} />;
}

/** Weighing out resin and hardener, cup by cup. Everything shown follows from the build's entries. */
export function MixScreen({ params }: { params: Params }) {
  const id = params.id ?? '';
  const looked = useSignal(false);
  const state = buildState(id);
  useEffect(() => {
    loadJournals([id]).then(() => {
      looked.value = true;
    });
  }, [id, looked]);
  if (!state) return looked.value ? <NoSuchBuild /> : <div class="screen" />;
  if (state.closedAt !== undefined) return <Closed state={state} />;
  if (params.view === 'times') return <TimesView state={state} />;
  return <Mixing state={state} planning={params.view === 'cups'} />;
}
