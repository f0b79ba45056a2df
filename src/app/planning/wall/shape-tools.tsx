import { useSignal } from '@preact/signals';
import { Beside, Secondary } from '#app/parts/action.tsx';
import { Choice } from '#app/parts/field.tsx';
import { StepField, stepIn } from '#app/parts/step-field.tsx';
import type { PieceEdit } from './piece-edit.ts';
import { type GivenBy, giveBy, mirrored, scaledTo, setBetween, shapeOf } from './shape-edits.ts';
import { LikeSheet, reaches, StartSheet } from './shape-sheets.tsx';
import { underPiece } from './station-figures.ts';
import { givenWords } from './station-words.ts';

const inch = 0.0254;
const betweenWords = [
  { value: 'straight', label: 'Straight' },
  { value: 'smooth', label: 'Smooth' },
  { value: 'step', label: 'Step' },
] as const;

function GivenChoice({ edit }: { edit: PieceEdit }) {
  const { piece, inRoll, drawn } = edit;
  const give = (by: GivenBy) => {
    const under = (at: number) => underPiece(drawn.roll, inRoll, piece, at);
    if (under(piece.start)) edit.set(giveBy(piece, by, under));
  };
  return (
    <Choice
      label="Kept as set, and dragged"
      value={piece.shape.by}
      options={(['plies', 'wall', 'width'] as const).map((by) => ({ value: by, label: givenWords[by] }))}
      onChange={give}
    />
  );
}

/** What is between the stations, and what can be done to the whole shape. */
export function ShapeTools({ edit }: { edit: PieceEdit }) {
  const open = useSignal<'start' | 'like' | undefined>(undefined);
  const { piece, length } = edit;
  const close = () => {
    open.value = undefined;
  };
  const several = edit.draft.state.value.wall.pieces.length > 1;
  return (
    <>
      <Choice
        label="Between stations"
        value={shapeOf(piece).between}
        options={betweenWords}
        onChange={(between) => edit.set(setBetween(piece, between))}
      />
      <GivenChoice edit={edit} />
      <details class="more">
        <summary>Change the whole shape</summary>
        <div class="shape-tools">
          <Beside>
            <Secondary onPress={() => (open.value = 'start')}>Start from a shape</Secondary>
            <Secondary onPress={() => edit.set(mirrored(piece))}>Turn end for end</Secondary>
          </Beside>
          {several && (
            <Secondary onPress={() => (open.value = 'like')}>Shape it like another piece</Secondary>
          )}
          <StepField
            label="Stretch it to a length of"
            quantity="length"
            value={reaches(edit)}
            step={stepIn(0.05, 2 * inch)}
            min={0.01}
            max={length - piece.start}
            onSet={(l) => edit.set(scaledTo(piece, l), `stretch ${piece.id}`)}
          />
        </div>
      </details>
      {open.value === 'start' && <StartSheet edit={edit} onClose={close} />}
      {open.value === 'like' && <LikeSheet edit={edit} onClose={close} />}
    </>
  );
}
