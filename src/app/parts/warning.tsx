import type { ComponentChildren } from 'preact';
import './warning.css';

interface Props {
  /** amber: look here; stop: this hurts someone or costs the tube. */
  kind: 'amber' | 'stop';
  /** What. */
  title: string;
  /** Why, and what to do now. */
  children?: ComponentChildren;
  /** Read out when it appears. */
  announce?: boolean;
}

/** A warning has a shape and a word of its own besides its color. */
export function Warning({ kind, title, children, announce }: Props) {
  return (
    <div class={`warning warning-${kind}`} role={announce ? 'alert' : undefined}>
      <svg class="warning-sign" width="26" height="26" viewBox="0 0 26 26" aria-hidden="true">
        {kind === 'stop' ? <path d="M8 1h10l7 7v10l-7 7H8l-7-7V8Z" /> : <path d="M13 2 25 24H1Z" />}
        <text x="13" y="21" text-anchor="middle">
          !
        </text>
      </svg>
      <div>
        <strong>{title}</strong>
        {children && <div class="warning-body">{children}</div>}
      </div>
    </div>
  );
}

/** A caution of the trade: said once, where it bites, without nagging. */
export function Caution({ children }: { children: ComponentChildren }) {
  return <p class="caution">{children}</p>;
}
