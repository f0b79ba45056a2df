import { computed, effect, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import { settings } from '#app/state/settings.ts';
import { explainFailure } from '#shared/units/explain.ts';
import { formatQuantity } from '#shared/units/format.ts';
import { type Parsed, parseQuantity } from '#shared/units/parse.ts';
import type { Quantity, UnitSystem } from '#shared/units/quantity.ts';

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
  si: ReadonlySignal<number | undefined>;
  problem: ReadonlySignal<string | undefined>;
  /** True once leaving the field or pressing the action should show the problem. */
  touched: Signal<boolean>;
  /** What was typed, with its unit, to be kept beside the number. */
  typed: ReadonlySignal<string>;
  /** Puts a value there as if it had just been filled in. */
  set: (si: number | undefined) => void;
  dispose: () => void;
}

export function readQuantity(text: string, options: QuantityOptions, system = settings.value.units): Parsed {
  const { quantity, min, max, positive } = options;
  return parseQuantity(text, { quantity, system, min, max, ...(positive && { positive: true }) });
}

export function explainQuantity(text: string, options: QuantityOptions): string | undefined {
  if (options.optional && text.trim() === '') return undefined;
  const parsed = readQuantity(text, options);
  if (parsed.ok) return undefined;
  const { quantity, min, max } = options;
  return explainFailure(parsed, { quantity, system: settings.value.units, min, max });
}

/** How a stored value stands in a field before anybody types. */
function asTyped(si: number | undefined, quantity: Quantity, system: UnitSystem): string {
  return si === undefined ? '' : formatQuantity(si, { quantity, system });
}

export function quantityInput(
  initial: number | undefined,
  options: QuantityOptions,
  text: Signal<string> = signal(asTyped(initial, options.quantity, settings.peek().units)),
): QuantityInput {
  // A value nobody retyped keeps its full precision: the text that shows it is rounded.
  let filled = { text: text.peek(), si: initial };
  let typedIn = settings.peek().units;
  const touched = signal(false);
  const set = (value: number | undefined) => {
    filled = { text: asTyped(value, options.quantity, settings.peek().units), si: value };
    text.value = filled.text;
  };
  const dispose = effect(() => {
    const system = settings.value.units;
    if (system === typedIn) return;
    // A bare '116.1' typed as grams must not turn into ounces: it is carried over, then shown anew.
    const parsed = readQuantity(text.peek(), options, typedIn);
    typedIn = system;
    if (parsed.ok) set(text.peek() === filled.text && filled.si !== undefined ? filled.si : parsed.si);
  });
  const si = computed(() => {
    if (text.value === filled.text && filled.si !== undefined) return filled.si;
    const parsed = readQuantity(text.value, options);
    return parsed.ok ? parsed.si : undefined;
  });
  const problem = computed(() => explainQuantity(text.value, options));
  const typed = computed(() => {
    const parsed = readQuantity(text.value, options);
    return parsed.ok ? parsed.typed : text.value.trim();
  });
  return { ...options, text, si, problem, touched, typed, set, dispose };
}

/** State of one field for as long as its screen lives. Give `text` to keep what was typed longer than that. */
export function useQuantity(
  initial: number | undefined,
  options: QuantityOptions,
  text?: Signal<string>,
): QuantityInput {
  const input = useMemo(() => quantityInput(initial, options, text), []);
  useEffect(() => input.dispose, [input]);
  return input;
}

/** Shows the problems of all fields at once; true when there are none. */
export function allGood(fields: readonly QuantityInput[]): boolean {
  for (const field of fields) field.touched.value = true;
  return fields.every((field) => field.problem.value === undefined);
}
