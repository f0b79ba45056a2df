import { useEffect, useRef } from 'preact/hooks';
import { unsaved } from '#app/state/unsaved.ts';
import type { WriteFailure } from '#storage/store.ts';

const whyNotSaved: Record<WriteFailure, string> = {
  full: 'this phone has no room left. Free some space, then try again',
  closed: 'the record is closed. Keep this page open and try again',
  newerVersion: 'a newer version of the app is open in another tab. Close one of them, then try again',
  unreadable:
    'the phone cannot write now; it may be full. Free some space, then try again. If it goes on, note it on paper and open the app again',
  failed: 'the phone did not write it. Try again; if it goes on, save a backup under Shelf, Data and backup',
  refused:
    'the phone refused to write it. Try again; if it goes on, save a backup under Shelf, Data and backup',
};

/** Scrolls what it stands on into sight whenever what is said changes: a screen scrolled down would hide it. */
export function useSeen(said: unknown) {
  const part = useRef<HTMLDivElement>(null);
  useEffect(() => part.current?.scrollIntoView({ block: 'nearest' }), [said]);
  return part;
}

/** What a failed write says; on a sheet, which covers the notice, it has no way of its own: the sheet's action tries again. */
export function NotSaved({ onRetry }: { onRetry?: () => void }) {
  const waiting = unsaved.value;
  const seen = useSeen(waiting);
  const first = waiting[0];
  if (!first) return null;
  return (
    <div class="notice notice-stop" role="alert" ref={seen}>
      <p>
        <strong>{waiting.length === 1 ? 'Not saved:' : `${waiting.length} not saved:`}</strong>{' '}
        {whyNotSaved[first.reason]}. It is held here until it is written.
      </p>
      {onRetry && (
        <button type="button" onClick={onRetry}>
          Write it now
        </button>
      )}
    </div>
  );
}
