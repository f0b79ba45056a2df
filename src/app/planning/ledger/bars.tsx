import { ticks } from 'd3-array';
import { useId } from 'preact/hooks';
import { HatchLines } from '#app/parts/hatch.tsx';
import { useWidth } from '#app/parts/use-width.ts';
import { settings } from '#app/state/settings.ts';
import { inUnits } from '#shared/units/format.ts';
import { grams, isOver, madeWords, partTitle } from './ledger-words.ts';
import type { PartSum } from './reckon.ts';
import './ledger.css';

/** px: of a part, of its words, of its bar; room for half a figure at the ends */
const row = 52;
const words = 18;
const bar = 18;
const side = 10;

interface BarProps {
  sum: PartSum;
  top: number;
  width: number;
  x: (kg: number) => number;
  hatch: string;
}

function Bar({ sum, top, width, x, hatch }: BarProps) {
  const { actual, expected = actual, budget } = sum;
  const y = top + words + 4;
  return (
    <g>
      <text x={side} y={top + 14} class="bar-name">
        {partTitle(sum.part)}
      </text>
      <text x={width - side} y={top + 14} text-anchor="end">
        {sum.expected === undefined
          ? 'no weight yet'
          : isOver(sum)
            ? `▲ ${grams(sum.over)} over`
            : grams(expected)}
      </text>
      <rect class="bar-planned" x={x(0)} y={y} width={x(expected) - x(0)} height={bar} />
      <rect fill={`url(#${hatch})`} x={x(0)} y={y} width={x(expected) - x(0)} height={bar} />
      <rect class="bar-actual" x={x(0)} y={y} width={x(actual) - x(0)} height={bar} />
      {budget !== undefined && (
        <path
          class="bar-budget"
          d={`M${x(budget) - 6} ${y - 5}h12l-6 8ZM${x(budget) - 1} ${y}h2v${bar + 3}h-2Z`}
        />
      )}
    </g>
  );
}

/** One bar for each part on one ruled scale: weighed is filled, by plan hatched, the pointer is its budget. */
export function WeightBars({ parts }: { parts: readonly PartSum[] }) {
  const { ref, width: measured } = useWidth<HTMLDivElement>();
  const hatch = `${useId().replace(/[^\w-]/g, '')}-plan`;
  const width = measured.value;
  const most = Math.max(...parts.flatMap((p) => [p.expected ?? p.actual, p.budget ?? 0]), 0);
  if (most <= 0) return null;
  const system = settings.value.units;
  const { unit } = inUnits(most, { quantity: 'mass', system });
  const shown = (kg: number) => inUnits(kg, { quantity: 'mass', system, unit }).value;
  const perUnit = most / shown(most);
  const x = (kg: number) => side + ((width - 2 * side) * kg) / most;
  const marks = ticks(0, shown(most), 5);
  const foot = parts.length * row + 4;
  const says = parts.map(
    (p) =>
      `${partTitle(p.part)}: ${p.expected === undefined ? 'no weight yet' : grams(p.expected)}, ${madeWords(p)}${
        p.budget === undefined ? '' : `, budget ${grams(p.budget)}`
      }`,
  );
  return (
    <div ref={ref}>
      <svg class="bars" width={width} height={foot + 24} role="img" aria-label={says.join('. ')}>
        <HatchLines id={hatch} class="bar-hatch" />
        {marks.map((m) => (
          <line key={m} class="bar-grid" x1={x(m * perUnit)} x2={x(m * perUnit)} y1="0" y2={foot} />
        ))}
        {parts.map((sum, i) => (
          <Bar key={sum.part.id} {...{ sum, width, x, hatch }} top={i * row} />
        ))}
        <line class="bar-base" x1={x(0)} x2={x(most)} y1={foot} y2={foot} />
        {marks.map((m, i) => (
          <g key={m}>
            <line class="bar-base" x1={x(m * perUnit)} x2={x(m * perUnit)} y1={foot - 5} y2={foot} />
            <text
              x={x(m * perUnit)}
              y={foot + 16}
              text-anchor={i === 0 ? 'start' : i === marks.length - 1 ? 'end' : 'middle'}
            >
              {m}
            </text>
          </g>
        ))}
      </svg>
      <p class="bars-key quiet small">
        <span class="key-actual" /> weighed <span class="key-planned" /> by plan{' '}
        <span class="key-budget">▼</span> budget, in {unit}
      </p>
    </div>
  );
}
