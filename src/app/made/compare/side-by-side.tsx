import type { Made } from '#app/made/learned/made-facts.ts';
import { now, zoneAt } from '#app/state/now.ts';
import type { BuildSummary } from '#shared/record/summary.ts';
import { formatDay } from '#shared/units/time.ts';
import { linesOf, useColumnsInView } from './in-view.ts';
import type { Cell, FactRow, Sameness } from './rows.ts';

/** The column of a build; the facts stand in the first one. */
const columnOf = (build: number) => build + 2;

function Head({ build, column }: { build: BuildSummary; column: number }) {
  return (
    <th scope="col" aria-colindex={column}>
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

/** Keeps the room of columns out of sight, so that the table's width never moves under a thumb. */
const Room = ({ of }: { of: number }) =>
  of > 0 ? <td class="compare-room" colSpan={of} aria-hidden="true" /> : null;

const tallest = (cells: readonly Cell[]) =>
  cells.reduce((most, { text, mark }) => Math.max(most, linesOf(mark ? `▲ ${text}` : text)), 1);

/** Facts down the side, builds across: the names of the facts stay while the builds slide by under the thumb. */
export function DifferTable({ made, rows }: { made: readonly Made[]; rows: readonly FactRow[] }) {
  const { slide, columns } = useColumnsInView(made.length);
  const { from, to } = columns;
  const after = made.length - to;
  return (
    <section ref={slide} class="compare-slide" aria-label="What differs">
      <table class="compare" style={{ '--builds': made.length }} aria-colcount={made.length + 1}>
        <colgroup>
          <col class="compare-facts" />
          <col span={made.length} />
        </colgroup>
        <thead>
          <tr>
            <th scope="col" aria-colindex={1}>
              Differs
            </th>
            <Room key="before" of={from} />
            {made.slice(from, to).map(({ build }, i) => (
              <Head key={build.subject} build={build} column={columnOf(from + i)} />
            ))}
            <Room key="after" of={after} />
          </tr>
        </thead>
        <tbody>
          {rows.map(({ fact, cells }) => (
            <tr key={fact.key} style={{ '--lines': tallest(cells) }}>
              <th scope="row" aria-colindex={1}>
                {fact.label}
              </th>
              <Room key="before" of={from} />
              {cells.slice(from, to).map((cell, i) => (
                <td key={from + i} class={cellClass(cell)} aria-colindex={columnOf(from + i)}>
                  {cell.text}
                </td>
              ))}
              <Room key="after" of={after} />
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
