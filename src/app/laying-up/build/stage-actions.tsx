import { isMixed } from '#app/laying-up/clocks/cup-clock.ts';
import { CupEmptied } from '#app/laying-up/mix/cup-buttons.tsx';
import { Action, LinkButton, Secondary } from '#app/parts/action.tsx';
import { HoldAction } from '#app/parts/hold-action.tsx';
import { goInstead } from '#app/router.ts';
import { now } from '#app/state/now.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { repeating } from '#shared/record/checklist.ts';
import type { ClockState } from '#shared/record/clock-state.ts';
import type { StageState } from '#shared/record/route-state.ts';
import { act } from './act.ts';
import { cupsOf, mixAddress } from './cups-left.ts';
import { filmCount } from './films.ts';
import { filmsWarning } from './guards.ts';
import { presentStage, presentStep, routeAddress } from './position.ts';
import { stageWords } from './stage-words.ts';
import { actionLabel, cupLabel } from './step-action.ts';
import { enoughWords, stillWaiting } from './ticks.ts';
import { UndoKey, UndoWords } from './undo-bar.tsx';
import type { Ticking } from './use-ticking.ts';

interface Props {
  state: BuildState;
  stage: StageState;
  ticking: Ticking;
}

/** What lies nearest besides the step itself; one at most, so that the keys stay big. */
function Nearby({ state, stage, ticking }: Props) {
  const { asked, actionOf, open, tick } = ticking;
  const { round } = stage;
  const step = presentStep(stage);
  const action = step && actionOf(step);
  const { id } = state.header;
  if (step && action?.opens) {
    if (!action.met) return <Secondary onPress={() => tick(step)}>Only tick it</Secondary>;
    return <Secondary onPress={() => open(step)}>{action.opens.label}</Secondary>;
  }
  if (step?.step.role === 'rotationOff') {
    const draft = { kind: 'check', subject: id, what: 'gel', outcome: 'notYet' } as const;
    return (
      <Secondary onPress={() => act([draft], { said: 'Looked: not gelled yet' })}>Not gelled yet</Secondary>
    );
  }
  if (asksForFilms(state, stage)) {
    const films = filmCount(state, round).in === undefined ? 'in' : 'out';
    return (
      <Secondary onPress={() => (asked.value = { kind: 'sheet', sheet: 'films', round, films })}>
        Count films {films}
      </Secondary>
    );
  }
  const cup = repeating.includes(stage.stage) && cupsOf(state, round).length > 0 && cupLabel(state, round);
  if (cup) return <LinkButton to={mixAddress(state)}>{cup}</LinkButton>;
  // Its clock runs as in a deep cup until a thumb says otherwise; the tick that it was poured out may be pressed alone.
  const standing = cupsOf(state, round).find((c) => isMixed(c) && c.emptyAt === undefined);
  if (standing && repeating.includes(stage.stage)) return <CupEmptied state={state} cup={standing} />;
  const present = presentStage(state);
  if (!step || !present || present === stage) return null;
  return (
    <Secondary onPress={() => goInstead(routeAddress(id))}>Back to {stageWords[present.stage]}</Secondary>
  );
}

/** Said from the tape on, until the count is right. */
export function asksForFilms(state: BuildState, { stage, round }: StageState): string | undefined {
  return stage === 'shrinkTape' || stage === 'cure' ? filmsWarning(state, round) : undefined;
}

/** A second press must not end a wait: held, it says that the wait was long enough. */
function Waiting({ state, wait }: { state: BuildState; wait: ClockState }) {
  const draft = { kind: 'clockAnswered', subject: state.header.id, clock: wait.clock } as const;
  return (
    <HoldAction onHeld={() => act([draft], { said: `Long enough: ${wait.label}` })}>
      {enoughWords(wait, now.value)} <small aria-hidden="true">press and hold</small>
    </HoldAction>
  );
}

function Main({ state, stage, ticking }: Props) {
  const { asked, actionOf, press } = ticking;
  const { id, number } = state.header;
  const step = presentStep(stage);
  const present = presentStage(state);
  const wait = step && stillWaiting(state, step, now.value);
  if (wait) return <Waiting state={state} wait={wait} />;
  if (step) {
    const action = actionOf(step);
    const label = action.met || !action.opens ? actionLabel(step.step.text) : action.opens.label;
    return <Action onPress={() => press(step)}>{label}</Action>;
  }
  if (present) {
    return <Action onPress={() => goInstead(routeAddress(id))}>On to {stageWords[present.stage]}</Action>;
  }
  const end = () => {
    if (state.disposition)
      return act([{ kind: 'closed', subject: id }], { said: `Tube no. ${number} is done` });
    asked.value = { kind: 'close' };
  };
  return <Action onPress={end}>Tube no. {number} is done</Action>;
}

/** Everything in thumb reach: the way back, what lies nearby, and what will have happened next. */
export function StageActions(props: Props) {
  const { asked } = props.ticking;
  return (
    <div class="route-actions">
      <UndoWords state={props.state} />
      <div class="beside route-keys">
        <Secondary onPress={() => (asked.value = { kind: 'stages' })}>All stages</Secondary>
        <Nearby {...props} />
        <Secondary onPress={() => (asked.value = { kind: 'note' })}>Note or photo</Secondary>
        {/* Last: what takes its place when it goes opens a sheet, and ticks nothing. */}
        <UndoKey state={props.state} />
      </div>
      <Main {...props} />
    </div>
  );
}
