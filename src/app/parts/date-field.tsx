import type { Signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { FieldFrame } from './field.tsx';

interface Props {
  label: string;
  /** As the browser's own field has it: '2026-05-03', or '2026-05-03T10:14' with the time of day. */
  text: Signal<string>;
  type: 'date' | 'datetime-local';
  hint?: ComponentChildren;
  problem?: string | undefined;
}

/** A day, or a day and a time. */
export function DateField({ label, text, type, hint, problem }: Props) {
  return (
    <FieldFrame label={label} hint={hint} problem={problem}>
      {({ id, describedBy }) => (
        <input
          id={id}
          type={type}
          aria-describedby={describedBy}
          aria-invalid={problem !== undefined}
          value={text.value}
          onInput={(event) => {
            text.value = event.currentTarget.value;
          }}
        />
      )}
    </FieldFrame>
  );
}
