import { innerDiameter } from '#app/made/results/by-thickness.ts';
import { Action, Secondary } from '#app/parts/action.tsx';
import { Keyed } from '#app/parts/keyed.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { useTypedFigure } from '#app/parts/typed-figure.ts';
import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import { recordUndoable } from '#app/state/undo.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { unitFor } from '#shared/units/quantity.ts';
import { type Measured, measurementDrafts, whyNot } from './measuring.ts';

interface Props {
  state: BuildState;
  what: Measured;
  station: number;
  onDone: () => void;
}

/** What does the tape or the caliper read here? */
export function ReadScreen({ state, what, station, onDone }: Props) {
  const figure = useTypedFigure({ quantity: 'diameter', positive: true, max: 4 });
  const value = figure.si.value;
  const inner = innerDiameter(state, station);
  const refused = figure.problem.value ?? (value === undefined ? undefined : whyNot(what, value, inner));
  const word = what === 'circumference' ? 'around' : 'across';
  const unit = unitFor('diameter', settings.value.units);
  const save = async () => {
    if (value === undefined) return;
    const said = `${show(value, 'diameter')} at ${show(station, 'length', 0)}`;
    if (await recordUndoable(measurementDrafts(state, what, station, value, figure.typed.value), { said })) {
      onDone();
    }
  };
  return (
    <Screen
      keys
      title={`${what === 'circumference' ? 'Around' : 'Across'} at ${show(station, 'length', 0)}`}
      actions={
        <>
          <Secondary onPress={onDone}>Not this one</Secondary>
          <Action
            onPress={save}
            not={refused ? 'Look at the figure' : value === undefined ? 'Type what you read' : undefined}
          >
            {value === undefined ? '' : `${show(value, 'diameter')} ${word}`}
          </Action>
        </>
      }
    >
      <Keyed text={figure.text} unit={unit} label={`Reading, ${unit}`} says={refused} />
    </Screen>
  );
}
