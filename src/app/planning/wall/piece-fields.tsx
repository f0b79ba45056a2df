import type { Signal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { Secondary } from '#app/parts/action.tsx';
import { Ask } from '#app/parts/ask.tsx';
import { SelectField, TextField } from '#app/parts/field.tsx';
import { StepField, stepIn } from '#app/parts/step-field.tsx';
import { docsOf } from '#app/state/documents.ts';
import { show } from '#app/state/show.ts';
import type { Piece } from '#shared/record/piece.ts';
import { Direction } from './direction-field.tsx';
import { turn, within } from './pictures/angles.ts';
import type { PieceEdit } from './piece-edit.ts';
import { useName } from './use-name.ts';

interface Props {
  edit: PieceEdit;
  wrong: Signal<ReadonlySet<string>>;
}

const inch = 0.0254;

function MaterialField({ edit }: { edit: PieceEdit }) {
  const { piece, drawn } = edit;
  const type = piece.kind === 'core' ? 'core' : 'cloth';
  const options = useMemo(() => docsOf(type).map((d) => ({ value: d.doc, label: d.body.name })), [type]);
  if (piece.kind === 'film') return null;
  return (
    <SelectField
      label={piece.kind === 'core' ? 'Core' : 'Cloth'}
      value={piece.material ?? drawn.plan.cloth}
      options={options}
      onChange={(material) => {
        const { thickness: _, density: __, ...rest } = piece;
        edit.set({ ...rest, material });
      }}
    />
  );
}

function Sheets({ edit, wrong }: Props) {
  const { piece, inRoll, drawn } = edit;
  const spec = drawn.roll.pieces[inRoll]?.spec;
  if (!spec) return null;
  const own = piece.thickness !== undefined && piece.kind === 'cloth';
  const release = () => {
    const { thickness: _, ...rest } = piece;
    edit.set(rest);
  };
  return (
    <>
      <StepField
        label={piece.kind === 'cloth' ? 'A cured ply' : 'Thickness'}
        ask={piece.kind === 'cloth' && <Ask term="cured-ply" asks="What is a cured ply?" />}
        quantity="thickness"
        value={piece.thickness ?? spec.thickness}
        step={stepIn(0.00001, inch / 1000)}
        min={0.000005}
        max={0.1}
        wrong={wrong}
        hint={
          piece.kind === 'cloth'
            ? own
              ? "the shop's own value"
              : 'from cloth and fiber volume; your own measured value goes here'
            : 'as it lies in the wall'
        }
        onSet={(thickness) => edit.set({ ...piece, thickness }, `thickness ${piece.id}`)}
      />
      {own && <Secondary onPress={release}>Take it from the cloth again</Secondary>}
      {piece.kind === 'film' && (
        <StepField
          label="Density"
          quantity="density"
          value={piece.density ?? spec.density ?? 1000}
          step={stepIn(10, 12)}
          min={10}
          max={20000}
          wrong={wrong}
          onSet={(density) => edit.set({ ...piece, density }, `density ${piece.id}`)}
        />
      )}
    </>
  );
}

function Laid({ edit, wrong }: Props) {
  const { piece } = edit;
  const set = (change: Partial<Piece>, what: string) =>
    edit.set({ ...piece, ...change }, `${what} ${piece.id}`);
  return (
    <>
      <StepField
        label="Lap"
        ask={<Ask term="lap" asks="What is a lap?" />}
        quantity="length"
        value={piece.overlap}
        step={stepIn(0.005, inch / 4)}
        min={0}
        max={0.5}
        hint={`more cloth than the plies need; one wrap alone wants ${show(0.012, 'length')} to ${show(0.025, 'length')}`}
        wrong={wrong}
        onSet={(overlap) => set({ overlap }, 'overlap')}
      />
      <StepField
        label="Starting edge at"
        quantity="angle"
        value={within(piece.clock)}
        step={turn / 24}
        min={0}
        max={turn}
        hint="round the tube from the top, seen from end 0"
        wrong={wrong}
        onSet={(clock) => set({ clock }, 'clock')}
      />
    </>
  );
}

/** What the piece is, how its warp lies, and where it starts. */
export function PieceFields({ edit, wrong }: Props) {
  const name = useName(edit);
  return (
    <>
      <h2>The piece</h2>
      <TextField label="Name" text={name} />
      <MaterialField edit={edit} />
      {edit.piece.kind === 'cloth' && <Direction edit={edit} wrong={wrong} />}
      <Laid edit={edit} wrong={wrong} />
      <Sheets edit={edit} wrong={wrong} />
    </>
  );
}
