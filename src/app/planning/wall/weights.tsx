import { useSignal } from '@preact/signals';
import { Figures, Lines } from '#app/parts/figure.tsx';
import { StepField } from '#app/parts/step-field.tsx';
import { show } from '#app/state/show.ts';
import type { Roll, TubeMass } from '#calc';
import { inPlies } from './pictures/layers.ts';
import { clothPlies } from './plan-with-wall.ts';
import { structuresWith } from './share-of-structures.ts';
import { sayPlies } from './station-words.ts';
import type { Drawn } from './wall-draft.ts';
import { wallRecipe } from './wall-mix.ts';
import { masses } from './wall-model.ts';

const percent = (share: number) => `${share > 0 ? '−' : ''}${show(share, 'fraction', 0)}`;

/** 'against 6 plies throughout', or how thick where there is more than cloth. */
export function againstWords(roll: Roll): string {
  const most = (values: Float64Array) => values.reduce((a, b) => Math.max(a, b), 0);
  return inPlies(roll)
    ? `against ${sayPlies(most(clothPlies(roll)))} throughout`
    : `against ${show(most(roll.wallMean), 'thickness')} throughout`;
}

/** Cloth, resin, tube, and what the shaped cloth saves. */
export function WeightFigures({ roll, mass }: { roll: Roll; mass: TubeMass }) {
  return (
    <Figures
      items={[
        { value: show(mass.cloth, 'mass', 0), label: 'cloth' },
        { value: show(mass.resin, 'mass', 0), label: 'resin in it' },
        { value: show(mass.total, 'mass', 0), label: 'tube' },
        { value: percent(mass.savedShare), label: againstWords(roll) },
      ]}
    />
  );
}

function perMeterWords({ perMeter }: TubeMass): string {
  const most = perMeter.reduce((a, b) => Math.max(a, b), 0);
  const least = perMeter.reduce((a, b) => Math.min(a, b), most);
  const [from, to] = [show(least, 'linearDensity', 0), show(most, 'linearDensity', 0)];
  return from === to ? to : `${from} to ${to}`;
}

/** Everything the tube weighs, and what that is worth over several tubes. */
export function WeightTable({ doc, drawn: { plan, roll } }: { doc: string; drawn: Drawn }) {
  const tubes = useSignal(1);
  const mass = masses(plan, roll);
  if (!mass) return null;
  const mix = wallRecipe(plan, roll);
  const saves = mass.saved * tubes.value;
  return (
    <>
      <WeightFigures roll={roll} mass={mass} />
      <Lines
        rows={[
          ['Resin to mix', mix ? show(mix.total, 'mass', 0) : '–'],
          ...(mass.core > 0 ? [['Core', show(mass.core, 'mass', 0)]] : []),
          ...(mass.film > 0 ? [['Film', show(mass.film, 'mass', 0)]] : []),
          ['Along the tube', perMeterWords(mass)],
          ['Balances at', show(mass.balance, 'length', 0)],
          ['With its thickest wall throughout', show(mass.thickest, 'mass', 0)],
          [
            tubes.value === 1 ? 'This wall saves' : `${tubes.value} such tubes save`,
            `${show(saves, 'mass', 0)}, ${show(mass.savedShare, 'fraction', 0)}`,
          ],
          ...structuresWith(doc).map((s) => [
            `Of ${s.name}, ${show(s.weighs, 'mass', 0)}, with ${s.tubes} of it`,
            show((mass.saved * s.tubes) / s.weighs, 'fraction', 1),
          ]),
        ]}
      />
      <StepField
        label="Tubes"
        quantity="count"
        value={tubes.value}
        step={1}
        min={1}
        max={1000}
        onSet={(n) => {
          tubes.value = n;
        }}
      />
    </>
  );
}
