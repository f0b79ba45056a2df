import { useSignal } from '@preact/signals';
import { Secondary } from '#app/parts/action.tsx';
import { Sheet } from '#app/parts/sheet.tsx';
import { StepField } from '#app/parts/step-field.tsx';
import { settings } from '#app/state/settings.ts';
import { type StartingKind, startingShape } from '#calc';
import type { PieceEdit } from './piece-edit.ts';
import { givenBy, shapedLike, shapeOf, stationsOnTube } from './shape-edits.ts';
import { upStep } from './snapping.ts';
import { givenWords, quantityOf } from './station-words.ts';
import { pieceName } from './wall-words.ts';

const starts: readonly { kind: StartingKind; label: string }[] = [
  { kind: 'even', label: 'Even' },
  { kind: 'taper', label: 'Even taper' },
  { kind: 'fastThenSlow', label: 'Fast, then slow' },
  { kind: 'slowThenFast', label: 'Slow, then fast' },
  { kind: 'thickening', label: 'Thick in one place' },
  { kind: 'sleeve', label: 'Sleeve at end 0' },
];

/** How long the piece is along the tube, m */
export const reaches = ({ piece }: PieceEdit) => (stationsOnTube(piece).at(-1)?.at ?? 0) - piece.start;

/** A shape to start from, between a thick and a thin value. */
export function StartSheet({ edit, onClose }: { edit: PieceEdit; onClose: () => void }) {
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

/** The shape of another piece. */
export function LikeSheet({ edit, onClose }: { edit: PieceEdit; onClose: () => void }) {
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
