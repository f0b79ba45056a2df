import { path } from '#app/router.ts';
import { now } from '#app/state/now.ts';
import { undo, undoable } from '#app/state/undo.ts';
import { Secondary } from './action.tsx';
import './undo-last.css';

/** For ten seconds after a press, on whatever screen comes next: the way back. A route has its own among its keys. */
export function UndoLast() {
  const last = undoable.value;
  if (!last || now.value >= last.until || last.facts.length === 0) return null;
  if (path.value.startsWith('/build/') || path.value.startsWith('/cut/')) return null;
  return (
    <Secondary onPress={undo} label={`Undo: ${last.said}`}>
      <span class="undo-last-word">Undo</span> <span class="undo-last-said">{last.said}</span>
    </Secondary>
  );
}
