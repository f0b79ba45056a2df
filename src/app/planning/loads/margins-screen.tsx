import { type Signal, useSignal } from '@preact/signals';
import { Action } from '#app/parts/action.tsx';
import { Ask } from '#app/parts/ask.tsx';
import { Choice } from '#app/parts/field.tsx';
import { BigFigure } from '#app/parts/figure.tsx';
import { Row, Rows } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Caution, Warning } from '#app/parts/warning.tsx';
import { Assumed } from '#app/planning/carry/assumed.tsx';
import { planOnShow, shownName } from '#app/planning/carry/plan-on-show.ts';
import { tubeMassOf } from '#app/planning/carry/sections-along.ts';
import { NoPlan } from '#app/planning/wall/no-plan.tsx';
import { go, type Params } from '#app/router.ts';
import { FittingMargins } from './fitting-margins.tsx';
import { GaveWayBefore } from './gave-way-before.tsx';
import { HowReckoned } from './how-reckoned.tsx';
import { JustTaken } from './just-taken.tsx';
import { capital, factorWords, place } from './load-words.ts';
import { MarginPlot } from './margin-plot.tsx';
import { type CheckedPlan, marginsOfPlan } from './margins-of-plan.ts';
import { nearest, PlaceSlide } from './pick-place.tsx';
import { type Least, leastOf, marginWords, ruledBy, ruledWords, rulingsOf, rulingWords } from './ruling.ts';
import { plotted } from './station-margins.ts';
import { StationTable } from './station-table.tsx';
import type { Trouble } from './troubles.ts';
import { Troubles } from './troubles-list.tsx';
import { type LoadedPlan, loadedPlan } from './use-plan.ts';
import { WholeTube } from './whole-tube.tsx';
import '#app/planning/along/along.css';

const all = 'all';

function caseName({ loads }: CheckedPlan, of: number): string {
  return loads.cases[of]?.name ?? `Case ${of + 1}`;
}

function whereWords(checked: CheckedPlan, { at, of }: Least): string {
  const named = checked.loads.cases.length > 1 ? `, ${caseName(checked, of)}` : '';
  return at === undefined ? `as a column${named}` : `at ${place(at)}${named}`;
}

/** The one figure: where the wall bears its loads least, and what gives out there. */
function Answer({ checked, least }: { checked: CheckedPlan; least: Least }) {
  return (
    <div class="along-figure">
      <div class="ask-head">
        <p class="along-label">Least margin, {whereWords(checked, least)}</p>
        <Ask term="margin" asks="What is a margin?" />
      </div>
      <BigFigure
        figure={marginWords(least.margin)}
        unit={least.margin < 0 ? 'does not hold' : 'more than asked'}
      />
      <p>{capital(ruledWords[ruledBy(least.check)])} rules there.</p>
    </div>
  );
}

/** What to do where it does not hold, and which check rules where. */
function Rulings({ checked, least }: { checked: CheckedPlan; least: Least }) {
  const { checks, tube, fittings, safetyFactor } = checked;
  const weak = fittings.filter(({ margin }) => margin !== undefined && margin < 0);
  return (
    <>
      {least.margin < 0 && (
        <Warning kind="stop" title="It does not hold">
          {least.at === undefined
            ? 'It buckles as a column under these loads: hold it at more places, or give it more wall in its middle.'
            : `Where it is hatched the wall gives out before the loads have grown ${factorWords(safetyFactor)} times: more plies there, a fatter tube, or less load.`}
        </Warning>
      )}
      {weak.map(({ fitting }) => (
        <Warning key={fitting.id} kind="stop" title={`${fitting.name} does not hold`}>
          Its figures are under Fittings below.
        </Warning>
      ))}
      <ul class="ruling-words" aria-label="What rules where">
        {rulingsOf(checks).map((ruling) => (
          <li key={ruling.from}>{rulingWords(ruling, tube.length)}</li>
        ))}
        {least.at === undefined && <li>Before any of them it buckles as a column.</li>}
      </ul>
    </>
  );
}

