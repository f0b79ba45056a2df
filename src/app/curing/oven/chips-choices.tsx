import type { OvenState } from '#shared/record/oven-state.ts';
import { formatClockTime } from '#shared/units/time.ts';
import type { Logging } from './logging.ts';

/** Which sensor is read, and when. */
export function ChipsChoices({
  load,
  logging,
  onTime,
}: {
  load: OvenState;
  logging: Logging;
  onTime: () => void;
}) {
  const { channel, at } = logging;
  const { channels } = load.header;
  return (
    <div class="chips-row chips-choices">
      {channels.length > 1 &&
        channels.map((c) => (
          <button
            key={c.id}
            type="button"
            aria-pressed={c.id === channel.value}
            onClick={() => {
              channel.value = c.id;
            }}
          >
            {c.name.replace(/ no\. (?=\d+$)/, ' no.\u00a0')}
          </button>
        ))}
      <button type="button" onClick={onTime}>
        Time: {at.value === undefined ? 'now' : formatClockTime(at.value)}
      </button>
    </div>
  );
}
