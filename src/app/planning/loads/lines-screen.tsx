import { type Signal, useSignal } from '@preact/signals';
import { Action, Beside, LinkButton } from '#app/parts/action.tsx';
import { Ask } from '#app/parts/ask.tsx';
import { Choice } from '#app/parts/field.tsx';
import { BigFigure, Lines } from '#app/parts/figure.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { planOnShow, shownName } from '#app/planning/carry/plan-on-show.ts';
import { NoPlan } from '#app/planning/wall/no-plan.tsx';
import { go, type Params } from '#app/router.ts';
import { showSplit } from '#app/state/show.ts';
import type { LoadCase } from '#shared/record/load-plan.ts';
import { LinePlot } from './line-plot.tsx';
import { greatest, type LineKind, lineKinds, lineValues, reactionRows, seriesOf } from './line-series.ts';
import { caseFactor, place } from './load-words.ts';
import { type CaseLines, linesOf } from './margins-of-plan.ts';
import { NotThere } from './not-there.tsx';
import { nearest, PlaceSlide } from './pick-place.tsx';
import { Troubles } from './troubles-list.tsx';
import { caseTroublesOf } from './troubles-of.ts';
import { type LoadedPlan, loadedPlan } from './use-plan.ts';
import '#app/planning/along/along.css';

function Keys({ kind }: { kind: Signal<LineKind> }) {
  return (
    <div class="along-keys">
      <Choice
        label="What is drawn"
        value={kind.value}
        options={Object.entries(lineKinds).map(([value, k]) => ({
          value: value as LineKind,
          label: k.label,
        }))}
        onChange={(to) => {
          kind.value = to;
        }}
      />
    </div>
  );
}

function Diagram({ lines, length, kind }: { lines: CaseLines; length: number; kind: LineKind }) {
  const picked = useSignal<number | undefined>(undefined);
  const { solution } = lines;
  const most = greatest(solution.at, seriesOf(solution, kind));
  const at = picked.value ?? most.at;
  const here = solution.at[nearest(solution.at, at)] ?? 0;
  const { label, quantity, digits, term } = lineKinds[kind];
  const big = showSplit(most.value, quantity, digits);
  const pick = (to: number) => {
    picked.value = to;
  };
  return (
    <>
      <div class="along-figure">
        <div class="ask-head">
          <p class="along-label">
            Greatest {label.toLowerCase()}, at {place(most.at)}
          </p>
          {term && <Ask term={term} asks={`What is ${label.toLowerCase()}?`} />}
        </div>
        <BigFigure figure={big.figure} unit={big.unit} />
      </div>
      <div>
        <LinePlot solution={solution} kind={kind} length={length} at={here} most={most} onPick={pick} />
        <PlaceSlide length={length} at={at} onPick={pick} />
      </div>
      <section aria-label="The picked station">
        <h2>At {place(here)}</h2>
        <Lines rows={lineValues(solution, here).map(({ label: name, says }) => [name, says])} />
      </section>
    </>
  );
}

/** What a sign means is drawn in the sketch of the loads; here it is said. */
const signs =
  'Above 0 goes the way the main load goes, aside and in shear; pulled along the tube is above 0, pressed below.';

interface KnownProps {
  of: LoadedPlan;
  one: LoadCase;
  lines: CaseLines;
  /** Of the plan, as it is shown. */
  name: string;
  /** m */
  length: number;
}

function Known({ of, one, lines, name, length }: KnownProps) {
  const { home } = of;
  const kind = useSignal<LineKind>('moment');
  return (
    <Screen kicker={`${name} · ${caseFactor(one)}`} title={one.name} back={{ to: home, label: 'Loads' }}>
      {lines.buckles && (
        <Warning kind="stop" title="It buckles as a column">
          What presses it bends it past all bounds; drawn here as if that did not bend it.
        </Warning>
      )}
      <Keys kind={kind} />
      <Diagram lines={lines} length={length} kind={kind.value} />
      <h2>At the supports</h2>
      <Lines head={['At', 'gives back']} rows={reactionRows(lines.solution)} />
      <p class="quiet small">{signs}</p>
      <Beside>
        <LinkButton to={`${home}/case/${one.id}`}>Its load factor</LinkButton>
        <LinkButton to={`${home}/margins`}>See the margins</LinkButton>
      </Beside>
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
  const shown = planOnShow(found.doc, found.body);
  const troubles = caseTroublesOf(found.doc, shown.plan, one);
  const lines = troubles.length > 0 ? undefined : linesOf(shown.plan, one);
  if (lines)
    return <Known of={of} one={one} lines={lines} name={shownName(shown)} length={shown.plan.tubeLength} />;
  const [first] = troubles;
  return (
    <Screen
      kicker={found.body.name}
      title={one.name}
      back={{ to: home, label: 'Loads' }}
      actions={<Action onPress={() => go(first?.to ?? home)}>{first?.act ?? 'Look at the loads'}</Action>}
    >
      <Troubles troubles={troubles} />
    </Screen>
  );
}
