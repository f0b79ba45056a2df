import { useSignal } from '@preact/signals';
import { Absent } from '#app/parts/absent.tsx';
import { Action, LinkButton } from '#app/parts/action.tsx';
import { Choice, QuantityField } from '#app/parts/field.tsx';
import { BigFigure, Lines } from '#app/parts/figure.tsx';
import { Keypad } from '#app/parts/keypad.tsx';
import { useQuantity } from '#app/parts/quantity-input.ts';
import { Screen } from '#app/parts/screen.tsx';
import { useTypedFigure } from '#app/parts/typed-figure.ts';
import { Warning } from '#app/parts/warning.tsx';
import { fiberVolumeByThickness, innerDiameter, wallsMeasured } from '#app/results/by-thickness.ts';
import { curedByWeight } from '#app/results/by-weight.ts';
import type { Params } from '#app/router.ts';
import { record } from '#app/state/record.ts';
import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import { useBuild } from '#app/state/use-journal.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { unitFor } from '#shared/units/quantity.ts';
import { type Measured, measurementDrafts, stationsFor, whyNot } from './measuring.ts';

function Walls({ state }: { state: BuildState }) {
  const walls = wallsMeasured(state);
  if (walls.length === 0) return null;
  const byWeight = curedByWeight(state);
  const byThickness = fiberVolumeByThickness(walls);
  return (
    <>
      <Lines
        head={['at', 'wall', 'a ply', 'fiber']}
        rows={walls.map((w) => [
          show(w.station, 'length', 0),
          show(w.wall, 'thickness'),
          show(w.plyThickness, 'thickness'),
          w.fiberVolume === undefined ? 'too thin' : show(w.fiberVolume, 'fraction', 0),
        ])}
      />
      {byThickness !== undefined && (
        <p>
          Fiber volume <strong>{show(byThickness, 'fraction', 0)}</strong> by thickness
          {byWeight.ok && `, ${show(byWeight.value.fiberVolume, 'fraction', 0)} by weight`}.
        </p>
      )}
      {walls.some((w) => w.fiberVolume === undefined) && (
        <Warning kind="amber" title="Thinner than its fiber alone">
          The wall cannot be thinner than {state.header.plies} plies without resin. Measure again, or check
          the plies and the mandrel's diameter in the plan.
        </Warning>
      )}
    </>
  );
}

function MeasureForm({ state }: { state: BuildState }) {
  const what = useSignal<Measured>('circumference');
  const stations = stationsFor(state.header.tubeLength);
  const chosen = useSignal(stations[0] ?? 0);
  const other = useQuantity(undefined, { quantity: 'length', min: 0, max: state.header.tubeLength ?? 15 });
  const own = useSignal(stations.length === 0);
  const figure = useTypedFigure({ quantity: 'diameter', positive: true, max: 4 });
  const station = own.value ? other.si.value : chosen.value;
  const value = figure.si.value;
  const refused =
    figure.problem.value ??
    (value === undefined ? undefined : whyNot(what.value, value, innerDiameter(state)));
  const missing =
    station === undefined
      ? 'Say where along the tube'
      : value === undefined
        ? 'Type what you read'
        : undefined;
  const save = async () => {
    if (station === undefined || value === undefined || refused) return;
    const drafts = measurementDrafts(state, what.value, station, value, figure.typed.value);
    if (!(await record(drafts))) return;
    figure.text.value = '';
    const after = stations[stations.indexOf(station) + 1];
    if (after !== undefined) chosen.value = after;
  };
  const word = what.value === 'circumference' ? 'around' : 'across';
  return (
    <Screen
      kicker={`${state.header.name} no. ${state.header.number}`}
      title="Measure the wall"
      back={{ to: `/weigh/${state.header.id}`, label: 'Weights' }}
      actions={
        <>
          <Keypad text={figure.text} label={`Reading, ${unitFor('diameter', settings.value.units)}`} />
          <Action onPress={save} not={refused ? 'Look at the figure' : missing}>
            {value !== undefined && station !== undefined
              ? `${show(value, 'diameter')} ${word} at ${show(station, 'length', 0)}`
              : ''}
          </Action>
          <LinkButton to={`/build/${state.header.id}`}>On with the route</LinkButton>
        </>
      }
    >
      <Walls state={state} />
      <Choice
        label="Measured"
        value={what.value}
        options={[
          { value: 'circumference', label: 'Around (pi tape)' },
          { value: 'outsideDiameter', label: 'Across (caliper)' },
        ]}
        onChange={(w) => {
          what.value = w;
        }}
      />
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
      <BigFigure figure={figure.text.value || '0'} unit={unitFor('diameter', settings.value.units)} />
      {refused && <Warning kind="amber" title={refused} announce />}
    </Screen>
  );
}

/** How thick did the wall come out? */
export function MeasureScreen({ params }: { params: Params }) {
  const state = useBuild(params.id);
  if (state === undefined) return null;
  return state === 'absent' ? <Absent what="tube" /> : <MeasureForm state={state} />;
}
