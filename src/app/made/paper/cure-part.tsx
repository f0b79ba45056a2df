import { CureChart } from '#app/curing/oven/cure-chart.tsx';
import { overSentence, sinceLit } from '#app/curing/oven/oven-words.ts';
import { Lines } from '#app/parts/figure.tsx';
import { show } from '#app/state/show.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
import { formatDuration } from '#shared/units/time.ts';
import { paperDay } from './day.ts';
import { scheduleRows } from './facts-of.ts';
import type { LoadOnPaper } from './loads.ts';

function peak(results: LoadOnPaper['results'], of: 'highestPart' | 'highestAir'): string {
  const highest = results[of];
  return highest
    ? `${show(highest.temperature, 'temperature')} at ${sinceLit(results.series.from, highest.time)}`
    : 'not read';
}

function facts({ header }: OvenState, results: LoadOnPaper['results']): string[][] {
  const { held, unread, steepest, cure, hold } = results;
  return [
    ['Highest read on a part', peak(results, 'highestPart')],
    ['Highest read of the air', peak(results, 'highestAir')],
    ['Steepest between readings', show(steepest, 'rampRate', 1)],
    ['Held in its band', `${formatDuration(held)} of ${formatDuration(hold.lasts)}`],
    [
      'Cure time used, by the data sheet',
      cure.known ? `${Math.floor(100 * cure.share + 1e-9)} %` : 'not known',
    ],
    ...(unread.length > 0 ? [['Stretches not read', String(unread.length)]] : []),
    ...header.limits.map((l) => [
      `${l.name} bears, felt by the ${l.sees}`,
      show(l.highest, 'temperature', 0),
    ]),
  ];
}

/** One firing of the oven: schedule, what was read, what it came to. */
export function CurePart({ load }: { load: LoadOnPaper }) {
  const { state, results } = load;
  const { header } = state;
  const until = ((state.outAt ?? state.lastAt) - results.series.from) / 1000;
  return (
    <section class="paper-part">
      <h2>
        Oven load {header.number}, {paperDay(header.startedAt, header.zone)}
      </h2>
      <CureChart header={header} series={results.series} until={until} />
      <Lines rows={scheduleRows(header.schedule)} />
      <Lines rows={facts(state, results)} />
      {results.over.map((o) => (
        <p key={`${o.limit.name} ${o.limit.sees}`}>
          <strong>Over what the {o.limit.name} bears.</strong> {overSentence(o, results.series.from)}
        </p>
      ))}
    </section>
  );
}
