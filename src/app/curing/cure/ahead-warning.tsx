import { brokenBy } from '#app/curing/oven/oven-limits.ts';
import { marginsOf } from '#app/curing/oven/over-limits.ts';
import { scheduleAhead } from '#app/curing/oven/schedule-ahead.ts';
import { Warning } from '#app/parts/warning.tsx';
import { show } from '#app/state/show.ts';
import type { OvenLoadHeader } from '#shared/record/oven-load.ts';
import type { ResinSystem } from '#shared/record/resin-system.ts';
import { formatClockTime, formatDuration } from '#shared/units/time.ts';
import { FitExplained } from './limit-warnings.tsx';
import { fitWords, nothingFits } from './limit-words.ts';
import { whatFits } from './what-fits.ts';

interface Props {
  header: OvenLoadHeader;
  resins: readonly ResinSystem[];
  /** When it was lit, and now, ms */
  lit: number;
  now: number;
}

/** While the oven burns: what the schedule still ahead would break, and how to go on instead. */
export function AheadWarning({ header, resins, lit, now }: Props) {
  const { channels, unevenness, limits, schedule } = header;
  const ahead = scheduleAhead(schedule, Math.max(0, (now - lit) / 1000));
  const broken = brokenBy(ahead, limits, marginsOf(channels, unevenness));
  const [first] = broken;
  if (!first) return null;
  const fit = whatFits(ahead, broken, resins);
  const begins = first.from < 60 ? 'from now on' : `from ${formatClockTime(now + first.from * 1000)} on`;
  return (
    <Warning kind="amber" title={`The schedule goes over what the ${first.limit.name} bears`}>
      <p>
        {show(first.by, 'temperatureDifference')} over {show(first.limit.highest, 'temperature', 0)} for{' '}
        {formatDuration(first.seconds)}, {begins}
        {broken.length > 1 &&
          `; the ${broken
            .slice(1)
            .map((b) => b.limit.name)
            .join(', the ')} too`}
        .
      </p>
      <p>{fit ? `Hold ${fitWords(fit)} instead: the same cure time used.` : nothingFits(broken)}</p>
      {fit && <FitExplained fit={fit} />}
    </Warning>
  );
}
