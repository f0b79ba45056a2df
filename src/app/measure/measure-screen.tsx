import { useSignal } from '@preact/signals';
import { Absent } from '#app/parts/absent.tsx';
import { Action, LinkButton } from '#app/parts/action.tsx';
import { Choice, QuantityField } from '#app/parts/field.tsx';
import { useQuantity } from '#app/parts/quantity-input.ts';
import { Screen } from '#app/parts/screen.tsx';
import type { Params } from '#app/router.ts';
import { show } from '#app/state/show.ts';
import { useBuild } from '#app/state/use-journal.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { type Measured, stationsFor } from './measuring.ts';
import { ReadScreen } from './read-screen.tsx';
import { Walls } from './walls.tsx';

/** The first of the usual stations that nobody has measured yet. */
function firstOpen(state: BuildState, stations: readonly number[]): number | undefined {
  const done = new Set(state.measurements.map((m) => m.entry.station));
  return stations.find((s) => !done.has(s)) ?? stations[0];
}

function Measure({ state }: { state: BuildState }) {
  const { header } = state;
  const what = useSignal<Measured>('circumference');
  const stations = stationsFor(header.tubeLength);
  const chosen = useSignal(firstOpen(state, stations));
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
          <LinkButton to={`/build/${header.id}`}>On with the route</LinkButton>
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
        label="At, from the datum end"
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
      {own.value && <QuantityField label="Distance from the datum end" input={other} />}
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
