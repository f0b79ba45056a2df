import { type Signal, signal } from '@preact/signals';
import { Action, Secondary } from '#app/parts/action.tsx';
import { Ask } from '#app/parts/ask.tsx';
import { QuantityField, TextField } from '#app/parts/field.tsx';
import { allGood, type QuantityInput, quantityInput } from '#app/parts/quantity-input.ts';
import { Screen } from '#app/parts/screen.tsx';
import { NoPlan } from '#app/planning/wall/no-plan.tsx';
import { go, type Params } from '#app/router.ts';
import { theStore } from '#app/state/shop.ts';
import type { LoadCase } from '#shared/record/load-plan.ts';
import { chooseCase } from './chosen-case.ts';
import { dropDraft, keptDraft } from './kept-draft.ts';
import { withCase, withoutCase } from './loads-edits.ts';
import { NotThere } from './not-there.tsx';
import { saveLoads } from './save.ts';
import { focusWrong, type LoadedPlan, loadedPlan } from './use-plan.ts';

interface CaseDraft {
  name: Signal<string>;
  factor: QuantityInput;
  pressed: Signal<boolean>;
}

function caseDraft(one: LoadCase | undefined, count: number): CaseDraft {
  return {
    name: signal(one?.name ?? `Case ${count + 1}`),
    // The record takes any number: below 1 is a builder who counts on less than the load that was written.
    factor: quantityInput(one?.loadFactor, { quantity: 'number', positive: true, max: 100 }),
    pressed: signal(false),
  };
}

function nameProblem(draft: CaseDraft): string | undefined {
  const name = draft.name.value.trim();
  if (!name) return 'Give the case a name, like Gust from the side.';
  return name.length > 200 ? 'That is too long for a name: shorten it.' : undefined;
}

function Editor({ of, one }: { of: LoadedPlan; one: LoadCase | undefined }) {
  const { found, loads, home } = of;
  const key = `${found.doc} case ${one?.id ?? 'new'}`;
  const from = { name: one?.name, factor: one?.loadFactor };
  const draft = keptDraft(key, from, () => caseDraft(one, loads.cases.length));
  const save = async () => {
    draft.pressed.value = true;
    if (!allGood([draft.factor]) || nameProblem(draft)) {
      focusWrong();
      return;
    }
    const id = one?.id ?? theStore().newId();
    const told = { id, name: draft.name.value.trim(), loadFactor: draft.factor.si.value };
    const saved = await saveLoads(found.doc, (now) => {
      const before = now.cases.find((c) => c.id === id);
      return withCase(now, { ...(before ?? { loads: [] }), ...told });
    });
    if (!saved) return;
    dropDraft(key);
    chooseCase(found.doc, id);
    go(one ? home : `${home}/case/${id}/new`);
  };
  const remove = async () => {
    if (one && (await saveLoads(found.doc, (now) => withoutCase(now, one.id)))) go(home);
  };
  return (
    <Screen
      kicker={found.body.name}
      title={one ? `Change ${one.name}` : 'New load case'}
      back={{ to: home, label: 'Loads' }}
      actions={<Action onPress={save}>{one ? 'Save the change' : 'Then: what pulls on it'}</Action>}
    >
      <p>All that pulls on the tube at one time: a gust, a launch, a step on its middle.</p>
      <TextField
        label="Name"
        text={draft.name}
        problem={draft.pressed.value ? nameProblem(draft) : undefined}
      />
      <QuantityField
        label="Load factor"
        ask={<Ask term="load-factor" asks="What is the load factor?" />}
        input={draft.factor}
        hint="yours to say; 1 for no more than these loads"
      />
      {one && <Secondary onPress={remove}>Take this case out, and its {one.loads.length} loads</Secondary>}
    </Screen>
  );
}

/** What pulls at one time, and how many times as hard may it come? */
export function CaseScreen({ params }: { params: Params }) {
  const of = loadedPlan(params.doc);
  if (!of) return <NoPlan />;
  const one = of.loads.cases.find((c) => c.id === params.case);
  if (!one && params.case !== 'new') return <NotThere of={of} what="load case" />;
  return <Editor key={params.case} of={of} one={one} />;
}
