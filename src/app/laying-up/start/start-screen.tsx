import { useSignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import { Action } from '#app/parts/action.tsx';
import { Ask } from '#app/parts/ask.tsx';
import { QuantityField, SelectField, TextField } from '#app/parts/field.tsx';
import { HoldAction } from '#app/parts/hold-action.tsx';
import { HomeScreenFirst } from '#app/parts/home-screen-first.tsx';
import { allGood } from '#app/parts/quantity-input.ts';
import { Screen } from '#app/parts/screen.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { AnswerFigures } from '#app/planning/making/answer.tsx';
import { ByTheBook } from '#app/planning/making/by-the-book.tsx';
import { clothDoubt } from '#app/planning/making/cloth-doubt.ts';
import { answerOf, fieldsOf, type MakingDraft, makingDraft } from '#app/planning/making/draft.ts';
import { keepLastMade } from '#app/planning/making/last-made.ts';
import { LearnedFields } from '#app/planning/making/learned-fields.tsx';
import { ClothFields, Pick, ResinFields } from '#app/planning/making/making-fields.tsx';
import { MandrelFields } from '#app/planning/making/mandrel-fields.tsx';
import { go, goInstead, type Params } from '#app/router.ts';
import { type Doc, docsOf, findDoc } from '#app/state/documents.ts';
import { takeIn } from '#app/state/journals.ts';
import { buildNumbers, nextBuildNumber } from '#app/state/numbers.ts';
import { stampEntry } from '#app/state/record.ts';
import { writeThen } from '#app/state/unsaved.ts';
import { draftNeeds } from '#app/stock/lots/needs.ts';
import { StartLots, startDraws, takesOf } from '#app/stock/lots/start-lots.tsx';
import { readLots, useLots } from '#app/stock/lots/use-lots.ts';
import { freezeBuild } from './freeze.ts';

/** What is typed here stays while the builder looks something up elsewhere. */
const drafts = new Map<string, MakingDraft>();

function draftFor(plan: Doc<'plan'> | undefined): MakingDraft {
  const key = plan?.revision.id ?? '';
  const kept = drafts.get(key) ?? makingDraft(plan?.body);
  drafts.set(key, kept);
  return kept;
}

function PlanPick({ plan }: { plan: Doc<'plan'> | undefined }) {
  const plans = docsOf('plan');
  if (plans.length === 0) {
    return (
      <p class="quiet">
        With its cloth cut and weighed a tube starts here. To draw its wall and have the cloth reckoned first,{' '}
        <a href="#/plan/new">write a plan</a>.
      </p>
    );
  }
  return (
    <SelectField
      label="From a plan"
      value={plan?.doc ?? ''}
      options={[{ value: '', label: 'No plan' }, ...plans.map((p) => ({ value: p.doc, label: p.body.name }))]}
      onChange={(doc) => goInstead(doc ? `/start/${doc}` : '/start')}
    />
  );
}

function MoreFields({ draft }: { draft: MakingDraft }) {
  return (
    <details class="more">
      <summary>Mandrel, release, tape, checklist</summary>
      <MandrelFields draft={draft} />
      <QuantityField
        label="Plies"
        ask={<Ask term="plies" asks="What are plies?" />}
        input={draft.plies}
        hint="through the wall"
      />
      <Pick type="release" label="Release" chosen={draft.release} none="None of these" />
      <Pick type="tape" label="Shrink tape" chosen={draft.tape} none="No tape" />
      <Pick type="checklist" label="Checklist" chosen={draft.checklist} />
    </details>
  );
}

/** Is this the tube, and how much resin will it take? */
export function StartScreen({ params }: { params: Params }) {
  const plan = findDoc('plan', params.plan);
  const draft = draftFor(plan);
  const answer = useMemo(() => answerOf(draft), [draft]);
  const nameProblem = useSignal<string | undefined>(undefined);
  const name = draft.name.value.trim();
  const numbers = useSignal<((name: string) => number) | undefined>(undefined);
  useEffect(() => {
    buildNumbers().then((known) => {
      numbers.value = known;
    });
  }, [numbers]);

  const shelf = useLots();
  const needs = draftNeeds(draft, answer.value.ok ? answer.value.recipe : undefined);

  const start = async () => {
    nameProblem.value = name === '' ? 'Give the tube a name, like Upper mast.' : undefined;
    const good = allGood(fieldsOf(draft));
    if (!good || nameProblem.value || draft.goal.ratioProblem.value || !answer.value.ok) {
      document.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
      return;
    }
    const header = freezeBuild(draft, await nextBuildNumber(name), plan?.revision, takesOf(needs));
    if (!header) return;
    const draws = startDraws(header, { draft, needs, shelf: shelf ?? (await readLots()) });
    const entries = draws.map(stampEntry);
    const open = () => {
      takeIn([header], entries);
      drafts.delete(plan?.revision.id ?? '');
      keepLastMade({
        cloth: draft.cloth.value,
        resin: draft.resin.value,
        release: draft.release.value,
        tape: draft.tape.value,
        checklist: draft.checklist.value,
      });
      go(`/build/${header.id}`);
    };
    await writeThen({ headers: [header], entries }, open);
  };

  const doubt = clothDoubt(draft, answer.value.ok ? answer.value.recipe.cups : undefined);
  const startWords = name ? `Start ${name} no. ${numbers.value?.(name) ?? 1}` : 'Start this tube';
  return (
    <Screen
      title="Start a tube"
      back={{ to: '/', label: 'Bench' }}
      actions={
        doubt ? (
          <HoldAction onHeld={start}>{startWords} as it is</HoldAction>
        ) : (
          <Action onPress={start}>{startWords}</Action>
        )
      }
    >
      <HomeScreenFirst />
      <PlanPick plan={plan} />
      <TextField label="Name" text={draft.name} problem={name === '' ? nameProblem.value : undefined} />
      <ClothFields draft={draft} planned={plan !== undefined} />
      {doubt && (
        <Warning kind="amber" title="Is that the weight of this cloth?" announce>
          {doubt}
        </Warning>
      )}
      <ResinFields draft={draft} />
      <AnswerFigures answer={answer.value} />
      <ByTheBook draft={draft} answer={answer.value} />
      <LearnedFields draft={draft} />
      <StartLots draft={draft} needs={needs} shelf={shelf} />
      <MoreFields draft={draft} />
    </Screen>
  );
}
