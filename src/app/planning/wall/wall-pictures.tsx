import { LinkButton } from '#app/parts/action.tsx';
import { Ask } from '#app/parts/ask.tsx';
import { show } from '#app/state/show.ts';
import { PictureHead } from './picture-head.tsx';
import { FlatShape } from './pictures/flat-shape.tsx';
import { SideView } from './pictures/side-view.tsx';
import { Unrolled } from './pictures/unrolled.tsx';
import { RoundSection } from './round-section.tsx';
import type { Drawn, WallDraft } from './wall-draft.ts';
import { flatPieces } from './wall-model.ts';
import { pieceName } from './wall-words.ts';

function Flats({ draft, drawn: { plan, roll } }: { draft: WallDraft; drawn: Drawn }) {
  return (
    <>
      {flatPieces(roll).map((flat, i) => {
        const piece = plan.wall.pieces[i];
        if (!piece) return null;
        const length = show(flat.length, 'length', 0);
        return (
          <div key={piece.id}>
            <PictureHead to={`/plan/${draft.doc}/wall/picture/flat-${i + 1}`}>
              {pieceName(piece, i)}, flat · {length}
            </PictureHead>
            <FlatShape flat={flat} angle={piece.kind === 'cloth' ? piece.angle : undefined} />
          </div>
        );
      })}
    </>
  );
}

/** Everything a builder would draw on the back of an envelope. */
export function WallPictures({ draft, drawn }: { draft: WallDraft; drawn: Drawn }) {
  const { roll } = drawn;
  const to = (name: string) => `/plan/${draft.doc}/wall/picture/${name}`;
  const { pressedAt } = draft.state.value.wall;
  return (
    <>
      <Flats draft={draft} drawn={drawn} />
      <PictureHead to={to('unrolled')} ask={<Ask term="seam" asks="What is a seam?" />}>
        Unrolled, plies round the tube
      </PictureHead>
      <Unrolled roll={roll} pressedAt={pressedAt} />
      <p class="picture-words">Thick lines: seams. Dotted: starting edges. Right is the far end.</p>
      <RoundSection draft={draft} drawn={drawn} />
      <PictureHead to={to('side')}>Finished, from its 90° side</PictureHead>
      <SideView roll={roll} />
      <LinkButton to={`/plan/${draft.doc}/along`}>How stiff it is along the tube</LinkButton>
    </>
  );
}
