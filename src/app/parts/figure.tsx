import type { ComponentChildren } from 'preact';
import './figure.css';

interface BigProps {
  figure: string;
  unit: string;
  label?: ComponentChildren;
  /** Across the shop rather than at arm's length. */
  huge?: boolean;
}

/** The number that matters on this screen. */
export function BigFigure({ figure, unit, label, huge }: BigProps) {
  return (
    <p class={huge ? 'big-figure big-figure-huge' : 'big-figure'}>
      {label && <span class="big-figure-label">{label}</span>}
      <span class="big-figure-number">{figure}</span> <span class="big-figure-unit">{unit}</span>
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
