import { Action } from '#app/parts/action.tsx';
import { Choice } from '#app/parts/field.tsx';
import { Sheet } from '#app/parts/sheet.tsx';
import { changeSettings, settings } from '#app/state/settings.ts';
import type { Settings } from '#shared/record/settings.ts';
import { formatNumber, inUnits } from '#shared/units/format.ts';
import { parseQuantity } from '#shared/units/parse.ts';

const shows: { value: Settings['scaleShows']; label: string }[] = [
  { value: 'runningTotal', label: 'Both parts together' },
  { value: 'zeroedBetween', label: 'Each part alone: zeroed between' },
];
const units: { value: Settings['units']; label: string }[] = [
  { value: 'metric', label: 'Grams' },
  { value: 'inchPound', label: 'Ounces' },
];

/** Steps that scales are sold with (common practice, no source). */
const steps: Record<Settings['units'], readonly string[]> = {
  metric: ['0.01 g', '0.1 g', '0.5 g', '1 g', '2 g', '5 g'],
  inchPound: ['0.001 oz', '0.005 oz', '0.01 oz', '0.05 oz', '0.1 oz', '0.2 oz'],
};

function kg(text: string, system: Settings['units']): number {
  const parsed = parseQuantity(text, { quantity: 'mass', system });
  return parsed.ok ? parsed.si : 0;
}

function stepWords(step: number): string {
  const { value, unit } = inUnits(step, { quantity: 'mass', system: settings.value.units });
  return `${formatNumber(value, 4, true)}\u00a0${unit}`;
}

/** In one line, what the app takes the scale to be. */
export function scaleWords(): string {
  const { scaleStep, scaleShows } = settings.value;
  const how = scaleShows === 'runningTotal' ? 'shows both parts together' : 'zeroed between the parts';
  return `Scale: steps of ${stepWords(scaleStep)}, ${how}`;
}

/** How the scale on this bench is used. It holds from the next figure on. */
export function ScaleSheet({ onClose }: { onClose: () => void }) {
  const { scaleShows, scaleStep, units: system } = settings.value;
  const options = steps[system].map((text) => ({ value: text, label: text.replace(' ', '\u00a0') }));
  const isSet = (text: string) => Math.abs(kg(text, system) / scaleStep - 1) < 1e-6;
  return (
    <Sheet title="The scale" onClose={onClose} actions={<Action onPress={onClose}>Use it like this</Action>}>
      <Choice
        label="It shows"
        value={scaleShows}
        options={shows}
        onChange={(value) => changeSettings({ scaleShows: value })}
      />
      <Choice
        label="In"
        value={system}
        options={units}
        onChange={(value) => changeSettings({ units: value })}
      />
      <Choice
        label="Smallest step"
        value={steps[system].find(isSet)}
        options={options}
        onChange={(text) => changeSettings({ scaleStep: kg(text, system) })}
      />
    </Sheet>
  );
}
