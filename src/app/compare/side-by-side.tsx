import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Made } from '#app/learned/made-facts.ts';
import { now, zoneAt } from '#app/state/now.ts';
import type { BuildSummary } from '#shared/record/summary.ts';
import { formatDay } from '#shared/units/time.ts';
import type { Cell, FactRow, Sameness } from './rows.ts';

/** As many as a phone shows at once come first, the others while they are looked at. */
const firstColumns = 4;
const columnsAtATime = 8;

export function useColumns(count: number): number {
  const drawn = useSignal(firstColumns);
  const going = drawn.value < count;
  useEffect(() => {
    if (!going) return;
    const next = setTimeout(() => {
      drawn.value += columnsAtATime;
    });
    return () => clearTimeout(next);
  }, [drawn.value, going]);
  return Math.min(drawn.value, count);
}

function Head({ build }: { build: BuildSummary }) {
  return (
    <th scope="col">
      <a href={`#/record/build/${build.subject}`}>
        {build.name} no. {build.number}
      </a>
      <span class="compare-day">{formatDay(build.startedAt, zoneAt(build.startedAt), now.peek())}</span>
    </th>
  );
}

/** A figure and its sign stay on one line. */
const short = 9;

const cellClass = ({ mark, text }: Cell) =>
  `${mark ? `compare-marked compare-${mark}` : ''} ${text.length <= short ? 'compare-short' : ''}`.trim();

interface TableProps {
  made: readonly Made[];
  rows: readonly FactRow[];
  /** So many of them are drawn so far. */
  columns: number;
}

/** Facts down the side, builds across: the names of the facts stay while the builds slide by under the thumb. */
export function DifferTable({ made, rows, columns }: TableProps) {
  return (
    <section class="compare-slide" aria-label="What differs">
      <table class="compare" style={{ '--builds': made.length }}>
        <thead>
          <tr>
            <th scope="col">Differs</th>
            {made.slice(0, columns).map(({ build }) => (
              <Head key={build.subject} build={build} />
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ fact, cells }) => (
            <tr key={fact.key}>
              <th scope="row">{fact.label}</th>
              {cells.slice(0, columns).map((cell, i) => (
                <td key={i} class={cellClass(cell)}>
                  {cell.text}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** What all have in common, folded away. */
export function SameList({ same, of }: { same: readonly Sameness[]; of: number }) {
  if (same.length === 0) return null;
  return (
    <details class="more">
      <summary>The same in all: {same.length}</summary>
      <table class="lines">
        <tbody>
          {same.map(({ fact, text, said }) => (
            <tr key={fact.key}>
              <th scope="row">{fact.label}</th>
              <td>
                {text}
                {said < of && (
                  <span class="quiet">
                    {' '}
                    ({said} of {of})
                  </span>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
