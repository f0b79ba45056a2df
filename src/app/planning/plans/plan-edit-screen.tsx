import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { cureIsGood, focusWrong } from '#app/curing/cure/check-cure.ts';
import { ScheduleEditor } from '#app/curing/cure/schedule-editor.tsx';
import { StarterPick } from '#app/curing/cure/starter-pick.tsx';
import { Action, LinkButton, Secondary } from '#app/parts/action.tsx';
import { Ask } from '#app/parts/ask.tsx';
import { QuantityField, TextField } from '#app/parts/field.tsx';
import { HomeScreenFirst } from '#app/parts/home-screen-first.tsx';
import { allGood } from '#app/parts/quantity-input.ts';
import { Screen } from '#app/parts/screen.tsx';
import { AnswerFigures } from '#app/planning/making/answer.tsx';
import { ByTheBook } from '#app/planning/making/by-the-book.tsx';
import { answerOf } from '#app/planning/making/draft.ts';
import { LearnedFields } from '#app/planning/making/learned-fields.tsx';
import { ClothFields, Pick, ResinFields } from '#app/planning/making/making-fields.tsx';
import { MandrelFields } from '#app/planning/making/mandrel-fields.tsx';
import { mandrelLine } from '#app/planning/wall/wall-lines.ts';
import type { WalledPlan } from '#app/planning/wall/wall-model.ts';
import { go, type Params } from '#app/router.ts';
import { findDoc, saveDoc } from '#app/state/documents.ts';
import { show } from '#app/state/show.ts';
import { celsius } from '#shared/reference/quantities.ts';
import { type PlanDraft, planDraft, planFieldsOf, planOf } from './plan-draft.ts';
import { planLimits } from './plan-limits.ts';

/** What is typed here stays while the builder looks something up elsewhere. */
const drafts = new Map<string, PlanDraft>();

function draftFor(key: string, make: () => PlanDraft): PlanDraft {
  const kept = drafts.get(key) ?? make();
  drafts.set(key, kept);
  return kept;
}

const resinOf = (draft: PlanDraft) => findDoc('resin', draft.resin.value)?.body;

function CureFields({ draft }: { draft: PlanDraft }) {
  const resin = resinOf(draft);
  const tape = findDoc('tape', draft.tape.value)?.body;
  const release = findDoc('release', draft.release.value)?.body;
  const beside = { mandrel: draft.mandrel.value, ...(draft.walled && { wall: draft.walled.wall }) };
  return (
    <>
      <QuantityField
        label="Hottest in service"
        ask={<Ask term="tg" asks="What is softening in heat?" />}
        input={draft.serviceTemperature}
        hint={`dark in the sun ${show(celsius(75), 'temperature', 0)}, white ${show(celsius(50), 'temperature', 0)}`}
      />
      <StarterPick draft={draft.cure} />
      <ScheduleEditor
        draft={draft.cure}
        limits={resin ? planLimits(beside, { resin, release, tape }) : []}
        resins={resin ? [resin] : []}
        tape={tape}
      />
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
    const cured = cureIsGood(draft.cure, resinOf(draft));
    const good = allGood(planFieldsOf(draft)) && cured && draft.goal.ratioProblem.value === undefined;
    const plan = good ? planOf(draft) : undefined;
    if (!plan) {
      focusWrong();
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
      <HomeScreenFirst />
      <TextField
        label="Name"
        text={draft.name}
        problem={draft.name.value.trim() ? undefined : nameProblem.value}
      />
      {draft.walled && found ? (
        <Follows plan={draft.walled} doc={found.doc} />
      ) : (
        <>
          <p class="quiet">
            A cloth, resin or mandrel of your own goes on <a href="#/shelf">the shelf</a> first. What is typed
            here stays.
          </p>
          <MandrelFields draft={draft} />
          <ClothFields draft={draft} {...(!found && { fromWall: draft.fromWall })} />
          <QuantityField
            label="Plies"
            ask={<Ask term="plies" asks="What are plies?" />}
            input={draft.plies}
            hint={draft.fromWall.value ? 'to start with, everywhere' : 'whole wraps through the wall'}
          />
        </>
      )}
      <ResinFields draft={draft} />
      {!draft.walled && !draft.fromWall.value && <AnswerFigures answer={answer.value} />}
      <ByTheBook draft={draft} answer={answer.value} />
      <LearnedFields draft={draft} ply />
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
