import { type Signal, signal, useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { useOvenResults } from '#app/curing/oven/use-oven-results.ts';
import { buildName } from '#app/laying-up/clocks/clock-list.ts';
import { Absent } from '#app/parts/absent.tsx';
import { Action, Secondary } from '#app/parts/action.tsx';
import { SelectField } from '#app/parts/field.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { go, type Params } from '#app/router.ts';
import { loadJournals, ovenState } from '#app/state/journals.ts';
import { now as clock } from '#app/state/now.ts';
import { useBuild } from '#app/state/use-journal.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
import { mandrelExpansions } from '#shared/reference/mandrel-expansions.ts';
import { type Fit, fitOf, type Material, type Missing, materialOf, verdictAt } from './demold-fit.ts';
import { DemoldView } from './demold-view.tsx';
import { materialWords, missingWords, readWords, verdictTitle } from './demold-words.ts';
import { HeatSheet } from './heat-sheet.tsx';
import { lastRead, type OvenLog, type ReadLast, setAt } from './part-heat.ts';

/** Typed on this screen and kept while the app is open, by build. */
interface Typed {
  heat: Signal<number | undefined>;
  material: Signal<Material | undefined>;
}
const typedOf = new Map<string, Typed>();

function typedFor(build: string): Typed {
  const known = typedOf.get(build) ?? { heat: signal(undefined), material: signal(undefined) };
  typedOf.set(build, known);
  return known;
}

/** A shop that nobody read (common practice, no source), K */
const usualShop = 296.15;

const capital = (word: string) => word.charAt(0).toUpperCase() + word.slice(1);

function MadeOf({ material }: { material: Signal<Material | undefined> }) {
  return (
    <SelectField
      label="The mandrel is made of"
      value={material.value ?? ''}
      options={[
        { value: '', label: 'Choose' },
        ...(Object.keys(mandrelExpansions) as Material[]).map((value) => ({
          value,
          label: capital(materialWords[value]),
        })),
      ]}
      hint="The plan names no mandrel of the shelf"
      onChange={(value) => (material.value = value === '' ? undefined : value)}
    />
  );
}

interface Props {
  state: BuildState;
  /** The oven loads that it joined first and last; mostly the same. */
  first: OvenLog | undefined;
  last: OvenLog | undefined;
}

function titleOf(found: Fit | Missing, now: number, material: Material | undefined): string {
  if (found === 'material') return 'Is it loose yet?';
  if (typeof found === 'string') return missingWords(found, material).title;
  return verdictTitle(verdictAt(found, now));
}

function Body({
  found,
  now,
  from,
  state,
  material,
}: {
  found: Fit | Missing;
  now: number;
  from: string;
  state: BuildState;
  material: Material | undefined;
}) {
  if (found === 'material') return <p>Metals shrink differently: say what this mandrel is made of.</p>;
  if (typeof found !== 'string')
    return <DemoldView fit={found} now={now} from={from} release={state.header.release} />;
  return (
    <Warning kind="amber" title="Nothing to reckon with">
      {missingWords(found, material).says}
    </Warning>
  );
}

function fromWords(typed: number | undefined, read: ReadLast | undefined): string {
  if (typed !== undefined) return 'The mandrel, as you read it';
  return read ? readWords(read, clock.value) : 'Never read: taken as the shop';
}

function Demold({ state, first, last }: Props) {
  const typing = useSignal(false);
  const { id } = state.header;
  const typed = typedFor(id);
  const onShelf = materialOf(state);
  const material = onShelf ?? typed.material.value;
  const read = lastRead(state, last);
  const now = typed.heat.value ?? read?.temperature ?? state.surroundings?.entry.mandrel ?? usualShop;
  const found = fitOf(state, setAt(state, first), material);
  const from = fromWords(typed.heat.value, read);
  return (
    <>
      <Screen
        kicker={buildName(state)}
        title={titleOf(found, now, material)}
        back={{ to: `/build/${id}`, label: buildName(state) }}
        actions={
          <>
            <Secondary onPress={() => (typing.value = true)}>The mandrel reads something else</Secondary>
            <Action onPress={() => go(`/build/${id}`)}>Back to the tube</Action>
          </>
        }
      >
        {onShelf === undefined && <MadeOf material={typed.material} />}
        <Body found={found} now={now} from={from} state={state} material={material} />
      </Screen>
      {typing.value && (
        <HeatSheet onRead={(kelvin) => (typed.heat.value = kelvin)} onClose={() => (typing.value = false)} />
      )}
    </>
  );
}

interface Loads {
  state: BuildState;
  first: OvenState;
  last: OvenState;
}

/** With what loggers wrote too: where a file is large it comes a moment later. */
function FromOven({ state, first, last }: Loads) {
  const tubes = [state.header];
  const [inFirst, inLast] = [useOvenResults(first, tubes), useOvenResults(last, tubes)];
  return (
    <Demold
      state={state}
      first={{ load: first, series: inFirst.results.series }}
      last={{ load: last, series: inLast.results.series }}
    />
  );
}

function WithLoads({ state }: { state: BuildState }) {
  const ids = state.ovenLoads.map((f) => f.entry.ovenLoad);
  const looked = useSignal(false);
  useEffect(() => {
    loadJournals(ids).finally(() => {
      looked.value = true;
    });
  }, [ids.join()]);
  const loads = ids.map(ovenState).filter((l) => l !== undefined);
  if (!looked.value && loads.length < ids.length) return <div class="screen" />;
  const [first, last] = [loads[0], loads.at(-1)];
  if (!first || !last) return <Demold state={state} first={undefined} last={undefined} />;
  return <FromOven state={state} first={first} last={last} />;
}

/** Is the tube loose on its mandrel, or when will it be? */
export function DemoldScreen({ params }: { params: Params }) {
  const state = useBuild(params.id);
  if (state === undefined) return <div class="screen" />;
  if (state === 'absent') return <Absent what="tube" />;
  return <WithLoads state={state} />;
}
