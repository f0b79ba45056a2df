import { Beside, LinkButton, Secondary } from '#app/parts/action.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { wallOfBuild } from '#app/planning/cutting/plan-of-build.ts';
import { takenFrom } from '#app/stock/lots/taken-from.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { StageState } from '#shared/record/route-state.ts';
import { act } from './act.ts';
import { AskedSheet } from './asked-sheet.tsx';
import { hardenerIn } from './guards.ts';
import { missedFrom, presentStep } from './position.ts';
import { Rated } from './rated.tsx';
import { asksForFilms, StageActions } from './stage-actions.tsx';
import { StageStrip } from './stage-strip.tsx';
import { stageWords } from './stage-words.ts';
import { aboutStep } from './step-about.ts';
import { StepLine } from './step-line.tsx';
import { judgeSurroundings } from './surroundings.ts';
import { concernSentence } from './surroundings-words.ts';
import { forgottenDrafts, waitOf } from './ticks.ts';
import { useTicking } from './use-ticking.ts';

function StageWarnings({ state, stage }: { state: BuildState; stage: StageState }) {
  const films = asksForFilms(state, stage);
  const beforeHardener = stage.stage === 'setUp' || stage.stage === 'mix';
  const read = beforeHardener && !hardenerIn(state, stage.round) ? state.surroundings?.entry : undefined;
  const concerns = read ? judgeSurroundings(read).concerns : [];
  return (
    <>
      {films && (
        <Warning kind="stop" title={films}>
          A film rolled into the wall ruins the tube.
        </Warning>
      )}
      {concerns.length > 0 && (
        <Warning kind="amber" title="The shop is not ready for resin" announce>
          {concerns.map((c) => (
            <p key={c.what}>{concernSentence(c)}</p>
          ))}
        </Warning>
      )}
    </>
  );
}

/** Ticks passed over, and the one press that says they were done. */
function Forgotten({ state, stage }: { state: BuildState; stage: StageState }) {
  const missed = missedFrom(state, stage);
  if (!missed) return null;
  const { steps, before } = missed;
  const said = `Ticked, ${steps.length === 1 ? 'time' : 'times'} not seen: ${steps.length}`;
  return (
    <div class="forgotten">
      <p>
        {steps.length} {steps.length === 1 ? 'step' : 'steps'} before “{before.step.text}” not ticked.
      </p>
      <Secondary onPress={() => act(forgottenDrafts(state, steps), { said })}>All done to here</Secondary>
    </div>
  );
}

/** What is looked up before hands get to it: tape, clearance, what to cut where the plan was drawn piece by piece. */
function Asked({ state, stage }: { state: BuildState; stage: StageState }) {
  const { id } = state.header;
  if (stage.stage === 'shrinkTape')
    return <LinkButton to={`/tape/${id}`}>How much tape, how hard</LinkButton>;
  if (stage.stage === 'demold') return <LinkButton to={`/demold/${id}`}>Is it loose yet?</LinkButton>;
  if (!wallOfBuild(state.header)) return null;
  if (stage.stage === 'cut') return <LinkButton to={`/cut/${id}`}>Cut list</LinkButton>;
  if (stage.stage === 'wrap') return <LinkButton to={`/edge/${id}`}>Where the outer edge landed</LinkButton>;
  return null;
}

/** The roll, cans or reel that this stage takes from, and the way to another. */
function TakenFrom({ state, stage }: { state: BuildState; stage: StageState }) {
  const words = takenFrom(state, stage.stage);
  return words ? <LinkButton to={`/lots/build/${state.header.id}`}>{words}</LinkButton> : null;
}

/** One stage of the route: its steps, and what the thumb can do about them. */
export function StageView({ state, stage }: { state: BuildState; stage: StageState }) {
  const ticking = useTicking(state);
  const { name, number } = state.header;
  const at = state.stages.indexOf(stage) + 1;
  const current = presentStep(stage);
  const round = state.rounds > 1 ? ` · round ${stage.round}` : '';
  return (
    <>
      <Screen
        kicker={`${name} no. ${number} · stage ${at} of ${state.stages.length}${round}`}
        title={stageWords[stage.stage]}
        actions={<StageActions state={state} stage={stage} ticking={ticking} />}
      >
        <StageStrip stages={state.stages} shown={stage} />
        <StageWarnings state={state} stage={stage} />
        <Asked state={state} stage={stage} />
        <ol class="steps">
          {stage.steps.map((step) => (
            <StepLine
              key={step.key}
              step={step}
              isNow={step === current}
              wait={waitOf(state, step)}
              about={aboutStep(state, step)}
              onPress={() => ticking.touch(step)}
            />
          ))}
        </ol>
        <Forgotten state={state} stage={stage} />
        <TakenFrom state={state} stage={stage} />
        <Rated state={state} stage={stage} onRate={() => (ticking.asked.value = { kind: 'rate' })} />
        <Beside>
          <LinkButton to="/clocks">Clocks</LinkButton>
          <LinkButton to="/timer">Free timer</LinkButton>
        </Beside>
      </Screen>
      <AskedSheet state={state} stage={stage} ticking={ticking} />
    </>
  );
}
