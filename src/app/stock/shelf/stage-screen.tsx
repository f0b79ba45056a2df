import { useSignal } from '@preact/signals';
import { stageWords } from '#app/laying-up/build/stage-words.ts';
import { Action } from '#app/parts/action.tsx';
import { Empty } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import type { Params } from '#app/router.ts';
import type { StageName, Step } from '#shared/record/checklist.ts';
import { formatDuration } from '#shared/units/time.ts';
import { ArrangeKeys, ArrangeList, PutBack } from './arrange.tsx';
import {
  type ChecklistDraft,
  checklistDraft,
  moved,
  newStepId,
  removeStep,
  setSteps,
  stepsOf,
} from './checklist-draft.ts';
import { NotOnShelf } from './not-on-shelf.tsx';
import { StepSheet } from './step-sheet.tsx';
import './shelf.css';

interface Props {
  draft: ChecklistDraft;
  stage: StageName;
  back: { to: string; label: string };
}

function Stage({ draft, stage, back }: Props) {
  const chosen = useSignal<string | undefined>(undefined);
  const open = useSignal<{ step: Step; fresh: boolean } | undefined>(undefined);
  const steps = stepsOf(draft, stage);
  const at = steps.findIndex((s) => s.id === chosen.value);
  const one = steps[at];
  const close = () => {
    open.value = undefined;
  };
  const done = (step: Step, fresh: boolean) => {
    const place = at < 0 ? steps.length : at + 1;
    const next = fresh
      ? [...steps.slice(0, place), step, ...steps.slice(place)]
      : steps.map((s) => (s.id === step.id ? step : s));
    setSteps(draft, stage, next);
    chosen.value = step.id;
    close();
  };
  return (
    <Screen
      kicker={draft.name.value || 'New checklist'}
      title={stageWords[stage]}
      back={back}
      actions={
        <>
          <PutBack draft={draft} />
          {one && (
            <ArrangeKeys
              onMove={(by) => setSteps(draft, stage, moved(steps, at, by))}
              open="Change"
              onOpen={() => {
                open.value = { step: one, fresh: false };
              }}
              onRemove={() => removeStep(draft, stage, at)}
            />
          )}
          <Action
            onPress={() => {
              open.value = { step: { id: newStepId(), text: '' }, fresh: true };
            }}
          >
            {one ? 'Add a step after it' : 'Add a step'}
          </Action>
        </>
      }
    >
      {steps.length === 0 && <Empty>No steps yet.</Empty>}
      <ArrangeList
        label="Steps"
        chosen={chosen}
        items={steps.map((s) => ({
          key: s.id,
          text: s.text,
          about: s.hint,
          ...(s.waits !== undefined && { value: formatDuration(s.waits) }),
        }))}
      />
      <p class="quiet small">Touch a step to move, change or remove it. Saved with the checklist.</p>
      {open.value && (
        <StepSheet
          step={open.value.step}
          fresh={open.value.fresh}
          onClose={close}
          onDone={(step) => done(step, open.value?.fresh === true)}
        />
      )}
    </Screen>
  );
}

/** Which steps, and in what order? */
export function StageScreen({ params }: { params: Params }) {
  const { doc = '', stage } = params;
  const draft = checklistDraft(doc);
  const found = draft?.list.value.stages.find((s) => s.stage === stage);
  if (!draft || !found) return <NotOnShelf />;
  const back = { to: `/shelf/checklist/${doc}`, label: 'Checklist' };
  return <Stage draft={draft} stage={found.stage} back={back} />;
}
