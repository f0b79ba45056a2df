import { useSignal } from '@preact/signals';
import { Absent } from '#app/parts/absent.tsx';
import { Action, Beside, LinkButton, Secondary } from '#app/parts/action.tsx';
import { Choice, QuantityField } from '#app/parts/field.tsx';
import { useQuantity } from '#app/parts/quantity-input.ts';
import { Screen } from '#app/parts/screen.tsx';
import { go, type Params } from '#app/router.ts';
import { record } from '#app/state/record.ts';
import { show } from '#app/state/show.ts';
import { useBuild } from '#app/state/use-journal.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { type Measured, measuredTick } from './measuring.ts';
import { ReadScreen } from './read-screen.tsx';
import { stationsFor, stationsOpen } from './stations.ts';
import { Walls } from './walls.tsx';

/** Fewer stations than usual may do: the builder says so. */
function Nearby({ state }: { state: BuildState }) {
  const { id } = state.header;
  const tick = state.measurements.length > 0 ? measuredTick(state) : [];
  const enough = async () => {
    if (await record(tick)) go(`/build/${id}`);
  };
  return (
    <Beside>
      <LinkButton to={`/proof/${id}`}>Test it</LinkButton>
      {tick.length > 0 ? (
        <Secondary onPress={enough}>Enough measured</Secondary>
      ) : (
        <LinkButton to={`/build/${id}`}>On with the route</LinkButton>
      )}
    </Beside>
  );
}

function Measure({ state }: { state: BuildState }) {
  const { header } = state;
  const what = useSignal<Measured>('circumference');
  const stations = stationsFor(header.tubeLength);
  const chosen = useSignal(stationsOpen(state)[0] ?? stations[0]);
  const own = useSignal(stations.length === 0);
  const other = useQuantity(undefined, { quantity: 'length', min: 0, max: header.tubeLength ?? 15 });
  const reading = useSignal(false);
  const station = own.value ? other.si.value : chosen.value;
  if (reading.value && station !== undefined) {
    const done = () => {
      reading.value = false;
      const after = stations[stations.indexOf(station) + 1];
      if (after !== undefined) chosen.value = after;
    };
    return <ReadScreen state={state} what={what.value} station={station} onDone={done} />;
  }
  return (
    <Screen
      kicker={`${header.name} no. ${header.number}`}
      title="Measure the wall"
      back={{ to: `/weigh/${header.id}`, label: 'Weights' }}
      actions={
        <>
          <Nearby state={state} />
          <Action
            not={station === undefined ? 'Say where along the tube' : undefined}
            onPress={() => {
              reading.value = true;
            }}
          >
            Read it at {station === undefined ? '' : show(station, 'length', 0)}
          </Action>
        </>
      }
    >
      <Walls state={state} />
      <Choice
        label="At, from end 0"
        value={own.value ? 'other' : String(chosen.value)}
        options={[
          ...stations.map((s) => ({ value: String(s), label: show(s, 'length', 0) })),
          { value: 'other', label: 'Elsewhere' },
        ]}
        onChange={(s) => {
          own.value = s === 'other';
          if (s !== 'other') chosen.value = Number(s);
        }}
      />
      {own.value && <QuantityField label="Distance from end 0" input={other} />}
      <Choice
        label="With"
        value={what.value}
        options={[
          { value: 'circumference', label: 'Tape, around' },
          { value: 'outsideDiameter', label: 'Caliper or pi tape, across' },
        ]}
        onChange={(w) => {
          what.value = w;
        }}
      />
    </Screen>
  );
}

/** How thick did the wall come out? */
export function MeasureScreen({ params }: { params: Params }) {
  const state = useBuild(params.id);
  if (state === undefined) return null;
  return state === 'absent' ? <Absent what="tube" /> : <Measure state={state} />;
}
