import type { Signal } from '@preact/signals';
import { Beside, Secondary } from '#app/parts/action.tsx';
import { StepField, stepIn } from '#app/parts/step-field.tsx';
import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import type { PieceEdit } from './piece-edit.ts';
import {
  addStation,
  convert,
  type GivenBy,
  moveStation,
  removeStation,
  roomOf,
  stationsOnTube,
} from './shape-edits.ts';
import { upStep } from './snapping.ts';
import { stationFigures, underPiece } from './station-figures.ts';
import { givenWords, quantityOf } from './station-words.ts';

interface Props {
  edit: PieceEdit;
  chosen: Signal<number>;
  wrong: Signal<ReadonlySet<string>>;
}

const inch = 0.0254;
const most: Record<GivenBy, number> = { plies: 200, width: 50, wall: 0.2 };
const order: readonly GivenBy[] = ['plies', 'wall', 'width'];

function Bar({ chosen, count }: { chosen: Signal<number>; count: number }) {
  const to = (by: number) => {
    chosen.value = Math.min(count - 1, Math.max(0, chosen.value + by));
  };
  return (
    <div class="station-bar" role="group" aria-label="Station">
      <button
        type="button"
        aria-label="Station before"
        aria-disabled={chosen.value === 0}
        onClick={() => to(-1)}
      >
        ‹
      </button>
      <span aria-live="polite">
        Station {chosen.value + 1} of {count}
      </span>
      <button
        type="button"
        aria-label="Station after"
        aria-disabled={chosen.value === count - 1}
        onClick={() => to(1)}
      >
        ›
      </button>
    </div>
  );
}

function AtField({ edit, chosen, wrong }: Props) {
  const { piece, length } = edit;
  const station = chosen.value;
  const room = roomOf(piece, station, length);
  const [low, high] = [show(room.min, 'length'), show(room.max, 'length')];
  return (
    <StepField
      label="From end 0"
      quantity="length"
      value={stationsOnTube(piece)[station]?.at ?? 0}
      step={stepIn(0.01, inch / 2)}
      {...room}
      bounds={`Station ${station + 1} lies between ${low} and ${high}: its neighbors and the tube's ends keep it there.`}
      wrong={wrong}
      onSet={(at) => edit.set(moveStation(piece, station, { at }), `at ${piece.id} ${station}`)}
    />
  );
}

/** Plies, wall and width of the chosen station: give one, see the other two. */
function ValueFields({ edit, chosen, wrong }: Props) {
  const { piece, inRoll, drawn } = edit;
  const station = chosen.value;
  const figures = stationFigures(drawn.roll, inRoll, piece, station);
  const under = figures && underPiece(drawn.roll, inRoll, piece, figures.at);
  if (!figures || !under) return null;
  const set = (by: GivenBy, given: number) => {
    const value = by === piece.shape.by ? given : convert({ [by]: given }, piece.shape.by, under);
    edit.set(moveStation(piece, station, { value }), `value ${piece.id} ${station}`);
  };
  return (
    <>
      {order.map((by) => (
        <StepField
          key={by}
          label={givenWords[by]}
          quantity={quantityOf[by]}
          value={figures[by]}
          step={upStep(by, settings.value.units)}
          min={by === 'width' ? piece.overlap + 0.001 : 1e-5}
          max={most[by]}
          positive
          bounds={
            by === 'width' && piece.overlap > 0
              ? `The cloth is wider than its lap of ${show(piece.overlap, 'length')}: write more than that.`
              : undefined
          }
          wrong={wrong}
          onSet={(value) => set(by, value)}
        />
      ))}
    </>
  );
}

/** The chosen station by number, for gloves, keyboard and screen reader. */
export function StationPanel({ edit, chosen, wrong }: Props) {
  const { piece } = edit;
  const count = stationsOnTube(piece).length;
  const add = () => {
    const added = addStation(piece, chosen.value);
    edit.set(added.piece);
    chosen.value = added.index;
  };
  const remove = () => {
    edit.set(removeStation(piece, chosen.value));
    chosen.value = Math.min(chosen.value, count - 2);
  };
  return (
    <>
      <Bar chosen={chosen} count={count} />
      <div class="station-fields" key={chosen.value}>
        <AtField edit={edit} chosen={chosen} wrong={wrong} />
        <ValueFields edit={edit} chosen={chosen} wrong={wrong} />
      </div>
      <Beside>
        <Secondary onPress={add}>Add a station</Secondary>
        {count > 2 && <Secondary onPress={remove}>Delete this one</Secondary>}
      </Beside>
    </>
  );
}
