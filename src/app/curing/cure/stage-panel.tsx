import type { ComponentChildren } from 'preact';
import { Beside, Secondary } from '#app/parts/action.tsx';
import { Choice } from '#app/parts/field.tsx';
import { stepIn } from '#app/parts/step-field.tsx';
import { SteppedField } from '#app/parts/stepped-field.tsx';
import type { ResinSystem } from '#shared/record/resin-system.ts';
import type { CureDraft, StageDraft } from './cure-draft.ts';
import { moveStage, removeStage } from './cure-edits.ts';
import { hourlyUnit, showRate } from './rate-words.ts';
import { stageQuestion } from './stage-question.ts';
import { UnitQuestionAsked } from './unit-question-asked.tsx';

interface Props {
  draft: CureDraft;
  stage: StageDraft;
  /** Its number, from 1 */
  number: number;
  resin: ResinSystem | undefined;
  children?: ComponentChildren;
}

function Rate({ stage }: { stage: StageDraft }) {
  if (!stage.offMandrel) {
    return (
      <SteppedField
        label={stage.kind === 'ramp' ? 'How fast up' : 'How fast down'}
        input={stage.rate}
        step={stepIn(0.5, 1)}
        hint={stage.kind === 'ramp' ? `before gel ${showRate(1 / 60)} to ${showRate(3 / 60)}` : undefined}
      />
    );
  }
  return (
    <SteppedField
      label={stage.kind === 'ramp' ? 'How fast up' : 'How fast down'}
      input={stage.rate}
      step={5}
      unit={hourlyUnit()}
      hint={`free-standing ${showRate(10 / 3600)} to ${showRate(20 / 3600)}`}
    />
  );
}

function Figures({ draft, stage, resin }: Omit<Props, 'number' | 'children'>) {
  if (stage.kind === 'hold') {
    return <SteppedField label="Lasts" input={stage.lasts} step={15} hint="like 3 h or 90 min" />;
  }
  const question = stageQuestion(draft, stage, resin);
  return (
    <>
      <SteppedField
        label={stage.kind === 'ramp' ? 'Ramps to' : 'Cools to'}
        input={stage.to}
        step={stepIn(1, 5)}
      />
      {question && <UnitQuestionAsked question={question} input={stage.to} />}
      <Rate stage={stage} />
    </>
  );
}

const where = [
  { value: 'on', label: 'On it' },
  { value: 'off', label: 'Off it' },
] as const;

/** One stage by number: its figures, its place, and whether the mandrel is still in the tube. */
export function StagePanel({ draft, stage, number, resin, children }: Props) {
  const stages = draft.stages.value;
  const set = (offMandrel: boolean) => {
    draft.stages.value = stages.map((s) => (s.key === stage.key ? { ...s, offMandrel } : s));
  };
  return (
    <div class="stage-panel" role="group" aria-label={`Stage ${number}`}>
      {children}
      <Figures draft={draft} stage={stage} resin={resin} />
      <Choice
        label="The tube and its mandrel"
        value={stage.offMandrel ? 'off' : 'on'}
        options={where}
        onChange={(value) => set(value === 'off')}
      />
      <Beside>
        {number > 1 && <Secondary onPress={() => moveStage(draft, stage.key, -1)}>Earlier</Secondary>}
        {number < stages.length && (
          <Secondary onPress={() => moveStage(draft, stage.key, 1)}>Later</Secondary>
        )}
        <Secondary onPress={() => removeStage(draft, stage.key)}>Remove</Secondary>
      </Beside>
    </div>
  );
}
