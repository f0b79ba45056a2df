import type { JSX } from 'preact';
import { HeatPlot, type HeatScale, type PlotLimit } from '#app/parts/heat-plot.tsx';
import { show } from '#app/state/show.ts';
import type { Reading } from '#calc';
import type { OvenLoadHeader } from '#shared/record/oven-load.ts';
import { formatDuration } from '#shared/units/time.ts';
import { corners } from './oven-schedule.ts';
import type { OvenSeries, Series } from './oven-series.ts';
import { thinned } from './thinned.ts';
import './cure-chart.css';

interface Props {
  header: OvenLoadHeader;
  series: OvenSeries;
  /** Now, or when it came out, s from lighting it */
  until: number;
}

/** Limits this far above everything drawn would flatten the picture: they are told below it, K */
const nearEnough = 30;
/** More dots than this lie on each other. */
const mostDots = 48;

type Mark = (x: number, y: number) => JSX.Element;

// Each sensor has a shape of its own, so that no color is needed to tell them apart.
const marks: readonly Mark[] = [
  (x, y) => <circle class="cure-mark" cx={x} cy={y} r="4.5" />,
  (x, y) => <rect class="cure-mark" x={x - 4} y={y - 4} width="8" height="8" />,
  (x, y) => <path class="cure-mark" d={`M${x} ${y - 5.5} ${x + 5.5} ${y + 4.5} ${x - 5.5} ${y + 4.5}Z`} />,
  (x, y) => <path class="cure-mark" d={`M${x} ${y - 6} ${x + 6} ${y} ${x} ${y + 6} ${x - 6} ${y}Z`} />,
];
const airMark: Mark = (x, y) => <circle class="cure-mark" cx={x} cy={y} r="4" />;

interface Drawn extends Series {
  mark: Mark;
  kind: 'air' | 'part';
}

function drawnOf({ air, parts, elements }: OvenSeries): Drawn[] {
  const asPart = [...parts, ...elements].map((s, i) => ({
    ...s,
    kind: 'part' as const,
    mark: marks[i % marks.length] ?? airMark,
  }));
  return [...air.map((s) => ({ ...s, kind: 'air' as const, mark: airMark })), ...asPart];
}

function Curve({ drawn, scale }: { drawn: Drawn; scale: HeatScale }) {
  const { readings, mark, kind } = drawn;
  const points = thinned(readings, scale.width).map(
    (r) => [scale.x(r.time), scale.y(r.temperature)] as const,
  );
  return (
    <g class={`cure-${kind}`}>
      <polyline class="cure-path" points={points.map(([x, y]) => `${x},${y}`).join(' ')} />
      {points.length <= mostDots && points.map(([x, y], i) => <g key={i}>{mark(x, y)}</g>)}
    </g>
  );
}

function Key({ drawn }: { drawn: readonly Drawn[] }) {
  return (
    <ul class="cure-key">
      {drawn.map(({ channel, mark, kind, readings }) => (
        <li key={channel.id}>
          <svg class={`cure-${kind}`} width="30" height="14" aria-hidden="true">
            <path class="cure-path" d="M0 7H30" />
            {mark(15, 7)}
          </svg>
          {channel.name}
          {readings.length === 0 && ', not read yet'}
        </li>
      ))}
      <li>
        <svg width="30" height="14" aria-hidden="true">
          <path class="cure-schedule" d="M1 7H30" />
        </svg>
        Schedule
      </li>
    </ul>
  );
}

const extreme = (readings: readonly Reading[], pick: (a: number, b: number) => number, start: number) =>
  readings.reduce((most, r) => pick(most, r.temperature), start);

function Now({ at, scale }: { at: number; scale: HeatScale }) {
  return (
    <>
      <line class="cure-now" x1={scale.x(at)} x2={scale.x(at)} y1="18" y2={scale.foot} />
      <text x={scale.x(at) + 5} y={scale.foot - 6}>
        now
      </text>
    </>
  );
}

/** The cure as it was read, against its schedule and what must not be gone over. */
export function CureChart({ header, series, until }: Props) {
  const schedule = corners(header.schedule);
  const drawn = drawnOf(series);
  const all = [...schedule, ...drawn.flatMap((d) => d.readings)];
  const start = header.schedule.start;
  const reached = extreme(all, Math.max, start + 10);
  const [first, ...others] = [...header.limits].sort((a, b) => a.highest - b.highest);
  const near = [first, ...others.filter((l) => l.highest < reached + nearEnough)].filter(
    (l) => l !== undefined,
  );
  const limits: PlotLimit[] = near.map((l) => ({ name: l.name, at: l.highest }));
  const hottest = limits.reduce((most, l) => Math.max(most, l.at + 8), reached);
  const times = drawn.flatMap((d) => [d.readings[0]?.time ?? 0, d.readings.at(-1)?.time ?? 0]);
  const to = Math.max(schedule.at(-1)?.time ?? 0, until, ...times);
  const last = series.coldest.at(-1);
  const says = last
    ? `Last read ${show(last.temperature, 'temperature')} after ${formatDuration(last.time)}`
    : 'Nothing read yet';
  return (
    <figure class="cure-chart">
      <HeatPlot
        label={`Temperatures read, against the schedule. ${says}.`}
        height={190}
        from={Math.min(0, ...times)}
        to={to}
        coldest={extreme(all, Math.min, start)}
        hottest={hottest}
        limits={limits}
      >
        {(scale) => (
          <>
            <polyline
              class="cure-schedule"
              points={schedule.map((p) => `${scale.x(p.time)},${scale.y(p.temperature)}`).join(' ')}
            />
            {until < to && <Now at={until} scale={scale} />}
            {drawn.map((d) => (
              <Curve key={d.channel.id} drawn={d} scale={scale} />
            ))}
          </>
        )}
      </HeatPlot>
      <Key drawn={drawn} />
    </figure>
  );
}
