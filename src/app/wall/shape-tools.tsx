import { useSignal } from '@preact/signals';
import { Beside, Secondary } from '#app/parts/action.tsx';
import { Choice } from '#app/parts/field.tsx';
import { Sheet } from '#app/parts/sheet.tsx';
import { StepField, stepIn } from '#app/parts/step-field.tsx';
import { settings } from '#app/state/settings.ts';
import { type StartingKind, startingShape } from '#calc';
import type { PieceEdit } from './piece-edit.ts';
import {
  type GivenBy,
  giveBy,
  givenBy,
  mirrored,
  scaledTo,
  setBetween,
  shapedLike,
  shapeOf,
  stationsOnTube,
} from './shape-edits.ts';
import { upStep } from './snapping.ts';
import { underPiece } from './station-figures.ts';
import { givenWords, quantityOf } from './station-words.ts';
import { pieceName } from './wall-words.ts';

const inch = 0.0254;
const betweenWords = [
  { value: 'straight', label: 'Straight' },
  { value: 'smooth', label: 'Smooth' },
  { value: 'step', label: 'Step' },
] as const;

const starts: readonly { kind: StartingKind; label: string }[] = [
  { kind: 'even', label: 'Even' },
  { kind: 'taper', label: 'Even taper' },
  { kind: 'fastThenSlow', label: 'Fast, then slow' },
  { kind: 'slowThenFast', label: 'Slow, then fast' },
  { kind: 'thickening', label: 'Thick in one place' },
  { kind: 'sleeve', label: 'Sleeve at end 0' },
];

const reaches = ({ piece }: PieceEdit) => (stationsOnTube(piece).at(-1)?.at ?? 0) - piece.start;

function StartSheet({ edit, onClose }: { edit: PieceEdit; onClose: () => void }) {
  const { piece } = edit;
  const { by } = piece.shape;
  const values = shapeOf(piece).stations.map((s) => s.value);
  const thick = useSignal(Math.max(...values));
  const thin = useSignal(Math.min(...values));
  const step = upStep(by, settings.value.units);
  const take = (kind: StartingKind) => {
    const { stations, between } = startingShape({
      kind,
      length: reaches(edit),
      thick: thick.value,
      thin: thin.value,
    });
    edit.set({ ...piece, shape: givenBy(by, { between, stations: [...stations] }) });
    onClose();
  };
  return (
    <Sheet title="Start from a shape" onClose={onClose}>
      <StepField
        label={`${givenWords[by]} where thick`}
        quantity={quantityOf[by]}
        value={thick.value}
        step={step}
        min={step}
        positive
        onSet={(v) => (thick.value = v)}
      />
      <StepField
        label={`${givenWords[by]} where thin`}
        quantity={quantityOf[by]}
        value={thin.value}
        step={step}
        min={step}
        positive
        onSet={(v) => (thin.value = v)}
      />
      {starts.map(({ kind, label }) => (
        <Secondary key={kind} onPress={() => take(kind)}>
          {label}
        </Secondary>
      ))}
      <Secondary onPress={onClose}>Leave it as it is</Secondary>
    </Sheet>
  );
}

function LikeSheet({ edit, onClose }: { edit: PieceEdit; onClose: () => void }) {
  const { pieces } = edit.draft.state.value.wall;
  return (
    <Sheet title="Shape it like" onClose={onClose}>
      {pieces.map((other, i) =>
        other.id === edit.piece.id ? null : (
          <Secondary
            key={other.id}
            onPress={() => {
              edit.set(shapedLike(edit.piece, other));
              onClose();
            }}
          >
            {pieceName(other, i)}
          </Secondary>
        ),
      )}
      <Secondary onPress={onClose}>Leave it as it is</Secondary>
    </Sheet>
  );
}

function GivenChoice({ edit }: { edit: PieceEdit }) {
  const { piece, index, drawn } = edit;
  const give = (by: GivenBy) =>
    edit.set(
      giveBy(piece, by, (at) => {
        const under = underPiece(drawn.roll, index, piece, at);
        return under ?? { startDiameter: 1, thickness: 1, overlap: piece.overlap };
      }),
    );
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
