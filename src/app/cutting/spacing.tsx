import type { Signal } from '@preact/signals';
import { Choice } from '#app/parts/field.tsx';
import { settings } from '#app/state/settings.ts';
import { unitFor } from '#shared/units/quantity.ts';
import { spacings } from './cut-dimensions.tsx';
import { bareDimension } from './dimensions.ts';

/** How far apart the marks stand. */
export function Spacing({ every }: { every: Signal<number> }) {
  const choices = spacings[settings.value.units].slice(1, 4);
  return (
    <Choice
      label={`A mark every so many ${unitFor('length', settings.value.units)}`}
      value={String(every.value)}
      options={choices.map((m) => ({ value: String(m), label: bareDimension(m) }))}
      onChange={(value) => {
        every.value = Number(value);
      }}
    />
  );
}
