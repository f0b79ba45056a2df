import type { Made } from '#app/learned/made-facts.ts';
import { now, zoneAt } from '#app/state/now.ts';
import type { BuildSummary } from '#shared/record/summary.ts';
import { formatDay } from '#shared/units/time.ts';
import type { Cell, FactRow, Sameness } from './rows.ts';

const signs = {
  most: { path: 'M6 1 11.5 11H0.5Z', word: 'highest' },
  least: { path: 'M6 11 11.5 1H0.5Z', word: 'lowest' },
  other: { path: 'M6 0 12 6 6 12 0 6Z', word: 'other than most' },
} as const;

function Sign({ mark }: { mark: NonNullable<Cell['mark']> }) {
  const { path, word } = signs[mark];
  return (
    <>
      <svg
        class={`compare-sign compare-sign-${mark}`}
        width="12"
        height="12"
        viewBox="0 0 12 12"
        aria-hidden="true"
      >
        <path d={path} />
      </svg>
      <span class="visually-hidden">{word}</span>
    </>
  );
}

function Head({ build }: { build: BuildSummary }) {
  return (
    <th scope="col">
      <a href={`#/record/build/${build.subject}`}>
        {build.name} no. {build.number}
      </a>
      <span class="compare-day">{formatDay(build.startedAt, zoneAt(build.startedAt), now.value)}</span>
    </th>
  );
}

/** A figure and its sign stay on one line. */
const short = 12;

const cellClass = ({ mark, text }: Cell) =>
  `${mark ? 'compare-marked' : ''} ${text.length <= short ? 'compare-short' : ''}`.trim();

/** Facts down the side, builds across: the names of the facts stay while the builds slide by under the thumb. */
export function DifferTable({ made, rows }: { made: readonly Made[]; rows: readonly FactRow[] }) {
  return (
    <section class="compare-slide" aria-label="What differs">
      <table class="compare">
        <thead>
          <tr>
            <th scope="col">Differs</th>
            {made.map(({ build }) => (
              <Head key={build.subject} build={build} />
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ fact, cells }) => (
            <tr key={fact.key}>
              <th scope="row">{fact.label}</th>
              {cells.map((cell, i) => (
                <td key={i} class={cellClass(cell)}>
                  {cell.mark && <Sign mark={cell.mark} />}
                  {cell.mark && '\u00a0'}
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
