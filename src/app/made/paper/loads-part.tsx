import { Lines } from '#app/parts/figure.tsx';
import { Caution } from '#app/parts/warning.tsx';
import { assumedWords } from '#app/planning/carry/carry-words.ts';
import { planOfBuild } from '#app/planning/cutting/plan-of-build.ts';
import { frozenShelf } from '#app/planning/loads/frozen-shelf.ts';
import {
  caseFactor,
  factorWords,
  fittingWords,
  loadFigure,
  loadTitle,
  place,
  supportWords,
} from '#app/planning/loads/load-words.ts';
import { type CheckedPlan, marginsOfPlan } from '#app/planning/loads/margins-of-plan.ts';
import {
  leastOf,
  marginWords,
  ruledBy,
  ruledWords,
  rulingsOf,
  rulingWords,
} from '#app/planning/loads/ruling.ts';
import { Sketch } from '#app/planning/loads/sketch.tsx';
import { farthest } from '#app/planning/loads/station-margins.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { LoadPlan } from '#shared/record/load-plan.ts';

function Asked({ loads, length }: { loads: LoadPlan; length: number }) {
  const { supports, cases, safetyFactor, mostDeflection } = loads;
  return (
    <>
      {cases.map((one) => (
        <div key={one.id}>
          <p>
            {one.name}, {caseFactor(one)}
          </p>
          <Sketch length={length} supports={supports} loads={one.loads} />
          <Lines
            rows={one.loads.map((l) => [
              l.typed ? `${loadTitle(l)}, written as ${l.typed}` : loadTitle(l),
              loadFigure(l),
            ])}
          />
        </div>
      ))}
      <Lines
        rows={[
          ['Held', supports.map(supportWords).join('; ') || 'nowhere'],
          ['Safety factor', safetyFactor === undefined ? 'not set' : factorWords(safetyFactor)],
          ['Most it may go aside', mostDeflection === undefined ? 'no limit' : place(mostDeflection)],
        ]}
      />
    </>
  );
}

/** One margin on paper: below 0 in words too. */
const margin = (value: number | undefined): string => {
  if (value === undefined) return 'strengths missing';
  return value < 0 ? `${marginWords(value)}, does not hold` : marginWords(value);
};

function resultRows({ checks, loads, fittings }: CheckedPlan): string[][] {
  const least = leastOf(checks);
  const where = least?.at === undefined ? 'as a column' : `at ${place(least.at)}`;
  return [
    ...(least ? [[`Least margin, ${where}, ${ruledWords[ruledBy(least.check)]}`, margin(least.margin)]] : []),
    ...checks.cases.flatMap(({ solution, column }, i) => {
      const name = loads.cases[i]?.name ?? `Case ${i + 1}`;
      const { far, at } = farthest(solution);
      const buckles = column.reserve < 1e6 ? [[`${name}: column buckling`, margin(column.margin)]] : [];
      return [[`${name}: farthest aside, at ${place(at)}`, place(far)], ...buckles];
    }),
    ...fittings.map((f) => [`${f.fitting.name}: ${fittingWords(f.fitting)}`, margin(f.margin)]),
  ];
}

function Checked({ checked }: { checked: CheckedPlan }) {
  return (
    <>
      <Lines rows={resultRows(checked)} />
      {rulingsOf(checked.checks).map((r) => (
        <p key={r.from}>{rulingWords(r, checked.tube.length)}</p>
      ))}
      {assumedWords(checked.tube).map((says) => (
        <p key={says}>{says}</p>
      ))}
    </>
  );
}

/** What the tube was planned to carry, and by how much its wall was planned to do that. */
export function LoadsPart({ state: { header } }: { state: BuildState }) {
  const plan = planOfBuild(header);
  const loads = plan?.loads;
  if (!plan || !loads || (loads.supports.length === 0 && loads.cases.length === 0)) return null;
  const margins = marginsOfPlan(header.plan?.doc ?? '', plan, frozenShelf(header, plan));
  return (
    <section class="paper-part" aria-label="Loads and margins">
      <h2>Loads and margins, as planned</h2>
      <Asked loads={loads} length={plan.tubeLength} />
      {margins.ok ? (
        <Checked checked={margins.checked} />
      ) : (
        margins.troubles.map(({ says }) => <p key={says}>Not checked: {says}</p>)
      )}
      <Caution>
        Estimates for planning. Thin-wall hand layup scatters; damage, heat, moisture and joints govern. What
        carries people needs tests and licensed review.
      </Caution>
    </section>
  );
}
