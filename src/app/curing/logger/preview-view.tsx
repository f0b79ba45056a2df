import type { Signal } from '@preact/signals';
import { Figures } from '#app/parts/figure.tsx';
import { now } from '#app/state/now.ts';
import { formatClockTime, formatDay, formatDuration } from '#shared/units/time.ts';
import { notUsed } from './channel-choices.ts';
import { ColumnFields } from './column-fields.tsx';
import { FaultList } from './fault-list.tsx';
import { faultKey } from './faults.ts';
import { type Draft, lookThrough, type Preview, tryAgain } from './logger-draft.ts';
import { PreviewChart } from './preview-chart.tsx';
import type { Subject } from './subject.ts';
import { TimeFields } from './time-fields.tsx';

interface Props {
  draft: Signal<Draft>;
  preview: Preview;
  subject: Subject;
}

/** Why it cannot be taken in yet. */
export function whyNot({ columns, orderOpen, tried }: Preview): string | undefined {
  if (orderOpen) return 'Say first which day its dates mean';
  const used = columns.filter((c) => c.to !== notUsed).map((c) => c.to);
  if (used.length === 0) return 'No column is taken in';
  const known = used.filter((to) => !to.startsWith('new '));
  if (new Set(known).size < known.length) return 'Two columns go to one sensor';
  if (!tried) return 'Reading the file';
  return tried.from === undefined ? 'No reading is left to take in' : undefined;
}

function Rows({ sample, heads }: { sample: readonly (readonly string[])[]; heads: readonly string[] }) {
  return (
    <details class="logger-rows">
      <summary>Its first rows, as they stand</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached without touch */}
      <div class="logger-scroll" role="region" aria-label="First rows of the file" tabIndex={0}>
        <table>
          {heads.length > 0 && (
            <thead>
              <tr>
                {heads.map((head, i) => (
                  <th key={i} scope="col">
                    {head || '–'}
                  </th>
                ))}
              </tr>
            </thead>
          )}
          <tbody>
            {sample.map((row, r) => (
              <tr key={r}>
                {row.map((cell, i) => (
                  <td key={i}>{cell}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}

/** A file as it would be taken in, and everything that can be said otherwise. */
export function PreviewView({ draft, preview, subject }: Props) {
  const { tried, look, file } = preview;
  const { state } = subject;
  const { zone } = state.header;
  const change = (next: Partial<Preview>) => tryAgain(draft, { ...preview, ...next }, subject);
  const { from, until } = tried ?? {};
  return (
    <>
      <Figures
        items={[
          { value: tried ? tried.rows.toLocaleString('en-US') : '…', label: 'rows' },
          { value: tried ? formatDuration(Math.round(tried.step)) : '…', label: 'between rows' },
          {
            value: from !== undefined && until !== undefined ? formatDuration((until - from) / 1000) : '–',
            label: 'taken in',
          },
        ]}
      />
      {from !== undefined && until !== undefined && (
        <p>
          {formatDay(from, zone, now.peek())}, {formatClockTime(from, zone)} to {formatClockTime(until, zone)}
          .
        </p>
      )}
      {preview.like && <p class="quiet">Read like {preview.like}, which has the same heads.</p>}
      <PreviewChart preview={preview} state={state} />
      <TimeFields
        preview={preview}
        subject={subject}
        onChange={change}
        onTimeColumn={(column) => lookThrough(draft, file, subject, column)}
      />
      <ColumnFields preview={preview} state={state} onChange={(columns) => change({ columns })} />
      <FaultList
        preview={preview}
        zone={zone}
        onChoose={(fault, isDone) => change({ choices: { ...preview.choices, [faultKey(fault)]: isDone } })}
      />
      <Rows sample={look.sample} heads={look.dialect.heads} />
    </>
  );
}
