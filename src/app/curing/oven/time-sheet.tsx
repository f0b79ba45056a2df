import { useSignal } from '@preact/signals';
import { Action, Secondary } from '#app/parts/action.tsx';
import { TextField } from '#app/parts/field.tsx';
import { Sheet } from '#app/parts/sheet.tsx';
import { formatClockTime } from '#shared/units/time.ts';
import type { Logging } from './logging.ts';
import { minutesAgo, readTimeOfDay } from './reading-time.ts';

/** When was it read? */
export function TimeSheet({ logging, onClose }: { logging: Logging; onClose: () => void }) {
  const text = useSignal('');
  const problem = useSignal<string | undefined>(undefined);
  const choose = (at: number | undefined) => {
    logging.at.value = at;
    onClose();
  };
  const typed = readTimeOfDay(text.value, Date.now());
  const press = () => {
    const now = Date.now();
    const read = readTimeOfDay(text.value, now);
    if (!read.ok) problem.value = read.says;
    else if (read.at > now) {
      problem.value = `${formatClockTime(read.at)} is still to come, it is ${formatClockTime(now)} now: write when it was read.`;
    } else choose(read.at);
  };
  return (
    <Sheet
      title="When was it read?"
      onClose={onClose}
      actions={
        <Action onPress={press} not={text.value.trim() === '' ? 'Choose, or write the time' : undefined}>
          {typed.ok ? `Read at ${formatClockTime(typed.at)}` : 'Read at this time'}
        </Action>
      }
    >
      <div class="chips-row time-chips">
        <button type="button" onClick={() => choose(undefined)}>
          now
        </button>
        {minutesAgo.map((minutes) => (
          <button key={minutes} type="button" onClick={() => choose(Date.now() - minutes * 60_000)}>
            {minutes} min ago
          </button>
        ))}
      </div>
      <TextField label="Time of day" text={text} hint="10:40, or 10:40 PM" problem={problem.value} />
      <Secondary onPress={onClose}>Leave it as it is</Secondary>
    </Sheet>
  );
}
