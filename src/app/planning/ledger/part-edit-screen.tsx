import { type Signal, signal } from '@preact/signals';
import { Action, Secondary } from '#app/parts/action.tsx';
import { Ask } from '#app/parts/ask.tsx';
import { QuantityField, SelectField, TextField } from '#app/parts/field.tsx';
import { allGood, type QuantityInput, quantityInput } from '#app/parts/quantity-input.ts';
import { Screen } from '#app/parts/screen.tsx';
import { go, type Params } from '#app/router.ts';
import { type Doc, docsOf, findDoc } from '#app/state/documents.ts';
import { theStore } from '#app/state/shop.ts';
import type { StructurePart } from '#shared/record/structure.ts';
import { grams } from './ledger-words.ts';
import { plannedOf } from './part-facts.ts';
import { saveStructure, withoutPart, withPart } from './save.ts';
import { NoStructure } from './structure-screen.tsx';

interface Draft {
  name: Signal<string>;
  plan: Signal<string>;
  quantity: QuantityInput;
  budget: QuantityInput;
  planned: QuantityInput;
  weighed: QuantityInput;
  position: QuantityInput;
  pressed: Signal<boolean>;
}

/** What is typed here stays while the builder looks something up elsewhere. */
const drafts = new Map<string, Draft>();

function draftFor(key: string, part: StructurePart | undefined): Draft {
  const mass = (kg: number | undefined) =>
    quantityInput(kg, { quantity: 'mass', positive: true, max: 10_000, optional: true });
  const kept = drafts.get(key) ?? {
    name: signal(part?.name ?? ''),
    plan: signal(part?.plan ?? ''),
    quantity: quantityInput(part?.quantity ?? 1, { quantity: 'count', min: 1, max: 999 }),
    budget: mass(part?.budget),
    planned: mass(part?.planned),
    weighed: mass(part?.weighed),
    position: quantityInput(part?.position, { quantity: 'length', min: -1000, max: 1000, optional: true }),
    pressed: signal(false),
  };
  drafts.set(key, kept);
  return kept;
}

function partOf(draft: Draft, before: StructurePart | undefined): StructurePart {
  const {
    plan: _,
    budget: __,
    planned: ___,
    weighed: ____,
    position: _____,
    ...kept
  } = before ?? {
    id: theStore().newId(),
    builds: [],
  };
  const plan = draft.plan.value;
  const [budget, planned, weighed, position] = [
    draft.budget,
    draft.planned,
    draft.weighed,
    draft.position,
  ].map((input) => input.si.value);
  return {
    ...kept,
    // Builds of another plan are not this part.
    builds: plan === (before?.plan ?? '') ? (before?.builds ?? []) : [],
    name: draft.name.value.trim(),
    quantity: Math.round(draft.quantity.si.value ?? 1),
    ...(plan && { plan }),
    ...(budget !== undefined && { budget }),
    ...(planned !== undefined && { planned }),
    ...(weighed !== undefined && !plan && { weighed }),
    ...(position !== undefined && { position }),
  };
}

function Fields({ draft, problem }: { draft: Draft; problem: string | undefined }) {
  const plan = plannedOf(draft.plan.value || undefined);
  return (
    <>
      <SelectField
        label="Made by the plan"
        value={draft.plan.value}
        options={[
          { value: '', label: 'No plan: a fitting, a rope, paint' },
          ...docsOf('plan').map((p) => ({ value: p.doc, label: p.body.name })),
        ]}
        onChange={(doc) => {
          const named = findDoc('plan', draft.plan.value)?.body.name ?? '';
          draft.plan.value = doc;
          // Its name follows the plan until another was typed.
          if (draft.name.value.trim() === named) draft.name.value = findDoc('plan', doc)?.body.name ?? '';
        }}
      />
      <TextField label="Name" text={draft.name} problem={draft.pressed.value ? problem : undefined} />
      <div class="field-pair">
        <QuantityField label="How many" input={draft.quantity} />
        <QuantityField label="Budget of one" input={draft.budget} hint="may stay empty" />
      </div>
      <div class="field-pair">
        <QuantityField
          label="One, planned"
          input={draft.planned}
          hint={plan ? `empty: its plan, ${grams(plan.mass)}` : 'what one should weigh'}
        />
        {!draft.plan.value && (
          <QuantityField label="One, weighed" input={draft.weighed} hint="once it is on the scale" />
        )}
      </div>
      <QuantityField
        label="Its center along the structure"
        ask={<Ask term="balance-point" asks="What is this for?" />}
        input={draft.position}
        hint="For the balance; may stay empty"
      />
    </>
  );
}

function Editor({ found, part }: { found: Doc<'structure'>; part: StructurePart | undefined }) {
  const key = `${found.doc} ${part ? `${found.revision.id} ${part.id}` : 'new'}`;
  const draft = draftFor(key, part);
  const words = draft.name.value.trim();
  const problem = !words
    ? 'Give the part a name, like Boom.'
    : words.length > 200
      ? 'That is too long for a name: shorten it.'
      : undefined;
  const home = `/ledger/${found.doc}`;
  const save = async () => {
    draft.pressed.value = true;
    const { quantity, budget, planned, weighed, position } = draft;
    if (!allGood([quantity, budget, planned, position, ...(draft.plan.value ? [] : [weighed])]) || problem) {
      requestAnimationFrame(() => document.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus());
      return;
    }
    const next = partOf(draft, part);
    if (!(await saveStructure(found, withPart(found.body, next)))) return;
    drafts.delete(key);
    go(part || !next.plan ? home : `${home}/part/${next.id}`);
  };
  const remove = async () => {
    if (part && (await saveStructure(found, withoutPart(found.body, part.id)))) go(home);
  };
  return (
    <Screen
      kicker={found.body.name}
      title={part ? `Change ${part.name}` : 'New part'}
      back={{ to: part ? `${home}/part/${part.id}` : home, label: part?.name ?? found.body.name }}
      actions={<Action onPress={save}>{part ? 'Save the change' : 'Add the part'}</Action>}
    >
      <Fields draft={draft} problem={problem} />
      {part && <Secondary onPress={remove}>Take this part out of the structure</Secondary>}
    </Screen>
  );
}

/** What is it, how many, and what may one weigh? */
export function PartEditScreen({ params }: { params: Params }) {
  const found = findDoc('structure', params.doc);
  const part = found?.body.parts.find((p) => p.id === params.part);
  if (!found || (params.part !== 'new' && !part)) return <NoStructure />;
  return <Editor key={params.part} found={found} part={part} />;
}
