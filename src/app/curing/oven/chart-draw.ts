import uPlot from 'uplot';
import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import type { Reading } from '#calc';
import type { OvenLimit } from '#shared/record/oven-load.ts';
import { inUnits } from '#shared/units/format.ts';
import { formatClockTime } from '#shared/units/time.ts';
import { inView } from './in-view.ts';
import type { Logged } from './merged.ts';
import type { Window } from './window.ts';

export interface ChartLine {
  name: string;
  trace: Logged;
  sees: 'air' | 'part' | 'element';
  /** Which of the shapes and dashes it has. */
  style: number;
}

export interface ChartContent {
  lines: readonly ChartLine[];
  /** Corners of the schedule, s from `lit` */
  schedule: readonly Reading[];
  /** Readings by hand beside a logger's, s from `lit` */
  byHand: readonly Reading[];
  limits: readonly OvenLimit[];
  lit: number;
  zone: number;
  /** A stretch longer than this without a reading is not drawn across, ms */
  longest: number;
}

/** Told apart without color: a dash and a shape each. */
export const dashes: readonly number[][] = [[], [10, 4], [3, 3], [12, 3, 3, 3]];
export const shapes = ['circle', 'square', 'triangle', 'diamond'] as const;
/** px between two shapes on a line */
const apart = 70;

const degrees = (kelvin: number) =>
  inUnits(kelvin, { quantity: 'temperature', system: settings.value.units }).value;

function colors() {
  const style = getComputedStyle(document.documentElement);
  const of = (name: string) => style.getPropertyValue(name).trim();
  return {
    ink: of('--ink'),
    quiet: of('--ink-2'),
    grid: of('--hairline'),
    part: of('--blue'),
    stop: of('--amber-deep'),
    paper: of('--paper'),
  };
}

/** The path of a mark about a place. */
export function mark(
  context: CanvasRenderingContext2D,
  shape: (typeof shapes)[number],
  x: number,
  y: number,
  r: number,
) {
  context.beginPath();
  if (shape === 'circle') context.arc(x, y, r, 0, 2 * Math.PI);
  else if (shape === 'square') context.rect(x - r, y - r, 2 * r, 2 * r);
  else if (shape === 'triangle') {
    context.moveTo(x, y - r * 1.2);
    context.lineTo(x + r * 1.1, y + r);
    context.lineTo(x - r * 1.1, y + r);
  } else {
    context.moveTo(x, y - r * 1.3);
    context.lineTo(x + r * 1.3, y);
    context.lineTo(x, y + r * 1.3);
    context.lineTo(x - r * 1.3, y);
  }
  context.closePath();
}

/** All lines on one axis of time, in s and in the builder's degrees. */
export function seen(
  { lines, schedule, byHand, lit, longest }: ChartContent,
  view: Window,
  px: number,
): uPlot.AlignedData {
  const tables = lines.map(({ trace }): uPlot.AlignedData => {
    const { at, temperature } = inView(trace, { ...view, px, longest });
    return [at.map((ms) => ms / 1000), temperature.map((k) => (k === null ? null : degrees(k)))];
  });
  const points = (readings: readonly Reading[]): uPlot.AlignedData => [
    readings.map((r) => lit / 1000 + r.time),
    readings.map((r) => degrees(r.temperature)),
  ];
  return uPlot.join([points(schedule), points(byHand), ...tables]);
}

/** What was read by hand beside a logger: a cross. */
function drawCrosses(u: uPlot, ink: string): void {
  const { ctx } = u;
  const r = 5 * devicePixelRatio;
  ctx.strokeStyle = ink;
  ctx.lineWidth = 2 * devicePixelRatio;
  ctx.beginPath();
  u.data[2]?.forEach((value, i) => {
    if (value === null || value === undefined) return;
    const [x, y] = [u.valToPos(u.data[0][i] ?? 0, 'x', true), u.valToPos(value, 'y', true)];
    ctx.moveTo(x - r, y - r);
    ctx.lineTo(x + r, y + r);
    ctx.moveTo(x + r, y - r);
    ctx.lineTo(x - r, y + r);
  });
  ctx.stroke();
}

function drawMarks(u: uPlot, lines: readonly ChartLine[]): void {
  const { ctx } = u;
  const ratio = devicePixelRatio;
  ctx.save();
  ctx.beginPath();
  ctx.rect(u.bbox.left, u.bbox.top, u.bbox.width, u.bbox.height);
  ctx.clip();
  ctx.setLineDash([]);
  const { ink, part, paper } = colors();
  drawCrosses(u, ink);
  lines.forEach(({ style, sees }, i) => {
    const [times, values] = [u.data[0], u.data[i + 3] ?? []];
    const perPx = u.posToVal(1, 'x') - u.posToVal(0, 'x');
    let next = u.posToVal((apart * (i + 1)) / (lines.length + 1), 'x');
    ctx.fillStyle = sees === 'part' ? part : paper;
    ctx.strokeStyle = sees === 'part' ? part : ink;
    ctx.lineWidth = 1.5 * ratio;
    for (let k = 0; k < times.length; k++) {
      const value = values[k];
      const time = times[k] ?? 0;
      if (time < next || value === undefined || value === null) continue;
      next = time + apart * perPx;
      const x = u.valToPos(time, 'x', true);
      mark(ctx, shapes[style % shapes.length] ?? 'circle', x, u.valToPos(value, 'y', true), 4.5 * ratio);
      ctx.fill();
      ctx.stroke();
    }
  });
  ctx.restore();
}

