import { type Signal, useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import { FieldFrame, figureLine } from './field.tsx';
import { explainQuantity, type QuantityOptions, readQuantity } from './quantity-input.ts';
import './step-field.css';

interface Props extends QuantityOptions {
  label: string;
  /** What the label means: an `Ask`. */
  ask?: ComponentChildren;
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

interface Typing {
  text: string | undefined;
  problem: string | undefined;
  type: (typed: string) => void;
  leave: () => void;
  forget: () => void;
}

/** What is being typed, until it stands in the value or is left. */
function useTyping({ value, onSet, bounds, ...options }: Omit<Props, 'label' | 'ask' | 'step'>): Typing {
  const text = useSignal<string | undefined>(undefined);
  const parsed = text.value === undefined ? undefined : readQuantity(text.value, options);
  const outside = parsed && !parsed.ok && /^(tooBig|tooSmall|negative|zero)$/.test(parsed.reason);
  const problem =
    text.value === undefined || parsed?.ok
      ? undefined
      : (outside && bounds) || explainQuantity(text.value, options);
  const forget = () => {
    text.value = undefined;
  };
  useEffect(() => {
    // Undone, stepped or dragged meanwhile: what was typed is no longer what stands there.
    if (parsed?.ok && Math.abs(parsed.si - value) > 1e-9 * Math.max(1, Math.abs(value))) forget();
  }, [value]);
  const type = (typed: string) => {
    text.value = typed;
    const read = readQuantity(typed, options);
    if (read.ok) onSet(read.si);
  };
  return { text: text.value, problem, type, forget, leave: () => problem === undefined && forget() };
}

/** Keeps the screen told which of its fields cannot be read. */
function useWrong(wrong: Props['wrong'], label: string, isWrong: boolean): void {
  useEffect(() => {
    if (!wrong || !isWrong) return undefined;
    wrong.value = new Set([...wrong.peek(), label]);
    return () => {
      wrong.value = new Set([...wrong.peek()].filter((l) => l !== label));
    };
  }, [isWrong, wrong, label]);
}

function StepButton({ label, sign, onPress }: { label: string; sign: string; onPress: () => void }) {
  return (
    <button type="button" aria-label={label} onClick={onPress}>
      {sign}
    </button>
  );
}

/** A figure that a thumb steps up and down, and a keyboard types in any unit. What cannot be is never set. */
export function StepField(props: Props) {
  const { label, value, step, hint, digits, wrong, quantity, min, max, onSet } = props;
  const typing = useTyping(props);
  const isWrong = typing.problem !== undefined;
  useWrong(wrong, label, isWrong);
  const press = (by: 1 | -1) => {
    typing.forget();
    const next = nextStep(value, step, by);
    onSet(Math.min(max ?? next, Math.max(min ?? next, next)));
  };
  return (
    <FieldFrame label={label} ask={props.ask} hint={hint} problem={typing.problem}>
      {({ id, describedBy }) => (
        <span class="step-field">
          <StepButton label={`${label}: less`} sign="−" onPress={() => press(-1)} />
          <input
            id={id}
            aria-describedby={describedBy}
            aria-invalid={isWrong}
            {...figureLine}
            value={typing.text ?? show(value, quantity, digits)}
            onFocus={(event) => event.currentTarget.select()}
            onInput={(event) => typing.type(event.currentTarget.value)}
            onBlur={typing.leave}
          />
          <StepButton label={`${label}: more`} sign="+" onPress={() => press(1)} />
        </span>
      )}
    </FieldFrame>
  );
}

/** The step of a thumb in the units on show. */
export const stepIn = (metric: number, inchPound: number): number =>
  settings.value.units === 'metric' ? metric : inchPound;
