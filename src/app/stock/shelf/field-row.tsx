import type { Signal } from '@preact/signals';
import { Ask } from '#app/parts/ask.tsx';
import { Choice, QuantityField, SelectField, TextField } from '#app/parts/field.tsx';
import { CurePoints } from './cure-points.tsx';
import type { Field, WordField } from './fields.ts';
import { chooseWord, type ItemDraft, pairProblem, textProblem } from './item-draft.ts';
import { PointList } from './point-list.tsx';
import { PullPoints } from './pull-points.tsx';

/** More words than fit side by side on a phone are a list. */
const mostSideBySide = 3;

/** Words of the trade among the fields, and how they are asked for. */
const asked: Record<string, readonly [term: string, asks: string]> = {
  arealWeight: ['areal-weight', 'What is the weight of the cloth?'],
  tolerance: ['mix-ratio', 'What are lean and rich?'],
  'potLife.time': ['pot-life', 'What is pot life?'],
  glassTransition: ['tg', 'What is Tg?'],
  pullsFrom: ['squeeze', 'What does the tape do?'],
};

function askOf(path: string) {
  const found = asked[path];
  return found && <Ask term={found[0]} asks={found[1]} />;
}

interface WordProps {
  draft: ItemDraft;
  field: WordField;
  word: Signal<string>;
}

function WordRow({ draft, field, word }: WordProps) {
  const shared = {
    label: field.label,
    value: word.value,
    options: field.words,
    onChange: (value: string) => chooseWord(draft, field.path, value),
  };
  return field.words.length > mostSideBySide ? <SelectField {...shared} /> : <Choice {...shared} />;
}

/** One line of the table of fields, as it is filled in. */
export function FieldRow({ draft, field }: { draft: ItemDraft; field: Field }) {
  const hint = field.hint?.();
  if (field.as === 'curePoints') return <CurePoints draft={draft} />;
  if (field.as === 'points') return <PointList draft={draft} field={field} />;
  if (field.as === 'pullPoints') return <PullPoints draft={draft} />;
  if (field.as === 'number') {
    const input = draft.numbers.get(field.path);
    const together = input?.touched.value || draft.pressed.value ? pairProblem(draft, field.path) : undefined;
    return (
      <>
        {input && <QuantityField label={field.label} ask={askOf(field.path)} input={input} hint={hint} />}
        {together && (
          <p class="field-problem" role="alert">
            {together}
          </p>
        )}
      </>
    );
  }
  const text = draft.texts.get(field.path);
  if (!text) return null;
  if (field.as === 'word') return <WordRow draft={draft} field={field} word={text} />;
  const problem = draft.pressed.value ? textProblem(draft, field) : undefined;
  return (
    <TextField label={field.label} text={text} hint={hint} problem={problem} long={field.long === true} />
  );
}
