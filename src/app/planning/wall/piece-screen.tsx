import { type Signal, useSignal, useSignalEffect } from '@preact/signals';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { Action, Beside, Secondary } from '#app/parts/action.tsx';
import { Ask } from '#app/parts/ask.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { go, goInstead, type Params } from '#app/router.ts';
import { theStore } from '#app/state/shop.ts';
import { show } from '#app/state/show.ts';
import type { FlatPiece, Roll } from '#calc';
import { NoPlan } from './no-plan.tsx';
import { OffsetTable } from './offset-table.tsx';
import { PictureHead } from './picture-head.tsx';
import { FlatShape } from './pictures/flat-shape.tsx';
import { WallAlong } from './pictures/wall-along.tsx';
import { type PieceEdit, pieceEdit } from './piece-edit.ts';
import { PieceFields } from './piece-fields.tsx';
import { PlaceInWrap } from './place-in-wrap.tsx';
import { Cautions, Problem } from './problems.tsx';
import { moveStation, stationsOnTube } from './shape-edits.ts';
import { ShapeTools } from './shape-tools.tsx';
import { StationPanel } from './station-panel.tsx';
import { StationPlot } from './station-plot.tsx';
import { givenWords } from './station-words.ts';
import { wallCautions } from './wall-cautions.ts';
import { wallDraft } from './wall-draft.ts';
import { copyPiece, removePiece, shiftPiece } from './wall-edits.ts';
import { flatPiece, masses } from './wall-model.ts';
import { pieceName } from './wall-words.ts';
import { WeightFigures } from './weights.tsx';
import { WhileStill, WhileUnseen } from './while-still.tsx';
import './wall.css';

function Flat({ edit }: { edit: PieceEdit }) {
  const { drawn, piece, index, inRoll, draft } = edit;
  const last = useRef<FlatPiece | undefined>(undefined);
  const flat = flatUnderThumb(drawn.roll, inRoll) ?? last.current;
  last.current = flat;
  if (!flat) return null;
  return (
    <>
      <PictureHead
        to={`/plan/${draft.doc}/wall/picture/flat-${index + 1}`}
        ask={<Ask term="developed-width" asks="What is developed width?" />}
      >
        Flat · {show(flat.length, 'length', 0)} long
      </PictureHead>
      <FlatShape flat={flat} angle={piece.kind === 'cloth' ? piece.angle : undefined} />
      <WhileStill moving={draft.moving.value}>
        <OffsetTable flat={flat} />
      </WhileStill>
    </>
  );
}

/** The piece as it would be cut; undefined where it does not lie flat, which is told once the thumb lets go. */
function flatUnderThumb(roll: Roll, index: number): FlatPiece | undefined {
  if (!roll.pieces[index]) return undefined;
  try {
    return flatPiece(roll, index);
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

function Whole({ edit }: { edit: PieceEdit }) {
  const { plan, roll } = edit.drawn;
  const mass = masses(plan, roll);
  return (
    <>
      {roll.pieces.length > 1 && (
        <>
          <h2>The whole wall</h2>
          <WallAlong roll={roll} height={120} />
        </>
      )}
      {mass && <WeightFigures roll={roll} mass={mass} />}
    </>
  );
}

function CautionsOf({ edit }: { edit: PieceEdit }) {
  const { drawn, inRoll } = edit;
  const all = wallCautions(drawn.plan, drawn.roll);
  return <Cautions cautions={all.filter((c) => c.stops || c.pieces.includes(inRoll))} />;
}

function useStationAt({ piece }: PieceEdit) {
  const chosen = useSignal(0);
  const last = stationsOnTube(piece).length - 1;
  useLayoutEffect(() => {
    // A station that was undone is not chosen any more.
    if (chosen.value > last) chosen.value = last;
  });
  return chosen;
}

function PieceBody({ edit, wrong }: { edit: PieceEdit; wrong: Signal<ReadonlySet<string>> }) {
  const { piece, inRoll, drawn, draft } = edit;
  const chosen = useStationAt(edit);
  const held = useSignal<number | undefined>(undefined);
  useSignalEffect(() => {
    draft.moving.value = held.value !== undefined;
  });
  const moving = draft.moving.value;
  const { doc } = draft;
  const copy = () => {
    const id = theStore().newId();
    draft.change(copyPiece(draft.state.value, piece.id, id));
    goInstead(`/plan/${doc}/wall/${id}`);
  };
  const remove = () => {
    draft.change(removePiece(draft.state.value, piece.id));
    goInstead(`/plan/${doc}/wall`);
  };
  return (
    <>
      <h2>{givenWords[piece.shape.by]} at the stations</h2>
      <StationPlot
        roll={drawn.roll}
        index={inRoll}
        held={held}
        piece={piece}
        length={edit.length}
        chosen={chosen.value}
        onChoose={(station) => (chosen.value = station)}
        onMove={(station, to, gesture) => edit.set(moveStation(piece, station, to), gesture)}
      />
      <Problem problem={draft.problem.value} />
      <WhileStill moving={moving}>
        <StationPanel edit={edit} chosen={chosen} wrong={wrong} />
      </WhileStill>
      <WhileUnseen moving={moving}>
        <Flat edit={edit} />
      </WhileUnseen>
      <WhileUnseen moving={moving}>
        <Whole edit={edit} />
      </WhileUnseen>
      <WhileStill moving={moving}>
        <CautionsOf edit={edit} />
        <ShapeTools edit={edit} />
        <PieceFields edit={edit} wrong={wrong} />
        <PlaceInWrap
          edit={edit}
          onShift={(by) => draft.change(shiftPiece(draft.state.value, piece.id, by))}
          onCopy={copy}
          onRemove={remove}
        />
      </WhileStill>
    </>
  );
}

/** How many plies of this piece, where along the tube? */
export function PieceScreen({ params }: { params: Params }) {
  const doc = params.doc ?? '';
  const draft = wallDraft(doc);
  const plan = draft?.plan.value;
  const wrong = useSignal<ReadonlySet<string>>(new Set());
  if (!draft || !plan) return <NoPlan />;
  const edit = pieceEdit(draft, params.piece ?? '');
  const back = { to: `/plan/${doc}/wall`, label: 'Wall' };
  if (!edit) {
    return (
      <Screen title="No such piece" back={back}>
        <Problem problem={draft.problem.value} />
        <p>This piece is not in the wall any more.</p>
      </Screen>
    );
  }
  const { piece, index } = edit;
  return (
    <Screen
      kicker={`${plan.name} · piece ${index + 1} of ${plan.wall.pieces.length}`}
      title={pieceName(piece, index)}
      back={back}
      actions={
        <>
          <Beside>
            <Secondary onPress={draft.undo} not={draft.canUndo.value ? undefined : 'Nothing to undo'}>
              Undo
            </Secondary>
          </Beside>
          <Action
            onPress={() => go(back.to)}
            not={wrong.value.size > 0 ? 'A figure above is still wrong' : undefined}
          >
            Piece is drawn: back to the wall
          </Action>
        </>
      }
    >
      <PieceBody edit={edit} wrong={wrong} />
    </Screen>
  );
}
