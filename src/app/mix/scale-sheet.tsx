import { Action } from '#app/parts/action.tsx';
import { Choice } from '#app/parts/field.tsx';
import { Sheet } from '#app/parts/sheet.tsx';
import { changeSettings, settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import type { Settings } from '#shared/record/settings.ts';
import { formatNumber } from '#shared/units/format.ts';

const shows: { value: Settings['scaleShows']; label: string }[] = [
  { value: 'runningTotal', label: 'Both parts together' },
  { value: 'zeroedBetween', label: 'Each part alone: zeroed between' },
];
const units: { value: Settings['units']; label: string }[] = [
  { value: 'metric', label: 'Grams' },
  { value: 'inchPound', label: 'Ounces' },
];
const grams = [0.01, 0.1, 0.5, 1, 2, 5];

const stepWords = (kg: number) =>
  settings.value.units === 'metric' ? `${formatNumber(kg * 1000, 2, true)}\u00a0g` : show(kg, 'mass', 4);

/** In one line, what the app takes the scale to be. */
export function scaleWords(): string {
  const { scaleStep, scaleShows } = settings.value;
  const how = scaleShows === 'runningTotal' ? 'shows both parts together' : 'zeroed between the parts';
  return `Scale: steps of ${stepWords(scaleStep)}, ${how}`;
}

/** How the scale on this bench is used. It holds from the next figure on. */
export function ScaleSheet({ onClose }: { onClose: () => void }) {
  const { scaleShows, scaleStep, units: system } = settings.value;
  const steps = grams.map((g) => ({ value: String(g), label: stepWords(g / 1000) }));
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
        value={steps.find((s) => Math.abs(Number(s.value) - scaleStep * 1000) < 1e-9)?.value}
        options={steps}
        onChange={(value) => changeSettings({ scaleStep: Number(value) / 1000 })}
      />
    </Sheet>
  );
}
