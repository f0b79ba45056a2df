import { Action, Beside, LinkButton, Secondary } from '#app/parts/action.tsx';
import { Row, Rows } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Caution } from '#app/parts/warning.tsx';
import { go, type Params } from '#app/router.ts';
import { show } from '#app/state/show.ts';
import { AddPiece } from './add-piece.tsx';
import { NoPlan } from './no-plan.tsx';
import { PictureHead } from './picture-head.tsx';
import { heightUnit } from './pictures/layers.ts';
import { WallAlong } from './pictures/wall-along.tsx';
import { Cautions, Problem } from './problems.tsx';
import { wallCautions } from './wall-cautions.ts';
import { type WallDraft, wallDraft } from './wall-draft.ts';
import { mandrelLine, pieceLine, pieceRange } from './wall-lines.ts';
import { WallPictures } from './wall-pictures.tsx';
import { pieceName } from './wall-words.ts';
import { WeightTable } from './weights.tsx';
import './wall.css';

function Pieces({ draft }: { draft: WallDraft }) {
  const plan = draft.plan.value;
  if (!plan) return null;
  return (
    <>
      <h2>Pieces in wrap order</h2>
      <Rows label="Pieces in wrap order">
        <Row
          to={`/plan/${draft.doc}/wall/mandrel`}
          title="Mandrel"
          about={`tube ${show(plan.tubeLength, 'length', 0)}`}
          value={mandrelLine(plan)}
        />
        {plan.wall.pieces.map((piece, i) => (
          <Row
            key={piece.id}
            to={`/plan/${draft.doc}/wall/${piece.id}`}
            title={`${i + 1}  ${pieceName(piece, i)}`}
            about={pieceLine(plan, piece)}
            value={pieceRange(piece)}
          />
        ))}
      </Rows>
      <AddPiece draft={draft} />
    </>
  );
}

function WallBody({ draft }: { draft: WallDraft }) {
  const drawn = draft.drawn.value;
  const along = `/plan/${draft.doc}/wall/picture/along`;
  return (
    <>
      <PictureHead to={along}>Wall along the tube, {heightUnit(drawn.roll)}</PictureHead>
      <WallAlong roll={drawn.roll} />
      <Problem problem={draft.problem.value} />
      <Pieces draft={draft} />
      <Cautions cautions={wallCautions(drawn.plan, drawn.roll)} />
      <h2>What it weighs</h2>
      <WeightTable doc={draft.doc} drawn={drawn} />
      <WallPictures draft={draft} drawn={drawn} />
      <Caution>
        The wall is your choice. What it holds is estimated only under loads you say, on the plan’s ‘Loads and
        margins’. What carries people needs tests, local rules and licensed review.
      </Caution>
    </>
  );
}

function whyNot(draft: WallDraft): string | undefined {
  const drawn = draft.drawn.value;
  if (draft.state.value.wall.pieces.length === 0) return 'It has no piece yet';
  if (draft.problem.value) return 'It cannot be rolled yet';
  if (wallCautions(drawn.plan, drawn.roll).some((c) => c.stops)) return 'The tube is open somewhere';
  return undefined;
}

/** How thick is the wall along the tube, and of which pieces? */
export function WallScreen({ params }: { params: Params }) {
  const doc = params.doc ?? '';
  const draft = wallDraft(doc);
  const plan = draft?.plan.value;
  if (!draft || !plan) return <NoPlan />;
  const save = async () => {
    if (!draft.changed.value || (await draft.save())) go(`/plan/${doc}`);
  };
  return (
    <Screen
      kicker={plan.name}
      title="Wall and cloth"
      back={{ to: `/plan/${doc}`, label: plan.name }}
      actions={
        <>
          <Beside>
            <Secondary onPress={draft.undo} not={draft.canUndo.value ? undefined : 'Nothing to undo'}>
              Undo
            </Secondary>
            {!draft.changed.value && <LinkButton to={`/plan/${doc}/cutting`}>Lay it on the roll</LinkButton>}
          </Beside>
          <Action onPress={save} not={whyNot(draft)}>
            {draft.changed.value ? 'Save this wall' : 'Wall is saved: back to the plan'}
          </Action>
        </>
      }
    >
      <WallBody draft={draft} />
    </Screen>
  );
}
