import type { QuantityInput } from '#app/parts/quantity-input.ts';
import { settings } from '#app/state/settings.ts';
import { unitFor } from '#shared/units/quantity.ts';

interface Props {
  label: string;
  input: QuantityInput;
  /** The keypad below types into this one. */
  isActive: boolean;
  onActive: () => void;
}

/** A field for our own keypad; a keyboard that is there may type into it too, any unit. */
export function ReadingField({ label, input, isActive, onActive }: Props) {
  const wrong = input.touched.value && input.problem.value !== undefined;
  return (
    <label class={isActive ? 'reading reading-active' : 'reading'}>
      <span class="reading-name">{label}</span>
      <input
        type="text"
        inputMode="none"
        autocomplete="off"
        aria-invalid={wrong}
        value={input.text.value}
        onFocus={onActive}
        onInput={(event) => {
          input.text.value = event.currentTarget.value;
        }}
      />
      <span class="reading-unit" aria-hidden="true">
        {unitFor(input.quantity, settings.value.units)}
      </span>
    </label>
  );
}
