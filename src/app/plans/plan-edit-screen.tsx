import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { AnswerFigures } from '#app/making/answer.tsx';
import { answerOf } from '#app/making/draft.ts';
import { ClothFields, Pick, ResinFields } from '#app/making/making-fields.tsx';
import { Action, LinkButton, Secondary } from '#app/parts/action.tsx';
import { QuantityField, SelectField, TextField } from '#app/parts/field.tsx';
import { allGood } from '#app/parts/quantity-input.ts';
import { Screen } from '#app/parts/screen.tsx';
import { go, type Params } from '#app/router.ts';
import { docsOf, findDoc, saveDoc } from '#app/state/documents.ts';
import { show } from '#app/state/show.ts';
import { mandrelLine } from '#app/wall/wall-lines.ts';
import type { WalledPlan } from '#app/wall/wall-model.ts';
import { type PlanDraft, planDraft, planFieldsOf, planOf } from './plan-draft.ts';

/** What is typed here stays while the builder looks something up elsewhere. */
const drafts = new Map<string, PlanDraft>();

function draftFor(key: string, make: () => PlanDraft): PlanDraft {
  const kept = drafts.get(key) ?? make();
  drafts.set(key, kept);
  return kept;
}

function MandrelFields({ draft }: { draft: PlanDraft }) {
  return (
    <>
      <SelectField
        label="Mandrel"
        value={draft.mandrel.value}
        options={[
          { value: '', label: 'Not on the shelf' },
          ...docsOf('mandrel').map((m) => ({ value: m.doc, label: m.body.name })),
        ]}
        onChange={(doc) => {
          draft.mandrel.value = doc;
          const mandrel = findDoc('mandrel', doc);
          if (mandrel) draft.mandrelDiameter.set(mandrel.body.diameter);
        }}
      />
      <div class="field-pair">
        <QuantityField label="Its diameter" input={draft.mandrelDiameter} />
        <QuantityField label="Tube length" input={draft.tubeLength} />
      </div>
    </>
  );
}

function CureFields({ draft }: { draft: PlanDraft }) {
  return (
    <>
      <div class="field-pair">
        <QuantityField label="Hold at" input={draft.holdAt} />
        <QuantityField label="Hold for" input={draft.holdFor} hint="like 3 h or 90 min" />
      </div>
      <div class="field-pair">
        <QuantityField label="Ramp" input={draft.rampRate} />
        <QuantityField
          label="Hottest in service"
          input={draft.serviceTemperature}
          hint="dark in the sun 75 °C"
        />
      </div>
    </>
  );
}

const saveWords = (found: boolean, draft: PlanDraft) =>
  found ? 'Save as a new revision' : draft.fromWall.value ? 'Save, then draw its wall' : 'Save the plan';

/** What cannot be typed here, because the wall says it. */
function Follows({ plan, doc }: { plan: WalledPlan; doc: string }) {
  return (
    <>
      <p>
        Mandrel, length, plies and cloth follow from the drawn wall: {show(plan.tubeLength, 'length', 0)} on{' '}
        {mandrelLine(plan)}.
      </p>
      <LinkButton to={`/plan/${doc}/wall`}>Change its wall</LinkButton>
    </>
  );
}

/** How is this kind of tube to be made? */
export function PlanEditScreen({ params }: { params: Params }) {
  const found = findDoc('plan', params.doc);
  const key = found?.revision.id ?? 'new';
  const draft = draftFor(key, () => planDraft(found?.body));
  const answer = useMemo(() => answerOf(draft), [draft]);
  const nameProblem = useSignal<string | undefined>(undefined);
  const back = found
    ? { to: `/plan/${found.doc}`, label: found.body.name }
    : { to: '/plans', label: 'Plans' };

  const save = async () => {
    nameProblem.value = draft.name.value.trim() ? undefined : 'Give the plan a name, like Upper mast.';
    const good = allGood(planFieldsOf(draft)) && draft.goal.ratioProblem.value === undefined;
    const plan = good ? planOf(draft) : undefined;
    if (!plan) {
      document.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
      return;
    }
    const doc = await saveDoc('plan', plan, found ? { doc: found.doc } : {});
    if (doc === undefined) return;
    drafts.delete(key);
    go(!found && draft.fromWall.value ? `/plan/${doc}/wall` : `/plan/${doc}`);
  };
  const retire = async () => {
    if (found && (await saveDoc('plan', found.body, { doc: found.doc, retired: true }))) go('/plans');
  };

  return (
    <Screen
      title={found ? 'Change the plan' : 'New plan'}
      back={back}
      actions={<Action onPress={save}>{saveWords(found !== undefined, draft)}</Action>}
    >
      <TextField
        label="Name"
        text={draft.name}
        problem={draft.name.value.trim() ? undefined : nameProblem.value}
      />
      {draft.walled && found ? (
        <Follows plan={draft.walled} doc={found.doc} />
      ) : (
        <>
          <MandrelFields draft={draft} />
          <ClothFields draft={draft} {...(!found && { fromWall: draft.fromWall })} />
          <QuantityField
            label="Plies"
            input={draft.plies}
            hint={draft.fromWall.value ? 'to start with, everywhere' : 'whole wraps through the wall'}
          />
        </>
      )}
      <ResinFields draft={draft} />
      {!draft.walled && !draft.fromWall.value && <AnswerFigures answer={answer.value} />}
      <Pick type="release" label="Release" chosen={draft.release} none="None of these" />
      <Pick type="tape" label="Shrink tape" chosen={draft.tape} none="No tape" />
      <h2>Cure</h2>
      <CureFields draft={draft} />
      <Pick type="checklist" label="Checklist" chosen={draft.checklist} />
      <TextField label="Note" text={draft.note} long />
      {found && <Secondary onPress={retire}>Take it off the list</Secondary>}
    </Screen>
  );
}
