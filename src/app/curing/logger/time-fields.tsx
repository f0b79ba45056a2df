import { fromFieldText, toFieldText } from '#app/made/record/when-text.ts';
import { Secondary } from '#app/parts/action.tsx';
import { Choice, FieldFrame, SelectField } from '#app/parts/field.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { now } from '#app/state/now.ts';
import type { LoggerTime } from '#shared/record/logger-file.ts';
import { formatClockTime, formatDay } from '#shared/units/time.ts';
import { readDate, stampOf } from './clock-cells.ts';
import type { Preview } from './logger-draft.ts';
import { litAt, type Subject } from './subject.ts';

export interface TimeProps {
  preview: Preview;
  subject: Subject;
  onChange: (change: Partial<Preview>) => void;
  onTimeColumn: (column: number) => void;
}

const orderWords = { dmy: 'day, month, year', mdy: 'month, day, year', ymd: 'year, month, day' } as const;

const withTime = ({ look }: Preview, time: LoggerTime): Partial<Preview> => ({
  look: { ...look, dialect: { ...look.dialect, time } },
});

/** '3 Apr' or '4 Mar': the same figures both ways. */
function DateOrders({ preview, onChange }: TimeProps) {
  const { look, orderOpen } = preview;
  const { time } = look.dialect;
  const cell = look.sample[0]?.[time.columns[0] ?? 0] ?? '';
  const date = stampOf(cell)?.date ?? cell.trim();
  const choice = (
    <Choice
      label={`Its dates, like ${date}`}
      value={orderOpen ? undefined : time.order}
      options={look.orders.map((order) => ({
        value: order,
        label: `${formatDay(readDate(date, order), 0, now.peek())}: ${orderWords[order]}`,
      }))}
      onChange={(order) => onChange({ ...withTime(preview, { ...time, order }), orderOpen: false })}
    />
  );
  if (!orderOpen) return choice;
  return (
    <>
      <Warning kind="amber" title={`${date} can be two days`} announce>
        Nothing in the file says which figure is the month. Say which day it was.
      </Warning>
      {choice}
    </>
  );
}

/** What the figures in the time column mean, where that is not plain. */
function TimeForm({ preview, onChange }: TimeProps) {
  const { time } = preview.look.dialect;
  const change = (next: Partial<LoggerTime>) => onChange(withTime(preview, { ...time, ...next }));
  if (time.form === 'number') {
    return (
      <SelectField
        label="It counts in"
        value={time.unit ?? 's'}
        options={[
          { value: 's', label: 'seconds' },
          { value: 'min', label: 'minutes' },
          { value: 'h', label: 'hours' },
          { value: 'day', label: 'days' },
          { value: 'ms', label: 'milliseconds' },
        ]}
        onChange={(unit) => change({ unit })}
      />
    );
  }
  if (time.form !== 'timeOfDay' && time.form !== 'elapsed') return null;
  const value = time.form === 'timeOfDay' ? 'timeOfDay' : time.unit === 'min' ? 'min' : 'h';
  return (
    <SelectField
      label="Its times are"
      value={value}
      options={[
        { value: 'timeOfDay', label: 'the time of day' },
        { value: 'h', label: 'hours and minutes since it began' },
        { value: 'min', label: 'minutes and seconds since it began' },
      ]}
      onChange={(to) => change(to === 'timeOfDay' ? { form: 'timeOfDay' } : { form: 'elapsed', unit: to })}
    />
  );
}

/** So far from the oven load it cannot be its own, ms */
const far = 12 * 3_600_000;

/** Moves the whole file in time: by where its count began, or by how wrong its clock was. */
function movedTo(preview: Preview, first: number, to: number): Partial<Preview> {
  const { clocked, look } = preview;
  const { form } = look.dialect.time;
  const isCount = form === 'elapsed' || form === 'number';
  return {
    clocked: isCount
      ? { ...clocked, startsAt: clocked.startsAt + to - first }
      : { ...clocked, shift: clocked.shift + (to - first) / 1000 },
  };
}

function FirstReading({ preview, subject, onChange }: TimeProps) {
  const { tried, clocked } = preview;
  const { zone } = subject.state.header;
  const first = tried?.first;
  if (first === undefined) return null;
  const lit = litAt(subject.state);
  const isFar =
    first > lit + far || (tried?.until ?? first) < lit - far || (tried?.from ?? first) > lit + far;
  return (
    <>
      {isFar && (
        <Warning kind="amber" title="Not the day of this oven load" announce>
          Its first reading is of {formatDay(first, zone, now.peek())}, {formatClockTime(first, zone)}; the
          oven was lit {formatDay(lit, zone, now.peek())}, {formatClockTime(lit, zone)}. Choose another file,
          or say below when it began.
        </Warning>
      )}
      <FieldFrame
        label="Its first reading was at"
        hint={
          clocked.shift === 0
            ? 'Change it when the logger’s clock was wrong.'
            : 'Moved from what the file says.'
        }
      >
        {({ id, describedBy }) => (
          <input
            id={id}
            aria-describedby={describedBy}
            type="datetime-local"
            value={toFieldText(first, zone)}
            onChange={(event) => {
              const to = fromFieldText(event.currentTarget.value.slice(0, 16), zone);
              const minute = Math.floor(first / 60_000) * 60_000;
              if (to !== undefined && to !== minute) onChange(movedTo(preview, minute, to));
            }}
          />
        )}
      </FieldFrame>
      {Math.abs(first - lit) > 60_000 && (
        <Secondary onPress={() => onChange(movedTo(preview, first, lit))}>
          It began when the oven was lit, {formatClockTime(lit, zone)}
        </Secondary>
      )}
    </>
  );
}

/** When were its readings? */
export function TimeFields(props: TimeProps) {
  const { preview, subject, onChange, onTimeColumn } = props;
  const { look, clocked } = preview;
  const { zone } = subject.state.header;
  const { columns, form } = look.dialect.time;
  const width = look.sample[0]?.length ?? 0;
  const isDated = form === 'stamp' || form === 'serial' || form === 'timeOfDay';
  return (
    <section class="logger-fields">
      <h2>When</h2>
      {look.orders.length > 1 && <DateOrders {...props} />}
      <SelectField
        label="Time is in column"
        value={String(columns[0] ?? 0)}
        options={Array.from({ length: width }, (_, i) => ({
          value: String(i),
          label: `${i + 1}: ${look.dialect.heads[i] || (look.sample[0]?.[i] ?? '')}`,
        }))}
        onChange={(value) => onTimeColumn(Number(value))}
      />
      <TimeForm {...props} />
      <FirstReading {...props} />
      {isDated && zone !== 0 && (
        <Choice
          label="The logger’s clock shows"
          value={clocked.zone === zone ? 'shop' : 'utc'}
          options={[
            { value: 'shop', label: 'the shop’s time' },
            { value: 'utc', label: 'UTC' },
          ]}
          onChange={(value) => onChange({ clocked: { ...clocked, zone: value === 'shop' ? zone : 0 } })}
        />
      )}
    </section>
  );
}
