import { type Signal, useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { PieceEdit } from './piece-edit.ts';

/** The name of a piece as it is typed; an empty one is not put in. */
export function useName({ piece, set }: PieceEdit): Signal<string> {
  const text = useSignal(piece.name);
  useEffect(() => {
    const typed = text.value.trim().slice(0, 200);
    if (typed !== '' && typed !== piece.name) set({ ...piece, name: typed }, `name ${piece.id}`);
  }, [text.value]);
  return text;
}
