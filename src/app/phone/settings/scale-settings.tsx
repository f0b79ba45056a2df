import { useSignal, useSignalEffect } from '@preact/signals';
import { Choice, QuantityField } from '#app/parts/field.tsx';
import { useQuantity } from '#app/parts/quantity-input.ts';
import { changeSettings, settings } from '#app/state/settings.ts';
import type { Settings } from '#shared/record/settings.ts';

const shows: { value: Settings['scaleShows']; label: string }[] = [
  { value: 'runningTotal', label: 'Goes on counting' },
  { value: 'zeroedBetween', label: 'Zeroed between' },
];

/** g: what kitchen, postal and pocket scales count in */
const usual = ['0.01', '0.1', '1'];

const sameStep = (a: number, b: number) => Math.abs(a - b) < 1e-9;
const usualFor = (kg: number) => usual.find((g) => sameStep(Number(g) / 1000, kg));

function OtherStep() {
  const input = useQuantity(settings.value.scaleStep, { quantity: 'mass', positive: true, max: 0.1 });
  useSignalEffect(() => {
    const si = input.si.value;
    if (si !== undefined && !sameStep(si, settings.peek().scaleStep)) changeSettings({ scaleStep: si });
  });
  return <QuantityField label="Its smallest step" input={input} hint="0.5 g, 2 g, 0.1 oz" />;
}

/** The scale on this bench. */
export function ScaleSettings() {
  const { scaleStep, scaleShows } = settings.value;
  const other = useSignal(usualFor(scaleStep) === undefined);
  return (
    <>
      <Choice
        label="Smallest step of the scale"
        value={other.value ? 'other' : usualFor(scaleStep)}
        options={[
          ...usual.map((g) => ({ value: g, label: `${g}\u00a0g` })),
          { value: 'other', label: 'Other' },
        ]}
        onChange={(value) => {
          other.value = value === 'other';
          if (value !== 'other') changeSettings({ scaleStep: Number(value) / 1000 });
        }}
      />
      {other.value && <OtherStep />}
      <Choice
        label="Between resin and hardener the scale"
        value={scaleShows}
        options={shows}
        onChange={(value) => changeSettings({ scaleShows: value })}
      />
    </>
  );
}
