import type { ComponentChildren } from 'preact';
import { settings } from '#app/state/settings.ts';
import { formatQuantity, inUnits } from '#shared/units/format.ts';
import { parseQuantity } from '#shared/units/parse.ts';
import { FieldFrame, problemShown, QuantityText, readAs } from './field.tsx';
import type { QuantityInput } from './quantity-input.ts';
import { nextStep } from './step-field.tsx';
import './step-field.css';

interface Props {
  label: string;
  input: QuantityInput;
  /** One press, in the unit the field is shown in; it goes to the next whole one. */
  step: number;
  /** Another unit than the quantity's own, by its label. */
  unit?: string | undefined;
  hint?: ComponentChildren;
}

/** The next whole step up or down in the builder's unit, as text and SI. */
export function steppedBy(
  si: number,
  by: 1 | -1,
  { quantity, step, unit }: Pick<Props, 'step' | 'unit'> & Pick<QuantityInput, 'quantity'>,
): number {
  const system = settings.value.units;
  const shown = inUnits(si, { quantity, system, unit });
  const next = Number(nextStep(shown.value, step, by).toFixed(6));
  const parsed = parseQuantity(`${next} ${shown.unit}`, { quantity, system });
  return parsed.ok ? parsed.si : si;
}

/** A field that keeps whatever is typed, with keys beside it that step the figure under a thumb. */
export function SteppedField({ label, input, step, unit, hint }: Props) {
  const { quantity, min, max, positive } = input;
  const system = settings.value.units;
  const si = input.si.value;
  const press = (by: 1 | -1) => {
    if (si === undefined) return;
    const next = steppedBy(si, by, { quantity, step, unit });
    const within = Math.min(max ?? next, Math.max(min ?? next, next));
    if (positive && within <= 0) return;
    input.set(within);
    if (unit) input.text.value = formatQuantity(within, { quantity, system, unit });
  };
  const key = (by: 1 | -1) => (
    <button type="button" aria-label={`${label}: ${by < 0 ? 'less' : 'more'}`} onClick={() => press(by)}>
      {by < 0 ? '−' : '+'}
    </button>
  );
  return (
    <FieldFrame label={label} hint={(!unit && readAs(input)) || hint} problem={problemShown(input)}>
      {(ids) => (
        <span class="step-field">
          {key(-1)}
          <QuantityText input={input} {...ids} selects />
          {key(1)}
        </span>
      )}
    </FieldFrame>
  );
}