function Along({
  checked,
  least: worst,
  picked,
}: {
  checked: CheckedPlan;
  least: Least;
  picked: Signal<number | undefined>;
}) {
  const { checks, tube, loads, sections } = checked;
  const shown = useSignal<string>(all);
  const index = loads.cases.findIndex((c) => c.id === shown.value);
  const stations = plotted(checks, index < 0 ? undefined : index);
  const first = leastOf({ stations, cases: [] })?.at ?? 0;
  const chosen = nearest(
    stations.map(({ at }) => at),
    picked.value ?? first,
  );
  const station = stations[chosen];
  const pick = (at: number) => {
    picked.value = at;
  };
  const section = sections[chosen]?.section;
  if (!station || !section) return null;
  return (
    <>
      <div>
        <MarginPlot stations={stations} length={tube.length} at={station.at} onPick={pick} />
        <PlaceSlide length={tube.length} at={picked.value ?? station.at} onPick={pick} />
      </div>
      {loads.cases.length > 1 && (
        <Choice
          label="Load case"
          value={shown.value}
          options={[
            { value: all, label: 'Least of all' },
            ...loads.cases.map(({ id, name }) => ({ value: id, label: name })),
          ]}
          onChange={(to) => (shown.value = to)}
        />
      )}
      <Rulings checked={checked} least={worst} />
      <StationTable
        checks={checks}
        station={chosen}
        of={station.of}
        section={section}
        at={station.at}
        name={loads.cases.length > 1 ? caseName(checked, station.of) : undefined}
      />
    </>
  );
}

function Body({ doc, checked, least }: { doc: string; checked: CheckedPlan; least: Least }) {
  const picked = useSignal<number | undefined>(undefined);
  return (
    <>
      <Answer checked={checked} least={least} />
      <GaveWayBefore doc={doc} />
      <JustTaken doc={doc} now={{ margin: least.margin, mass: tubeMassOf(checked.tube) }} />
      <Along checked={checked} least={least} picked={picked} />
      {!checked.checks.strengthsKnown && (
        <Warning kind="amber" title="Stiffness and buckling only">
          {checked.tube.withoutStrengths.map(({ name }) => name).join(' and ')} has no strengths on the shelf,
          so that nothing is said of stress: write them from its data sheet.
        </Warning>
      )}
      <WholeTube checked={checked} />
      <FittingMargins checked={checked} />
      <Assumed tube={checked.tube} />
      <HowReckoned checked={checked} least={least} />
      <Caution>
        Estimates for planning. Thin-wall hand layup scatters; damage, heat, moisture and joints govern. What
        carries people needs tests and licensed review.
      </Caution>
    </>
  );
}

function NotYet({ of, troubles }: { of: LoadedPlan; troubles: readonly Trouble[] }) {
  const [first] = troubles;
  return (
    <Screen
      kicker={of.found.body.name}
      title="Margins"
      back={{ to: of.home, label: 'Loads' }}
      actions={<Action onPress={() => go(first?.to ?? of.home)}>{first?.act ?? 'Look at the loads'}</Action>}
    >
      <Troubles troubles={troubles} />
    </Screen>
  );
}

/** Does the wall bear its loads, where least, and what gives out there? */
export function MarginsScreen({ params }: { params: Params }) {
  const of = loadedPlan(params.doc);
  if (!of) return <NoPlan />;
  const { found, home } = of;
  const shown = planOnShow(found.doc, found.body);
  const margins = marginsOfPlan(found.doc, shown.plan);
  const least = margins.ok ? leastOf(margins.checked.checks) : undefined;
  if (!margins.ok || !least) return <NotYet of={of} troubles={margins.ok ? [] : margins.troubles} />;
  const one = margins.checked.loads.cases[least.of];
  return (
    <Screen
      kicker={shownName(shown)}
      title="Margins"
      back={{ to: home, label: 'Loads' }}
      actions={
        least.margin < 0 ? (
          <Action onPress={() => go(`${home}/wanted`)}>Find the plies it wants</Action>
        ) : (
          <Action onPress={() => go(`/plan/${found.doc}`)}>Seen: back to the plan</Action>
        )
      }
    >
      <Body doc={found.doc} checked={margins.checked} least={least} />
      <Rows label="Further">
        <Row
          to={`${home}/lines/${one?.id}`}
          title="Moment and shear"
          about="What the loads do along the tube"
        />
        <Row to={`${home}/wanted`} title="Wanted plies" about="The fewest that bear it, station by station" />
        <Row to={`/plan/${found.doc}/wall`} title="Change its wall" about="More plies where it is short" />
      </Rows>
    </Screen>
  );
}
