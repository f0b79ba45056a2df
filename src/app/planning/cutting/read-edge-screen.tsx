import { useSignal } from '@preact/signals';
import { Absent } from '#app/parts/absent.tsx';
import { Action, Beside, Secondary } from '#app/parts/action.tsx';
import { Keyed } from '#app/parts/keyed.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { useTypedFigure } from '#app/parts/typed-figure.ts';
import { goInstead, type Params } from '#app/router.ts';
import { settings } from '#app/state/settings.ts';
import { recordUndoable } from '#app/state/undo.ts';
import { useBuild } from '#app/state/use-journal.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { unitFor } from '#shared/units/quantity.ts';
import { dimension } from './dimensions.ts';
import { type EdgePlace, edgePlaces, usualReading } from './edge-places.ts';
import { offWords } from './edge-words.ts';

/** Farther than this no edge lands by rolling, m */
const most = 0.5;

function ReadEdge({ state, place }: { state: BuildState; place: EdgePlace }) {
  const figure = useTypedFigure({ quantity: 'length', min: 0, max: most });
  const further = useSignal(true);
  const { header } = state;
  const size = figure.si.value;
  const off = size === undefined ? undefined : further.value || size === 0 ? size : -size;
  const save = async () => {
    if (off === undefined) return;
    const { piece, station } = place;
    const draft = {
      kind: 'edgeMark',
      subject: header.id,
      piece,
      station,
      off,
      reading: usualReading,
    } as const;
    if (await recordUndoable({ ...draft, typed: figure.typed.value }, { said: 'Edge written down' }))
      goInstead(`/edge/${header.id}`);
  };
  const unit = unitFor('length', settings.value.units);
  const way = (yes: boolean, label: string) => (
    <Secondary
      pressed={further.value === yes}
      onPress={() => {
        further.value = yes;
      }}
    >
      {label}
    </Secondary>
  );
  return (
    <Screen
      keys
      kicker={`${place.name} at ${dimension(place.station)}`}
      title="How far off its mark?"
      back={{ to: `/edge/${header.id}`, label: 'Edges' }}
      actions={
        <Action onPress={save} not={off === undefined ? 'Type how far; 0 is on the mark' : undefined}>
          Edge is {off === undefined ? '' : offWords(off)}
        </Action>
      }
    >
      <p class="quiet">
        The mark lies {dimension(place.round)} round from the line on the mandrel, on the outside.
      </p>
      <Beside>
        {way(true, 'Further round')}
        {way(false, 'Short of it')}
      </Beside>
      <Keyed text={figure.text} unit={unit} label={`Off its mark, ${unit}`} says={figure.problem.value} />
    </Screen>
  );
}

/** How far from the plan's mark did this edge land? */
export function ReadEdgeScreen({ params }: { params: Params }) {
  const state = useBuild(params.id);
  if (state === undefined) return null;
  const places = state === 'absent' ? [] : edgePlaces(state);
  const place =
    typeof places === 'string'
      ? undefined
      : places.find((p) => p.piece === params.piece && String(p.mark) === params.mark);
  if (state === 'absent' || !place) return <Absent what="tube" />;
  return <ReadEdge state={state} place={place} />;
}
