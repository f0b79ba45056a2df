import { type ReadonlySignal, type Signal, useComputed, useSignal } from '@preact/signals';
import { explainQuantity, type QuantityOptions, readQuantity } from './quantity-input.ts';

/** A figure typed on our keypad in the builder's own unit. */
export interface TypedFigure {
  text: Signal<string>;
  si: ReadonlySignal<number | undefined>;
  typed: ReadonlySignal<string>;
  /** One sentence when it cannot be used; undefined while it can, or while nothing is typed. */
  problem: ReadonlySignal<string | undefined>;
}

export function useTypedFigure(options: QuantityOptions): TypedFigure {
  const text = useSignal('');
  const parsed = useComputed(() => readQuantity(text.value, options));
  return {
    text,
    si: useComputed(() => (parsed.value.ok ? parsed.value.si : undefined)),
    typed: useComputed(() => (parsed.value.ok ? parsed.value.typed : text.value)),
    problem: useComputed(() => (text.value === '' ? undefined : explainQuantity(text.value, options))),
  };
}
