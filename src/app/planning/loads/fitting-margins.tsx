import { Lines } from '#app/parts/figure.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { show } from '#app/state/show.ts';
import type { FittingCheck } from './fitting-checks.ts';
import { fittingWords, place } from './load-words.ts';
import type { CheckedPlan } from './margins-of-plan.ts';
import { marginWords } from './ruling.ts';

function rowsOf(check: FittingCheck): string[][] {
  const margin = check.margin === undefined ? 'strengths missing' : marginWords(check.margin);
  if ('squeeze' in check) {
    return [
      ['Margin against crushing the wall', margin],
      ['Flattens it by', show(check.squeeze, 'thickness')],
    ];
  }
  const { peak, average, usefulLength, fitting } = check;
  const enough = fitting.length >= usefulLength;
  return [
    ['Margin of the glue', margin],
    ['Shear at its end', show(peak, 'stress')],
    ['On average', show(average, 'stress')],
    [enough ? 'More than this adds nothing' : 'Up to this more helps', place(usefulLength)],
  ];
}

/** What clamps crush and bonds bear, each with the force that was written for it. */
export function FittingMargins({ checked: { fittings, safetyFactor } }: { checked: CheckedPlan }) {
  if (fittings.length === 0) return null;
  return (
    <>
      <h2>Fittings</h2>
      {fittings.map((check) => (
        <section key={check.fitting.id} class="margin-lines" aria-label={check.fitting.name}>
          <p>
            <strong>{check.fitting.name}</strong> · {fittingWords(check.fitting)}
          </p>
          {check.margin !== undefined && check.margin < 0 && (
            <Warning kind="stop" title="Does not hold">
              {'squeeze' in check
                ? 'The wall is crushed: a wider clamp, plies round the tube, or less force.'
                : 'The glue gives out at its end: a longer bond up to the length below, thicker glue, or a softer fitting.'}
            </Warning>
          )}
          <Lines rows={rowsOf(check)} />
        </section>
      ))}
      <p class="quiet small">
        With the force as written and the safety factor of {safetyFactor}; no load factor, no peel.
      </p>
    </>
  );
}
