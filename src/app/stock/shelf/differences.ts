import { show } from '#app/state/show.ts';
import { type Field, itemFields } from './fields.ts';
import { valueAt } from './item-draft.ts';
import type { ItemType } from './kinds.ts';
import { laminaFields } from './lamina-fields.ts';

const nothing = '–';

function sayField(field: Field, value: unknown): string {
  if (value === undefined) return nothing;
  if (field.as === 'number' && typeof value === 'number') return show(value, field.options.quantity);
  if (field.as === 'word') return field.words.find((w) => w.value === value)?.label ?? String(value);
  if (Array.isArray(value)) return `${value.length} ${value.length === 1 ? 'point' : 'points'}`;
  return String(value);
}

/** A figure of its stiffness or strength, kept one level deeper when it is a strength. */
const inLamina = (body: object, key: string) =>
  valueAt(body, `lamina.${key}`) ?? valueAt(body, `lamina.strengths.${key}`);

/** Where versions of a thing on the shelf differ: the field by its label, and what each of them says there. */
export function differences(type: ItemType, bodies: readonly object[]): string[][] {
  const differ = (values: readonly unknown[]) => new Set(values.map((v) => JSON.stringify(v))).size > 1;
  const row = (label: string, values: readonly unknown[], say: (value: unknown) => string) =>
    differ(values) ? [[label, ...values.map(say)]] : [];
  return [
    ...itemFields[type].flatMap((field) =>
      row(
        field.label,
        bodies.map((b) => valueAt(b, field.path)),
        (value) => sayField(field, value),
      ),
    ),
    ...Object.entries(laminaFields).flatMap(([key, { label, options }]) =>
      row(
        label,
        bodies.map((b) => inLamina(b, key)),
        (value) => (typeof value === 'number' ? show(value, options.quantity) : nothing),
      ),
    ),
  ];
}