/** A line with its name and its hatch above it. */
function drawLimits(u: uPlot, limits: readonly OvenLimit[]): void {
  const { ctx, bbox } = u;
  const ratio = devicePixelRatio;
  const { stop } = colors();
  ctx.save();
  ctx.setLineDash([]);
  ctx.strokeStyle = stop;
  ctx.fillStyle = stop;
  ctx.lineWidth = 2 * ratio;
  ctx.textBaseline = 'alphabetic';
  ctx.font = `600 ${14 * ratio}px "Atkinson Hyperlegible Next", sans-serif`;
  limits.forEach((limit, i) => {
    const y = u.valToPos(degrees(limit.highest), 'y', true);
    if (y < bbox.top || y > bbox.top + bbox.height) return;
    ctx.beginPath();
    ctx.moveTo(bbox.left, y);
    ctx.lineTo(bbox.left + bbox.width, y);
    for (let x = bbox.left; x < bbox.left + bbox.width; x += 10 * ratio) {
      ctx.moveTo(x, y);
      ctx.lineTo(x + 7 * ratio, y - 7 * ratio);
    }
    ctx.stroke();
    ctx.textAlign = i % 2 === 0 ? 'right' : 'left';
    const says = `${limit.name} ${show(limit.highest, 'temperature', 0)}`;
    ctx.fillText(
      says,
      i % 2 === 0 ? bbox.left + bbox.width - 4 * ratio : bbox.left + 4 * ratio,
      y - 10 * ratio,
    );
  });
  ctx.restore();
}

/** What of the limits is worth room above everything that is drawn, K */
const nearEnough = 30;

function rangeOf({ lines, schedule, limits }: ChartContent): [number, number] {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  const take = (k: number) => {
    if (k < low) low = k;
    if (k > high) high = k;
  };
  for (const { trace } of lines) trace.temperature.forEach(take);
  for (const r of schedule) take(r.temperature);
  const near = limits.filter((l) => l.highest < high + nearEnough);
  for (const l of near) take(l.highest + 6);
  return [degrees(low) - 4, degrees(high) + 4];
}

/** The options of the chart: its axes, lines and what is drawn over them. */
export function chartOptions(content: ChartContent, size: { width: number; height: number }): uPlot.Options {
  const { ink, quiet, grid, part } = colors();
  const range = rangeOf(content);
  const font = '15px "Atkinson Hyperlegible Next", sans-serif';
  const axis = { stroke: ink, font, grid: { stroke: grid, width: 1 }, ticks: { stroke: grid } };
  const line = ({ name, sees, style }: ChartLine): uPlot.Series => ({
    label: name,
    stroke: sees === 'part' ? part : ink,
    width: sees === 'part' ? 2.5 : 1.5,
    dash: dashes[style % dashes.length] ?? [],
    points: { show: false },
  });
  return {
    ...size,
    legend: { show: false },
    cursor: { show: false },
    scales: { x: { time: false, auto: false }, y: { range: () => range } },
    axes: [
      {
        ...axis,
        space: 90,
        incrs: [1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 14_400, 28_800, 86_400],
        values: (_u, splits) => splits.map((s) => clockOf(s, content.zone, splits)),
      },
      { ...axis, size: 46, values: (_u, splits) => splits.map((v) => `${v}°`) },
    ],
    series: [
      {},
      { label: 'Schedule', stroke: quiet, width: 2, dash: [2, 6], points: { show: false } },
      { label: 'Read by hand', paths: () => null, points: { show: false } },
      ...content.lines.map(line),
    ],
    hooks: { draw: [(u) => drawLimits(u, content.limits), (u) => drawMarks(u, content.lines)] },
  };
}

/** With seconds only where marks stand closer than a minute. */
function clockOf(seconds: number, zone: number, splits: readonly number[]): string {
  const text = formatClockTime(seconds * 1000, zone);
  const step = (splits[1] ?? 0) - (splits[0] ?? 0);
  if (step >= 60 || step <= 0) return text;
  const second = String(Math.round(seconds) % 60).padStart(2, '0');
  return text.replace(/(\d+:\d+)/, `$1:${second}`);
}
