import { Lines } from '#app/parts/figure.tsx';
import { Caution, Warning } from '#app/parts/warning.tsx';
import { show } from '#app/state/show.ts';
import type { OvenLimit } from '#shared/record/oven-load.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
import { formatClockTime, formatDuration } from '#shared/units/time.ts';
import type { OvenNow } from './oven-now.ts';
import type { OvenResults } from './oven-results.ts';
import { unreadTime } from './oven-series.ts';
import { overSentence, sinceLit } from './oven-words.ts';
import type { OverLimit } from './over-limits.ts';

export function OverLimits({ over, from }: { over: readonly OverLimit[]; from: number }) {
  return over.map((o) => (
    <Warning
      key={`${o.limit.name} ${o.limit.sees}`}
      kind={o.isNow ? 'stop' : 'amber'}
      title={o.isNow ? `Over what the ${o.limit.name} bears` : `Was over what the ${o.limit.name} bears`}
      announce={o.isNow}
    >
      <p>{overSentence(o, from)}</p>
      {o.byAir && <p>By the air: no part sensor was read.</p>}
      {o.isNow && <p>Turn the oven down now, and read again in 5 minutes.</p>}
    </Warning>
  ));
}

export function Unread({ results, at }: { results: OvenResults; at: OvenNow }) {
  const { unread, series } = results;
  const last = unread.at(-1);
  const more = unread.length - 1;
  return (
    <>
      {at.unreadSince !== undefined && (
        <Warning kind="amber" title={`No reading since ${formatClockTime(at.unreadSince)}`}>
          Nobody knows what it was since then, so it does not count as hold. Read it now.
        </Warning>
      )}
      {last && (
        <Warning kind="amber" title={`${formatDuration(unreadTime(unread))} unread`}>
          No reading of {last.channel.name} from {sinceLit(series.from, last.from)} to{' '}
          {sinceLit(series.from, last.to)}
          {more > 0 ? `, and ${more} more ${more === 1 ? 'stretch' : 'stretches'} like it` : ''}. Counted
          neither as hold nor as cure time.
        </Warning>
      )}
    </>
  );
}

/** Heat makes film brittle by the minute, so that none is worth a line too. */
const overFor = ({ over }: OvenResults, limit: OvenLimit): string =>
  formatDuration(over.find((o) => o.limit.name === limit.name)?.lasts ?? 0);

export function Details({ state, results, at }: { state: OvenState; results: OvenResults; at: OvenNow }) {
  const { holdLow, holdHigh } = state.header.schedule;
  const { series, highestPart, highestAir, aboveHead, hold } = results;
  const peak = (r: OvenResults['highestAir']) =>
    r ? `${show(r.temperature, 'temperature')} at ${sinceLit(series.from, r.time)}` : '–';
  const by = series.by === 'part' ? 'coldest part' : 'air';
  return (
    <details class="more">
      <summary>Highest read, hold and limits</summary>
      <Lines
        rows={[
          ['Highest read on a part', peak(highestPart)],
          ['Highest read of the air', peak(highestAir)],
          [
            `${show(holdLow, 'temperature')} or more, ${by}`,
            `${formatDuration(at.held)} of ${formatDuration(hold.lasts)}`,
          ],
          ...(holdHigh === undefined
            ? []
            : [[`Over ${show(holdHigh, 'temperature')}, hottest`, formatDuration(aboveHead)]]),
          ...state.header.limits.flatMap((l) => [
            [`Limit of the ${l.name}, felt by the ${l.sees}`, show(l.highest, 'temperature')],
            ...(l.name === 'release film' ? [['Time over that of the film', overFor(results, l)]] : []),
          ]),
        ]}
      />
    </details>
  );
}

/** Said once something was read: before that a part sensor may still come. */
export function ByAir({ results: { series, lag } }: { results: OvenResults }) {
  if (series.by !== 'air' || series.judged.length === 0) return null;
  return <Caution>{byAirSays(lag)}</Caution>;
}

function byAirSays(lag: OvenResults['lag']): string {
  return lag
    ? `No part sensor was read: the hold counts from ${formatDuration(3 * lag.timeConstant)} after the air, which is three time constants of this mandrel.`
    : 'No part sensor was read, and the mandrel is not on the shelf with its wall: the hold is judged by the air, and the part follows it by 5 to 40 minutes. Hold that much longer.';
}
