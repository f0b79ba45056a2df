import { useSeen } from '#app/parts/not-saved.tsx';
import { now, zoneAt } from '#app/state/now.ts';
import { formatAgo, formatClockTime, formatDay } from '#shared/units/time.ts';
import { clockChange, clockSeen } from './phone-clock.ts';

function words(): string | undefined {
  const change = clockChange.value;
  if (!change) return undefined;
  const at = (ms: number) => `${formatClockTime(ms)}, ${formatDay(ms, zoneAt(ms), now.value)}`;
  if (change.way === 'on') {
    const by = formatAgo(change.by / 1000).replace(' ago', '');
    return `This phone’s clock jumped ${by} on while you looked: clocks that ran may say that they are over. If it is wrong, set it right, and they are right again.`;
  }
  return `This phone’s clock was set back: it reads ${at(now.value)}, and the last line was written at ${at(change.from)}. Do not trust clocks that ran then. If it is wrong now, set it right. Nothing is lost, and a later line goes on counting as the later one.`;
}

/** Everything here goes by the phone's clock: when that changes, it is said. */
export function PhoneClockNotice() {
  const says = words();
  const seen = useSeen(clockChange.value);
  if (!says) return null;
  return (
    <div class="notice notice-amber" role="alert" ref={seen}>
      <p>{says}</p>
      <button type="button" onClick={clockSeen}>
        Seen
      </button>
    </div>
  );
}
