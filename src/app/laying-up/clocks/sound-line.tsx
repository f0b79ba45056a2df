import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { meansNow } from './means.ts';
import { urgentLacks } from './reach-words.ts';
import { anyClockRuns } from './running.ts';

/** Taken away under the thumb that unlocks the sound, the line would let that touch land on something else, ms */
const staysFor = 700;

/** An alarm that nobody would hear, or see on a dark screen, says so while a clock runs. */
export function SoundLine({ all = false }: { all?: boolean }) {
  const lacks = anyClockRuns.value ? urgentLacks(meansNow()) : [];
  const said = (all ? lacks : lacks.slice(0, 1)).map(({ what, todo }) => `${what} ${todo}`).join(' ');
  const shown = useSignal(said);
  useEffect(() => {
    const timer = setTimeout(
      () => {
        shown.value = said;
      },
      said ? 0 : staysFor,
    );
    return () => clearTimeout(timer);
  }, [said, shown]);
  return shown.value ? <p class="sound-line">{shown.value}</p> : null;
}
