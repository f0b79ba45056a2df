import type { Signal } from '@preact/signals';
import { endOfDay, formatISO, isValid, parseISO } from 'date-fns';
import { FieldFrame } from '#app/parts/field.tsx';

/** A day as a date field wants it: '2026-05-03'. */
export const toDayText = (at: number | undefined): string =>
  at === undefined ? '' : formatISO(at, { representation: 'date' });

/** Its first moment here; undefined while the field is empty or no day. */
export function fromDayText(text: string): number | undefined {
  const day = parseISO(text.trim());
  return isValid(day) && day.getTime() >= 0 ? day.getTime() : undefined;
}

/** Its last moment: what is good until a day is good all that day. */
export function endOfDayText(text: string): number | undefined {
  const at = fromDayText(text);
  return at === undefined ? undefined : endOfDay(at).getTime();
}

interface Props {
  label: string;
  text: Signal<string>;
  hint?: string;
  problem?: string | undefined;
}

export function DateField({ label, text, hint, problem }: Props) {
  return (
    <FieldFrame label={label} hint={hint} problem={problem}>
      {({ id, describedBy }) => (
        <input
          id={id}
          type="date"
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
