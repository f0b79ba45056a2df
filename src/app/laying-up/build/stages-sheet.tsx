import { useEffect, useRef } from 'preact/hooks';
import { Beside, LinkButton, Secondary } from '#app/parts/action.tsx';
import { Sheet } from '#app/parts/sheet.tsx';
import { goInstead } from '#app/router.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { repeating } from '#shared/record/checklist.ts';
import type { StageState } from '#shared/record/route-state.ts';
import { act } from './act.ts';
import { presentStage, roundBegun, routeAddress } from './position.ts';
import { stageWords } from './stage-words.ts';

interface Props {
  state: BuildState;
  shown: StageState | undefined;
  onJudge: () => void;
  onClose: () => void;
}

function counts({ steps, done }: StageState): string {
  if (done) return 'done';
  return `${steps.filter((s) => s.done).length} of ${steps.length}`;
}

/** The whole route: looking ahead is free, and so is doing things in another order. */
export function StagesSheet({ state, shown, onJudge, onClose }: Props) {
  const { id } = state.header;
  const present = presentStage(state);
  const list = useRef<HTMLOListElement>(null);
  useEffect(() => list.current?.querySelector('[aria-current]')?.scrollIntoView({ block: 'center' }), []);
  const show = (stage: StageState) => {
    onClose();
    goInstead(routeAddress(id, stage === present ? undefined : stage));
  };
  const again = async () => {
    const round = state.rounds + 1;
    const said = `Round ${round}: mix to cure again`;
    if (!(await act([{ kind: 'roundStarted', subject: id, round }], { said }))) return;
    onClose();
    const first = state.stages.find((s) => repeating.includes(s.stage));
    goInstead(routeAddress(id, first && { ...first, round }));
  };
  return (
    <Sheet
      title="All stages"
      onClose={onClose}
      actions={
        <>
          {roundBegun(state) && <Secondary onPress={again}>Another round: mix to cure again</Secondary>}
          <Beside>
            <Secondary onPress={onJudge}>End it here</Secondary>
            <LinkButton to={`/record/build/${id}`}>Time line</LinkButton>
            <Secondary onPress={onClose}>Close</Secondary>
          </Beside>
        </>
      }
    >
      <ol ref={list}>
        {state.stages.map((stage) => (
          <li key={stage.key}>
            <button
              type="button"
              class={stage === present ? 'stages-line stages-now' : 'stages-line'}
              aria-current={stage === shown ? 'true' : undefined}
              onClick={() => show(stage)}
            >
              <span>
                {stageWords[stage.stage]}
                {stage.round > 1 && ` · round ${stage.round}`}
                {stage === present && <span class="stages-word"> now</span>}
              </span>
              <span class="stages-count">
                {stage.done && <span aria-hidden="true">✓ </span>}
                {counts(stage)}
              </span>
            </button>
          </li>
        ))}
      </ol>
    </Sheet>
  );
}
