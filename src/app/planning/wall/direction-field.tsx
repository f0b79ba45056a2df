import type { Signal } from '@preact/signals';
import { Secondary } from '#app/parts/action.tsx';
import { Choice } from '#app/parts/field.tsx';
import { StepField } from '#app/parts/step-field.tsx';
import { show } from '#app/state/show.ts';
import type { PieceEdit } from './piece-edit.ts';
import { type Drift, driftOf, splitAngle } from './wall-cautions.ts';

interface Props {
  edit: PieceEdit;
  wrong: Signal<ReadonlySet<string>>;
}

const bias = Math.PI / 4;

/** On a tapered mandrel the fiber turns; set apart by half of that it is right at mid-piece. */
function DriftSplit({
  drift,
  angle,
  onSet,
}: {
  drift: Drift;
  angle: number;
  onSet: (angle: number) => void;
}) {
  const wanted = Math.abs(angle) < bias / 2 ? 0 : bias;
  const split = splitAngle(wanted, drift);
  const isSplit = Math.abs(angle - split) < 1e-9;
  return (
    <>
      <p>
        The mandrel tapers: the fiber turns by {show(drift.total, 'angle')} from starting edge to seam.
        {isSplit && ' Split: half of it is off each way, right at mid-piece.'}
      </p>
      {!isSplit && (
        <Secondary onPress={() => onSet(split)}>
          Split it about mid-piece: lay the warp at {show(split, 'angle')}
        </Secondary>
      )}
    </>
  );
}

/** How the warp lies to the axis of the tube. */
export function Direction({ edit, wrong }: Props) {
  const { piece, drawn, inRoll } = edit;
  const chosen = piece.angle === 0 ? 'straight' : piece.angle === bias ? 'bias' : 'other';
  const drift = driftOf(drawn.roll, inRoll);
  const set = (angle: number) => edit.set({ ...piece, angle }, `angle ${piece.id}`);
  return (
    <>
      <Choice
        label="Warp to the tube's axis"
        value={chosen}
        options={[
          { value: 'straight', label: 'Straight' },
          { value: 'bias', label: 'Bias 45°' },
          { value: 'other', label: 'Other' },
        ]}
        onChange={(to) => set(to === 'straight' ? 0 : to === 'bias' ? bias : Math.PI / 6)}
      />
      {chosen === 'other' && (
        <StepField
          label="Warp angle"
          quantity="angle"
          value={piece.angle}
          step={Math.PI / 36}
          min={-Math.PI / 2}
          max={Math.PI / 2}
          wrong={wrong}
          onSet={set}
        />
      )}
      {drift && <DriftSplit drift={drift} angle={piece.angle} onSet={set} />}
    </>
  );
}
