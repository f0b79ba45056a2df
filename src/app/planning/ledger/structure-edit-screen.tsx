import { type Signal, signal } from '@preact/signals';
import { Action, Secondary } from '#app/parts/action.tsx';
import { QuantityField, TextField } from '#app/parts/field.tsx';
import { allGood, type QuantityInput, quantityInput } from '#app/parts/quantity-input.ts';
import { Screen } from '#app/parts/screen.tsx';
import { go, type Params } from '#app/router.ts';
import { findDoc, saveDoc } from '#app/state/documents.ts';
import type { Structure } from '#shared/record/structure.ts';
import { NoStructure } from './structure-screen.tsx';

interface Draft {
  name: Signal<string>;
  budget: QuantityInput;
  axis: Signal<string>;
  note: Signal<string>;
  pressed: Signal<boolean>;
}

/** What is typed here stays while the builder looks something up elsewhere. */
const drafts = new Map<string, Draft>();

function draftFor(key: string, body: Structure | undefined): Draft {
  const kept = drafts.get(key) ?? {
    name: signal(body?.name ?? ''),
    budget: quantityInput(body?.budget, { quantity: 'mass', positive: true, max: 10_000, optional: true }),
    axis: signal(body?.axis ?? ''),
    note: signal(body?.note ?? ''),
    pressed: signal(false),
  };
  drafts.set(key, kept);
  return kept;
}

function bodyOf({ name, budget, axis, note }: Draft, before: Structure | undefined): Structure {
  const { budget: _, axis: __, note: ___, ...kept } = before ?? { name: '', parts: [] };
  return {
    ...kept,
    name: name.value.trim(),
    ...(budget.si.value !== undefined && { budget: budget.si.value }),
    ...(axis.value.trim() && { axis: axis.value.trim().slice(0, 200) }),
    ...(note.value.trim() && { note: note.value.trim() }),
  };
}

/** What is it called, and what may it weigh? */
export function StructureEditScreen({ params }: { params: Params }) {
  const found = findDoc('structure', params.doc);
  if (params.doc !== undefined && !found) return <NoStructure />;
  const key = found?.revision.id ?? 'new';
  const draft = draftFor(key, found?.body);
  const words = draft.name.value.trim();
  const problem = !words
    ? 'Give it a name, like Mast set.'
    : words.length > 200
      ? 'That is too long for a name: put the rest in the note.'
      : undefined;
  const save = async (retired = found?.retired ?? false) => {
    draft.pressed.value = true;
    if (!allGood([draft.budget]) || problem) {
      requestAnimationFrame(() => document.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus());
      return;
    }
    const body = bodyOf(draft, found?.body);
    const doc = await saveDoc('structure', body, found ? { doc: found.doc, retired } : {});
    if (doc === undefined) return;
    drafts.delete(key);
    go(retired ? '/ledger' : `/ledger/${doc}`);
  };
  return (
    <Screen
      title={found ? 'Change the structure' : 'New structure'}
      back={
        found
          ? { to: `/ledger/${found.doc}`, label: found.body.name }
          : { to: '/ledger', label: 'Structures' }
      }
      actions={<Action onPress={() => save()}>{found ? 'Save the change' : 'Begin the structure'}</Action>}
    >
      <TextField label="Name" text={draft.name} problem={draft.pressed.value ? problem : undefined} />
      <QuantityField
        label="Budget for all of it"
        input={draft.budget}
        hint="Most that it may weigh: 1.8 kg or 4 lb. Empty: the budgets of its parts"
      />
      <TextField
        label="Positions are measured"
        text={draft.axis}
        hint="Like: up from the mast foot. Only for where it balances; may stay empty"
      />
      <TextField label="Note" text={draft.note} long />
      {found && (
        <Secondary onPress={() => save(!found.retired)}>
          {found.retired ? 'Take it out again' : 'Put it away'}
        </Secondary>
      )}
    </Screen>
  );
}
