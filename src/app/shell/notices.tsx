import { NotSaved } from '#app/parts/not-saved.tsx';
import { setAside } from '#app/state/journals.ts';
import { refilled, shop } from '#app/state/shop.ts';
import { retryUnsaved } from '#app/state/unsaved.ts';
import { late } from './late.ts';

function DemoNotice() {
  if (shop.value.phase !== 'open' || !shop.value.demo) return null;
  return (
    <div class="notice notice-demo">
      <p>Demo shop, not your record</p>
      <a href="#/try">What to try</a>
      <a href="#/data">Leave</a>
    </div>
  );
}

function Refilled() {
  const back = refilled.value;
  if (!back) return null;
  const { database, lines, photos = 0 } = back;
  const many = (count: number, what: string) => (count === 1 ? `1 ${what}` : `${count} ${what}s`);
  const missing = [
    ...(database + lines > 0 ? [many(database + lines, 'line')] : []),
    ...(photos > 0 ? [many(photos, 'photo')] : []),
  ].join(' and ');
  const one = database + lines + photos === 1;
  return (
    <div class="notice notice-amber" role="status">
      <p>
        {missing} {one ? 'was' : 'were'} missing from one of the two copies on this phone and{' '}
        {one ? 'has' : 'have'} been put back from the other. Nothing is lost.
      </p>
      <button
        type="button"
        onClick={() => {
          refilled.value = undefined;
        }}
      >
        Seen
      </button>
    </div>
  );
}

function SetAside() {
  if (setAside.value === 0) return null;
  return (
    <div class="notice notice-amber" role="status">
      <p>
        {setAside.value} {setAside.value === 1 ? 'record' : 'records'} could not be read and{' '}
        {setAside.value === 1 ? 'is' : 'are'} set aside, not lost. Save a backup before anything else.
      </p>
      <a href="#/data">Data</a>
    </div>
  );
}

/** What the app has to say that belongs to no screen. */
export function Notices() {
  return (
    <section class="notices" aria-label="Notices">
      <NotSaved onRetry={retryUnsaved} />
      <DemoNotice />
      {late.value && <late.value.TooLate />}
      <Refilled />
      <SetAside />
      {late.value && <late.value.PhoneClockNotice />}
    </section>
  );
}
