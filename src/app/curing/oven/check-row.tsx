import type { ComponentChildren } from 'preact';
import './check-row.css';

interface Props {
  checked: boolean;
  onChange: () => void;
  children: ComponentChildren;
  about?: ComponentChildren;
  /** Why it cannot be chosen now. */
  not?: string | undefined;
}

/** A line to tick, as high as a glove needs. */
export function CheckRow({ checked, onChange, children, about, not }: Props) {
  return (
    <li>
      <button
        type="button"
        class="check-row"
        role="checkbox"
        aria-checked={checked}
        aria-disabled={not !== undefined}
        onClick={() => not === undefined && onChange()}
      >
        <svg class="check-box" width="34" height="34" viewBox="0 0 34 34" aria-hidden="true">
          <rect class="check-square" x="1.5" y="1.5" width="31" height="31" />
          {checked && <path class="check-mark" d="M9 17.5 15 23.5 26 11" />}
        </svg>
        <span class="check-text">
          <span class="check-title">{children}</span>
          {(not ?? about) && <span class="check-about">{not ?? about}</span>}
        </span>
      </button>
    </li>
  );
}
