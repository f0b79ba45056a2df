import { hardenerPerResin } from '#app/laying-up/mix/recipe.ts';
import type { MixRatio } from '#shared/record/resin-system.ts';
import { formatNumber } from '#shared/units/format.ts';
import type { ItemDraft } from './item-draft.ts';

function ratioOf({ texts, numbers }: ItemDraft): MixRatio | undefined {
  const at = (key: string) => numbers.get(`ratio.${key}`)?.si.value;
  const by = texts.get('ratio.by')?.value;
  if (by === 'weight') {
    const phr = at('phr');
    return phr === undefined ? undefined : { by, phr };
  }
  if (by === 'volume') {
    const [resinParts, hardenerParts] = [at('resinParts'), at('hardenerParts')];
    return resinParts === undefined || hardenerParts === undefined
      ? undefined
      : { by, resinParts, hardenerParts };
  }
  const [epoxide, amineHydrogen] = [at('epoxide'), at('amineHydrogen')];
  return epoxide === undefined || amineHydrogen === undefined
    ? undefined
    : { by: 'equivalents', epoxide, amineHydrogen };
}

/** '100 g resin : 28.4 g hardener', however the data sheet says it. */
export function gramsWords(ratio: number): string {
  return `100 g resin : ${formatNumber(100 * ratio, 1)} g hardener`;
}

/** What the ratio is on the scale, while it is typed. */
export function RatioLine({ draft }: { draft: ItemDraft }) {
  const ratio = ratioOf(draft);
  const resinDensity = draft.numbers.get('resinDensity')?.si.value;
  const hardenerDensity = draft.numbers.get('hardenerDensity')?.si.value;
  const needsDensities =
    ratio?.by === 'volume' && (resinDensity === undefined || hardenerDensity === undefined);
  const says =
    !ratio || needsDensities
      ? needsDensities
        ? 'The two densities below are needed to say it in grams.'
        : 'Not known yet.'
      : gramsWords(
          hardenerPerResin({ ratio, resinDensity: resinDensity ?? 1, hardenerDensity: hardenerDensity ?? 1 }),
        );
  return (
    <p class="ratio-line" role="status">
      On the scale: <strong>{says}</strong>
    </p>
  );
}
