import { effect, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import { resinShare } from '#app/laying-up/mix/recipe.ts';
import { type QuantityInput, quantityInput } from '#app/parts/quantity-input.ts';
import { findDoc } from '#app/state/documents.ts';
import { fiberVolumeFractionFromMass } from '#calc';
import { explainRatioFailure } from '#shared/units/explain.ts';
import { formatRatio, parseRatio } from '#shared/units/ratio.ts';

/** Resin wanted, said both ways: fiber volume, and resin to fabric by weight for this fiber. */
export interface GoalInput {
  fiberVolume: QuantityInput;
  ratio: Signal<string>;
  ratioProblem: ReadonlySignal<string | undefined>;
  /** Called with every key in the ratio field. */
  typeRatio: (text: string) => void;
}

/** Outside of these no hand layup holds together, or none of it is fiber. */
const leastFiber = 0.1;
const mostFiber = 0.75;

export function goalInput(
  fiberVolumeFraction: number,
  clothId: ReadonlySignal<string>,
  resinId: ReadonlySignal<string>,
): GoalInput {
  const fiberVolume = quantityInput(fiberVolumeFraction, {
    quantity: 'fraction',
    min: leastFiber,
    max: mostFiber,
  });
  const ratio = signal('');
  const ratioProblem = signal<string | undefined>(undefined);
  let ratioLeads = false;

  const densities = () => {
    const cloth = findDoc('cloth', clothId.value)?.body;
    const resin = findDoc('resin', resinId.value)?.body;
    return cloth && resin && { cloth, resin };
  };

  // The ratio follows the fiber volume and the materials, unless it is the field being typed in.
  effect(() => {
    const volume = fiberVolume.si.value;
    const known = densities();
    if (ratioLeads || volume === undefined || !known) return;
    ratio.value = formatRatio(resinShare(volume, known.cloth, known.resin));
    ratioProblem.value = undefined;
  });

  const typeRatio = (text: string) => {
    ratio.value = text;
    const parsed = parseRatio(text);
    const known = densities();
    ratioProblem.value = parsed.ok ? undefined : explainRatioFailure(parsed);
    if (!parsed.ok || !known) return;
    ratioLeads = true;
    fiberVolume.set(
      fiberVolumeFractionFromMass({
        fiberMassFraction: 1 - parsed.firstShare,
        fiberDensity: known.cloth.fiberDensity,
        resinDensity: known.resin.curedDensity,
      }),
    );
    fiberVolume.touched.value = true;
    ratioLeads = false;
  };

  return { fiberVolume, ratio, ratioProblem, typeRatio };
}
