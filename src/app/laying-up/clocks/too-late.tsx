import { cameTooLate } from './done-from-note.ts';

/** A notification that outlived its clock: the builder must not believe that something was written down. */
export function TooLate() {
  if (!cameTooLate.value) return null;
  return (
    <div class="notice notice-amber" role="status">
      <p>That clock was answered already, or set going again. Nothing was written down just now.</p>
      <button type="button" onClick={() => (cameTooLate.value = false)}>
        Seen
      </button>
    </div>
  );
}
