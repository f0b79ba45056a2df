import type { Signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import { settings } from '#app/state/settings.ts';
import { formatQuantity } from '#shared/units/format.ts';
import { unitFor } from '#shared/units/quantity.ts';
import type { QuantityInput } from './quantity-input.ts';
import './field.css';

interface FrameProps {
  label: string;
  /** What the label means: an `Ask`. */
  ask?: ComponentChildren;
  /** Under the field: what it is for, or what is wrong. */
  hint?: ComponentChildren;
  problem?: string | undefined;
  children: (ids: { id: string; describedBy: string }) => ComponentChildren;
}

export function FieldFrame({ label, ask, hint, problem, children }: FrameProps) {
  const id = useId();
  return (
    <div class="field">
      {ask ? (
        <div class="ask-head">
          <label for={id}>{label}</label>
          {ask}
        </div>
      ) : (
        <label for={id}>{label}</label>
      )}
      {children({ id, describedBy: `${id}-says` })}
      <p
        id={`${id}-says`}
        class={problem ? 'field-problem' : 'field-hint'}
        role={problem ? 'alert' : undefined}
      >
        {problem ?? hint}
      </p>
      {problem && <p class="field-hint">{hint}</p>}
    </div>
  );
}

interface QuantityProps {
  label: string;
  ask?: ComponentChildren;
  input: QuantityInput;
  hint?: ComponentChildren;
}

/** What another unit was read as; '' when it is written in the builder's own. */
export function readAs({ quantity, text, si }: QuantityInput): string {
  const system = settings.value.units;
  const unit = unitFor(quantity, system);
  const typed = text.value.trim();
  if (si.value === undefined || unit === '' || !/[^\d.,\s/-]/.test(typed) || typed.endsWith(unit)) return '';
  const shown = formatQuantity(si.value, { quantity, system });
  return typed.replace(/\s+/g, ' ') === shown.replace(/\s+/g, ' ') ? '' : `= ${shown}`;
}

/** What is wrong is said once a figure was left, not while it is typed. */
export const problemShown = ({ touched, problem }: QuantityInput): string | undefined =>
  touched.value ? problem.value : undefined;

/** Any unit may be written with its figure, so no phone may turn it into a word or a number pad. */
export const figureLine = {
  type: 'text',
  inputMode: 'text',
  autocomplete: 'off',
  autocapitalize: 'off',
  spellcheck: false,
  enterkeyhint: 'done',
} as const;

interface QuantityTextProps {
  input: QuantityInput;
  id: string;
  describedBy: string;
  /** The next figure typed takes the place of this one. */
  selects?: boolean;
}

/** The line that a number in any unit is typed in. */
export function QuantityText({ input, id, describedBy, selects }: QuantityTextProps) {
  return (
    <input
      id={id}
      aria-describedby={describedBy}
      aria-invalid={problemShown(input) !== undefined}
      {...figureLine}
      value={input.text.value}
      onFocus={(event) => selects && event.currentTarget.select()}
      onInput={(event) => {
        input.text.value = event.currentTarget.value;
      }}
      onBlur={() => {
        if (input.text.value.trim() !== '') input.touched.value = true;
      }}
    />
  );
}

/** A number in any unit. What it was read as stands under it when another unit was written. */
export function QuantityField({ label, ask, input, hint }: QuantityProps) {
  const unit = unitFor(input.quantity, settings.value.units);
  return (
    <FieldFrame label={label} ask={ask} hint={readAs(input) || hint} problem={problemShown(input)}>
      {(ids) => (
        <span class="field-box">
          <QuantityText input={input} {...ids} />
          <span class="field-unit" aria-hidden="true">
            {/[a-z°%"']/i.test(input.text.value) ? '' : unit}
          </span>
        </span>
      )}
    </FieldFrame>
  );
}

interface TextProps {
  label: string;
  text: Signal<string>;
  hint?: ComponentChildren;
  problem?: string | undefined;
  long?: boolean;
}

export function TextField({ label, text, hint, problem, long }: TextProps) {
  return (
    <FieldFrame label={label} hint={hint} problem={problem}>
      {({ id, describedBy }) => {
        const shared = {
          id,
          'aria-describedby': describedBy,
          'aria-invalid': problem !== undefined,
          value: text.value,
        };
        return long ? (
          <textarea {...shared} rows={3} onInput={(e) => (text.value = e.currentTarget.value)} />
        ) : (
          <input
            {...shared}
            type="text"
            autocomplete="off"
            onInput={(e) => (text.value = e.currentTarget.value)}
          />
        );
      }}
    </FieldFrame>
  );
}

interface SelectProps<T extends string> {
  label: string;
  value: T;
  options: readonly { value: T; label: string }[];
  onChange: (value: T) => void;
  hint?: ComponentChildren;
}

export function SelectField<T extends string>({ label, value, options, onChange, hint }: SelectProps<T>) {
  return (
    <FieldFrame label={label} hint={hint}>
      {({ id, describedBy }) => (
        <select
          id={id}
          aria-describedby={describedBy}
          value={value}
          onChange={(event) => {
            const chosen = options.find((o) => o.value === event.currentTarget.value);
            if (chosen) onChange(chosen.value);
          }}
        >
          {options.map((o) => (
            <option key={o.value} value={o.value}>
              {o.label}
            </option>
          ))}
        </select>
      )}
    </FieldFrame>
  );
}

interface ChoiceProps<T extends string> {
  label: string;
  value: T | undefined;
  options: readonly { value: T; label: string }[];
  onChange: (value: T) => void;
}

/** A few words side by side, one of them chosen. */
export function Choice<T extends string>({ label, value, options, onChange }: ChoiceProps<T>) {
  return (
    <fieldset class="choice">
      <legend>{label}</legend>
      <div class="choice-row">
        {options.map((o) => (
          <button
            key={o.value}
            type="button"
            aria-pressed={o.value === value}
            onClick={() => onChange(o.value)}
          >
            {o.label}
          </button>
        ))}
      </div>
    </fieldset>
  );
}
