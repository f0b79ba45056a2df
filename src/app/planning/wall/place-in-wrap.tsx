import { Beside, Secondary } from '#app/parts/action.tsx';
import type { PieceEdit } from './piece-edit.ts';

interface PlaceProps {
  edit: PieceEdit;
  onShift: (by: -1 | 1) => void;
  onCopy: () => void;
  onRemove: () => void;
}

/** Its place in the wrap. */
export function PlaceInWrap({ edit, onShift, onCopy, onRemove }: PlaceProps) {
  const { index } = edit;
  const count = edit.draft.state.value.wall.pieces.length;
  return (
    <>
      <h2>Its place in the wrap</h2>
      {count > 1 && (
        <Beside>
          {index > 0 && <Secondary onPress={() => onShift(-1)}>Wrap it earlier</Secondary>}
          {index < count - 1 && <Secondary onPress={() => onShift(1)}>Wrap it later</Secondary>}
        </Beside>
      )}
      <Beside>
        <Secondary onPress={onCopy}>Copy it</Secondary>
        <Secondary onPress={onRemove}>Take it out</Secondary>
      </Beside>
    </>
  );
}
