import type { ComponentChildren } from 'preact';
import './figure.css';

interface BigProps {
  figure: string;
  unit: string;
  label?: ComponentChildren;
  /** Across the shop rather than at arm's length. */
  huge?: boolean;
}

/** A long figure is read in threes. The gap is only drawn: what is copied or read out stays one number. */
function InThrees({ figure }: { figure: string }) {
  if (!/^−?\d{6,}$/.test(figure)) return <>{figure}</>;
  return figure.split(/(?=(?:\d{3})+$)/).map((part, i) => (
    <span key={i} class="figure-three">
      {part}
    </span>
  ));
}

/** The number that matters on this screen. */
export function BigFigure({ figure, unit, label, huge }: BigProps) {
  return (
    <p class={huge ? 'big-figure big-figure-huge' : 'big-figure'}>
      {label && <span class="big-figure-label">{label}</span>}
      <span class="big-figure-number">
        <InThrees figure={figure} />
      </span>{' '}
      <span class="big-figure-unit">{unit}</span>
    </p>
  );
}

/** Numbers side by side, each with what it is under it. */
export function Figures({ items }: { items: readonly { value: string; label: ComponentChildren }[] }) {
  return (
    <dl class="figures">
      {items.map((item, i) => (
        <div key={i}>
          <dd>{item.value}</dd>
          <dt>{item.label}</dt>
        </div>
      ))}
    </dl>
  );
}

/** A line of a table: what, and one or two values to its right. */
export function Lines({ head, rows }: { head?: readonly string[]; rows: readonly (readonly string[])[] }) {
  return (
    <table class="lines">
      {head && (
        <thead>
          <tr>
            {head.map((h, i) =>
              i === 0 && h === '' ? (
                <td key={i} />
              ) : (
                <th key={i} scope="col">
                  {h}
                </th>
              ),
            )}
          </tr>
        </thead>
      )}
      <tbody>
        {rows.map(([label, ...values], row) => (
          <tr key={`${row} ${label}`}>
            <th scope="row">{label}</th>
            {values.map((v, i) => (
              <td key={i}>{v}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
