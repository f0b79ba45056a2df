import type { ComponentChildren } from 'preact';
import './rows.css';

/** Lines that lead somewhere, separated by hairlines. */
export function Rows({ children, label }: { children: ComponentChildren; label?: string }) {
  return (
    <ul class="rows" aria-label={label}>
      {children}
    </ul>
  );
}

interface RowProps {
  to: string;
  title: ComponentChildren;
  /** Second line, small. */
  about?: ComponentChildren;
  /** At the right: the number of this line. */
  value?: ComponentChildren;
}

export function Row({ to, title, about, value }: RowProps) {
  return (
    <li>
      <a class="row" href={`#${to}`}>
        <span class="row-text">
          <span class="row-title">{title}</span>
          {about && <span class="row-about">{about}</span>}
        </span>
        {value && <span class="row-value">{value}</span>}
      </a>
    </li>
  );
}

/** Said where there is nothing yet, with what to do next. */
export function Empty({ children }: { children: ComponentChildren }) {
  return <p class="rows-empty">{children}</p>;
}
