import { type Signal, useComputed, useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { settings } from '#app/state/settings.ts';
import { explainFailure } from '#shared/units/explain.ts';
import { formatQuantity } from '#shared/units/format.ts';
import { type Parsed, parseQuantity } from '#shared/units/parse.ts';
import type { Quantity } from '#shared/units/quantity.ts';

export interface QuantityOptions {
  quantity: Quantity;
  /** SI, inclusive */
  min?: number;
  max?: number;
  positive?: boolean;
  /** Empty is an answer too. */
  optional?: boolean;
}

/** A number being typed: its text, what it means in SI, and one sentence when it means nothing. */
export interface QuantityInput extends QuantityOptions {
  text: Signal<string>;
  /** Undefined while it cannot be read, or is empty. */
  si: { readonly value: number | undefined };
  problem: { readonly value: string | undefined };
  /** True once leaving the field or pressing the action should show the problem. */
  touched: Signal<boolean>;
  /** What was typed, to be kept beside the number. */
  typed: { readonly value: string };
}

export function readQuantity(text: string, options: QuantityOptions): Parsed {
  return parseQuantity(text, {
    quantity: options.quantity,
    system: settings.value.units,
    ...(options.min !== undefined && { min: options.min }),
    ...(options.max !== undefined && { max: options.max }),
    ...(options.positive && { positive: true }),
  });
}

export function explainQuantity(text: string, options: QuantityOptions): string | undefined {
  if (options.optional && text.trim() === '') return undefined;
  const parsed = readQuantity(text, options);
  if (parsed.ok) return undefined;
  return explainFailure(parsed, {
    quantity: options.quantity,
    system: settings.value.units,
    min: options.min,
    max: options.max,
  });
}

/** How a stored value stands in a field before anybody types. */
export function asTyped(si: number | undefined, quantity: Quantity): string {
  return si === undefined ? '' : formatQuantity(si, { quantity, system: settings.value.units });
}

/** State of one field. Give `text` to keep what was typed elsewhere, as in a draft that outlives the screen. */
export function useQuantity(
  initial: number | undefined,
  options: QuantityOptions,
  text?: Signal<string>,
): QuantityInput {
  const own = useSignal(text ? '' : asTyped(initial, options.quantity));
  const used = text ?? own;
  const touched = useSignal(false);
  // A value nobody retyped keeps its full precision: the shown text is rounded.
  const first = useRef({ text: asTyped(initial, options.quantity), si: initial });
  const si = useComputed(() => {
    if (used.value === first.current.text && first.current.si !== undefined) return first.current.si;
    const parsed = readQuantity(used.value, options);
    return parsed.ok ? parsed.si : undefined;
  });
  const problem = useComputed(() => explainQuantity(used.value, options));
  return { ...options, text: used, si, problem, touched, typed: useComputed(() => used.value.trim()) };
}

/** Shows the problems of all fields at once; true when there are none. */
export function allGood(fields: readonly QuantityInput[]): boolean {
  for (const field of fields) field.touched.value = true;
  return fields.every((field) => field.problem.value === undefined);
}
