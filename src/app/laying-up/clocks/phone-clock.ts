import { effect, signal } from '@preact/signals';
import { now } from '#app/state/now.ts';
import { theStore } from '#app/state/shop.ts';
import { idTime } from '#storage/ids.ts';

/** What became of the phone's clock while nobody looked at it. */
export type ClockChange = { way: 'back'; from: number } | { way: 'on'; by: number };

export const clockChange = signal<ClockChange | undefined>(undefined);

/** A phone puts its clock right by seconds all the time, ms. */
const tolerated = 120_000;
/** Between two ticks of a page in sight; longer, and the phone has slept, ms. */
const awake = 5000;
const seenKey = 'clockSeen';

/** Ids never go back on this phone: one made now tells the latest time at which anything was written. */
const lastWritten = () => idTime(theStore().newId());

async function lookBack(): Promise<void> {
  const from = lastWritten();
  if (from - Date.now() < tolerated) return;
  const seen = await theStore().phoneValue(seenKey);
  // Said once for one time in the future, or a year set by mistake would be told of for a year.
  if (typeof seen === 'number' && from - seen < tolerated) return;
  clockChange.value = { way: 'back', from };
}

/** Notices a clock that was set back since the last line, and one that is changed while the page is in sight. */
export function watchPhoneClock(): void {
  let last = { wall: Date.now(), running: performance.now(), inSight: false };
  void lookBack();
  effect(() => {
    const next = {
      wall: now.value,
      running: performance.now(),
      inSight: document.visibilityState === 'visible',
    };
    const went = next.running - last.running;
    const jump = next.wall - last.wall - went;
    if (last.inSight && next.inSight && went < awake && jump > tolerated) {
      clockChange.value = { way: 'on', by: jump };
    }
    if (jump < -tolerated) void lookBack();
    last = next;
  });
}

export function clockSeen(): void {
  const change = clockChange.value;
  clockChange.value = undefined;
  if (change?.way === 'back')
    void theStore()
      .setPhoneValue(seenKey, lastWritten())
      .catch(() => {});
}
