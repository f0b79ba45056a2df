import { type Signal, useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import { unitFor } from '#shared/units/quantity.ts';
import { FieldFrame } from './field.tsx';
import { explainQuantity, type QuantityOptions, readQuantity } from './quantity-input.ts';
import './step-field.css';

interface Props extends QuantityOptions {
  label: string;
  /** SI; what stands there when nobody is typing. */
  value: number;
  /** One press of plus or minus, SI; it goes to the next whole one. */
  step: number;
  onSet: (si: number) => void;
  hint?: string | undefined;
  /** Said in place of the plain bounds: 'Station 3 lies between 501 mm and 899 mm.' */
  bounds?: string | undefined;
  digits?: number | undefined;
  /** Fields of this screen that hold what cannot be read; this one is in it as long as it does. */
  wrong?: Signal<ReadonlySet<string>> | undefined;
}

/** The next whole step above or below, so that 3.3 goes to 4 and to 3. */
export function nextStep(value: number, step: number, by: 1 | -1): number {
  const at = value / step;
  const whole = by > 0 ? Math.floor(at + 1e-6) + 1 : Math.ceil(at - 1e-6) - 1;
  return whole * step;
}

/** A figure that a thumb steps up and down, and a keyboard types in any unit. What cannot be is never set. */
export function StepField({ label, value, step, onSet, hint, bounds, digits, wrong, ...options }: Props) {
  const text = useSignal<string | undefined>(undefined);
  const shown = show(value, options.quantity, digits);
  const parsed = text.value === undefined ? undefined : readQuantity(text.value, options);
  const outside = parsed && !parsed.ok && /^too(Big|Small)$|^negative$|^zero$/.test(parsed.reason);
  const problem =
    text.value === undefined || parsed?.ok
      ? undefined
      : (outside && bounds) || explainQuantity(text.value, options);
  useEffect(() => {
    // Undone, stepped or dragged meanwhile: what was typed is no longer what stands there.
    if (parsed?.ok && Math.abs(parsed.si - value) > 1e-9 * Math.max(1, Math.abs(value)))
      text.value = undefined;
  }, [value]);
  const isWrong = problem !== undefined;
  useEffect(() => {
    if (!wrong || !isWrong) return undefined;
    wrong.value = new Set([...wrong.peek(), label]);
    return () => {
      wrong.value = new Set([...wrong.peek()].filter((l) => l !== label));
    };
  }, [isWrong, wrong, label]);
  const press = (by: 1 | -1) => {
    text.value = undefined;
    const next = nextStep(value, step, by);
    onSet(Math.min(options.max ?? next, Math.max(options.min ?? next, next)));
  };
  const type = (typed: string) => {
    text.value = typed;
    const read = readQuantity(typed, options);
    if (read.ok) onSet(read.si);
  };
  return (
    <FieldFrame label={label} hint={hint} problem={problem}>
      {({ id, describedBy }) => (
        <span class="step-field">
          <button type="button" aria-label={`${label}: less`} onClick={() => press(-1)}>
            −
          </button>
          <input
            id={id}
            aria-describedby={describedBy}
            aria-invalid={isWrong}
            type="text"
            inputMode="text"
            autocomplete="off"
            autocapitalize="off"
            spellcheck={false}
            enterkeyhint="done"
            value={text.value ?? shown}
            onFocus={(event) => event.currentTarget.select()}
            onInput={(event) => type(event.currentTarget.value)}
            onBlur={() => {
              if (!isWrong) text.value = undefined;
            }}
          />
          <button type="button" aria-label={`${label}: more`} onClick={() => press(1)}>
            +
          </button>
        </span>
      )}
    </FieldFrame>
  );
}

/** The step of a thumb in the units on show. */
export const stepIn = (metric: number, inchPound: number): number =>
  settings.value.units === 'metric' ? metric : inchPound;

/** 'mm' */
export const unitOf = (quantity: QuantityOptions['quantity']): string =>
  unitFor(quantity, settings.value.units);
