import type { ComponentChildren } from 'preact';
import { stretchesOf } from '#app/curing/oven/oven-schedule.ts';
import { Beside, Secondary } from '#app/parts/action.tsx';
import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import type { ResinSystem } from '#shared/record/resin-system.ts';
import type { CureDraft, StageDraft } from './cure-draft.ts';
import { stageFields } from './cure-draft.ts';
import { addPostcure, addStage, undo } from './cure-edits.ts';
import { StagePanel } from './stage-panel.tsx';
import { stageQuestion } from './stage-question.ts';
import { kindWords, stageAbout, stageTitle } from './stage-words.ts';

interface Props {
  /** Shown with the open stage: what its figures come to. */
  children?: ComponentChildren;
  draft: CureDraft;
  /** Undefined while a figure is missing. */
  schedule: CureSchedule | undefined;
  resin: ResinSystem | undefined;
}

/** What its line says while a figure of it cannot be read. */
function brokenAbout(stage: StageDraft): string {
  return stageFields(stage).some((f) => f.problem.value !== undefined)
    ? 'a figure is missing or wrong'
    : 'waits for another stage';
}

function StageLine({
  draft,
  schedule,
  resin,
  stage,
  index,
  children,
}: Props & { stage: StageDraft; index: number }) {
  const isOpen = draft.chosen.value === stage.key;
  const whole = schedule?.stages[index];
  const stretch = schedule && stretchesOf(schedule)[index];
  const asked = stageQuestion(draft, stage, resin) !== undefined;
  const about = whole && stretch ? stageAbout(whole, stretch) : brokenAbout(stage);
  const toggle = () => {
    draft.chosen.value = isOpen ? undefined : stage.key;
  };
  return (
    <li>
      <button type="button" class="stage-line" aria-expanded={isOpen} onClick={toggle}>
        <span class="stage-number">{index + 1}</span>
        <span class="stage-text">
          <span class="stage-title">{whole ? stageTitle(whole) : kindWords[stage.kind]}</span>
          <span class="stage-about">{asked ? 'asks which unit is meant' : about}</span>
        </span>
        <span aria-hidden="true">{isOpen ? '−' : '+'}</span>
      </button>
      {isOpen && (
        <StagePanel draft={draft} stage={stage} number={index + 1} resin={resin}>
          {children}
        </StagePanel>
      )}
    </li>
  );
}

/** The stages in order, one of them open under the thumb, and what can be put after it. */
export function StageList({ draft, schedule, resin, children }: Props) {
  const stages = draft.stages.value;
  const open = stages.findIndex((s) => s.key === draft.chosen.value);
  return (
    <section class="stage-list">
      <h2>Stages</h2>
      <ol class="stages">
        {stages.map((stage, index) => (
          <StageLine
            key={stage.key}
            draft={draft}
            schedule={schedule}
            resin={resin}
            stage={stage}
            index={index}
          >
            {children}
          </StageLine>
        ))}
      </ol>
      {stages.length === 0 && <p>A cure is at least one hold: add it.</p>}
      <p class="stage-add">{open < 0 ? 'Add at the end' : `Add after stage ${open + 1}`}</p>
      <Beside>
        <Secondary onPress={() => addStage(draft, 'ramp')}>Ramp</Secondary>
        <Secondary onPress={() => addStage(draft, 'hold')}>Hold</Secondary>
        <Secondary onPress={() => addStage(draft, 'cool')}>Cool</Secondary>
      </Beside>
      <Beside>
        {schedule && !stages.some((s) => s.offMandrel) && (
          <Secondary onPress={() => addPostcure(draft, resin)}>Add a postcure</Secondary>
        )}
        {draft.before.value && <Secondary onPress={() => undo(draft)}>Undo</Secondary>}
      </Beside>
    </section>
  );
}
