import { useSignal } from '@preact/signals';
import { Action, LinkButton } from '#app/parts/action.tsx';
import { Choice } from '#app/parts/field.tsx';
import { BigFigure, Lines } from '#app/parts/figure.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { go, type Params } from '#app/router.ts';
import { showSplit } from '#app/state/show.ts';
import { NoPlan } from '#app/wall/no-plan.tsx';
import type { LoadCase } from '#shared/record/load-plan.ts';
import { LinePlot } from './line-plot.tsx';
import { greatest, type LineKind, lineKinds, lineValues, reactionRows, seriesOf } from './line-series.ts';
import { caseFactor, place } from './load-words.ts';
import { type CaseLines, linesOf } from './margins-of-plan.ts';
import { NotThere } from './not-there.tsx';
import { nearest, PlaceSlide } from './pick-place.tsx';
import { caseTroublesOf } from './troubles-of.ts';
import { type LoadedPlan, loadedPlan } from './use-plan.ts';

function Diagram({ lines, of }: { lines: CaseLines; of: LoadedPlan }) {
  const kind = useSignal<LineKind>('moment');
  const picked = useSignal<number | undefined>(undefined);
  const { solution } = lines;
  const series = seriesOf(solution, kind.value);
  const most = greatest(solution.at, series);
  const at = picked.value ?? most.at;
  const index = nearest(solution.at, at);
  const place0 = solution.at[index] ?? 0;
  const { quantity, label } = lineKinds[kind.value];
  const big = showSplit(most.value, quantity, quantity === 'length' ? 0 : undefined);
  const pick = (to: number) => {
    picked.value = to;
  };
  return (
    <>
      <BigFigure
        label={`Greatest ${label.toLowerCase()}`}
        figure={big.figure}
        unit={`${big.unit} at ${place(most.at)}`}
      />
      <div class="line-keys">
        <Choice
          label="Along the tube"
          value={kind.value}
          options={Object.entries(lineKinds).map(([value, k]) => ({
            value: value as LineKind,
            label: k.label,
          }))}
          onChange={(to) => (kind.value = to)}
        />
      </div>
      <div>
        <LinePlot
          solution={solution}
          kind={kind.value}
          length={of.length}
          at={place0}
          most={most}
          onPick={pick}
        />
        <PlaceSlide length={of.length} at={at} onPick={pick} />
      </div>
      <section aria-label="The picked station">
        <h2>At {place(place0)}</h2>
        <Lines rows={lineValues(solution, place0).map(({ label: l, says }) => [l, says])} />
      </section>
    </>
  );
}

/** What a sign means is drawn in the sketch of the loads; here it is said. */
const signs =
  'Above 0 goes the way the main load goes, aside and in shear; pulled along the tube is above 0, pressed below.';

function Known({ of, one, lines }: { of: LoadedPlan; one: LoadCase; lines: CaseLines }) {
  const { found, home } = of;
  return (
    <Screen
      kicker={`${found.body.name} · ${caseFactor(one)}`}
      title={one.name}
      back={{ to: home, label: 'Loads' }}
      actions={
        <>
          <LinkButton to={`${home}/case/${one.id}`}>Its load factor</LinkButton>
          <Action onPress={() => go(`${home}/margins`)}>See the margins</Action>
        </>
      }
    >
      {lines.buckles && (
        <Warning kind="stop" title="It buckles as a column">
          What presses it bends it past all bounds; drawn here as if that did not bend it.
        </Warning>
      )}
      <Diagram lines={lines} of={of} />
      <h2>At the supports</h2>
      <Lines head={['At', 'gives back']} rows={reactionRows(lines.solution)} />
      <p class="quiet small">{signs}</p>
    </Screen>
  );
}

/** What does a load case do to the tube along its length? */
export function LinesScreen({ params }: { params: Params }) {
  const of = loadedPlan(params.doc);
  if (!of) return <NoPlan />;
  const { found, loads, home } = of;
  const one = loads.cases.find((c) => c.id === params.case);
  if (!one) return <NotThere of={of} what="load case" />;
  const troubles = caseTroublesOf(found.doc, found.body, one);
  const lines = troubles.length > 0 ? undefined : linesOf(found.body, one);
  if (lines) return <Known of={of} one={one} lines={lines} />;
  const [first] = troubles;
  return (
    <Screen
      kicker={found.body.name}
      title={one.name}
      back={{ to: home, label: 'Loads' }}
      actions={<Action onPress={() => go(first?.to ?? home)}>{first?.act ?? 'Look at the loads'}</Action>}
    >
      <Warning kind="amber" title="Not drawn yet">
        <ul class="loads-troubles">
          {troubles.map(({ says }) => (
            <li key={says}>{says}</li>
          ))}
        </ul>
      </Warning>
    </Screen>
  );
}
