import { Secondary } from '#app/parts/action.tsx';
import { go } from '#app/router.ts';
import { docsOf } from '#app/state/documents.ts';
import { theStore } from '#app/state/shop.ts';
import type { Piece } from '#shared/record/piece.ts';
import type { WallDraft } from './wall-draft.ts';
import { addPiece, newPiece } from './wall-edits.ts';
import { filmDensity, filmThickness } from './wall-model.ts';

const kinds: readonly { kind: Piece['kind']; label: string }[] = [
  { kind: 'cloth', label: 'Cloth' },
  { kind: 'core', label: 'Core' },
  { kind: 'film', label: 'Film' },
];

/** A new piece of the cloth used last, or of the first core on the shelf. */
function made(draft: WallDraft, kind: Piece['kind']): Piece {
  const { wall, length } = draft.state.value;
  const before = wall.pieces.filter((p) => p.kind === kind).at(-1);
  const material = before?.material ?? (kind === 'cloth' ? draft.plan.value?.cloth : docsOf('core')[0]?.doc);
  const piece = newPiece({
    id: theStore().newId(),
    name: `Piece ${wall.pieces.length + 1}`,
    kind,
    length,
    plies: 1,
    ...(kind !== 'film' && material !== undefined && { material }),
  });
  return kind === 'film' ? { ...piece, thickness: filmThickness, density: filmDensity } : piece;
}

/** The next piece of the wrap, on top of all others. */
export function AddPiece({ draft }: { draft: WallDraft }) {
  const add = (kind: Piece['kind']) => {
    const piece = made(draft, kind);
    draft.change(addPiece(draft.state.value, piece));
    go(`/plan/${draft.doc}/wall/${piece.id}`);
  };
  return (
    <div class="add-piece" role="group" aria-label="Add a piece on top">
      <p>Add a piece on top</p>
      {kinds
        .filter(({ kind }) => kind !== 'core' || docsOf('core').length > 0)
        .map(({ kind, label }) => (
          <Secondary key={kind} onPress={() => add(kind)}>
            {label}
          </Secondary>
        ))}
    </div>
  );
}
