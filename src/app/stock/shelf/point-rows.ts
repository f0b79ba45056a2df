import { type Signal, signal } from '@preact/signals';
import { type QuantityInput, quantityInput } from '#app/parts/quantity-input.ts';
import type { PointsField } from './fields.ts';

/** One line of a list of points while it is written down. */
export interface PointRow {
  numbers: ReadonlyMap<string, QuantityInput>;
  ends: Signal<string>;
  /** As it was kept: what this version does not know stays. */
  kept: Record<string, unknown>;
}

export function pointRow(field: PointsField, kept: Record<string, unknown> = {}): PointRow {
  const first = field.ends?.[0]?.value ?? '';
  return {
    kept,
    ends: signal(typeof kept.ends === 'string' ? kept.ends : first),
    numbers: new Map(
      field.of.map(({ key, options }) => {
        const value = kept[key];
        return [key, quantityInput(typeof value === 'number' ? value : undefined, options)];
      }),
    ),
  };
}

export function writtenRow(field: PointsField, { numbers, ends, kept }: PointRow): Record<string, unknown> {
  const { ...row } = kept;
  for (const [key, input] of numbers) {
    if (input.si.value === undefined) delete row[key];
    else row[key] = input.si.value;
  }
  return field.ends ? { ...row, ends: ends.value } : row;
}
