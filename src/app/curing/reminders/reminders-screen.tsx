import { useSignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import { ovenNow } from '#app/curing/oven/oven-now.ts';
import { ovenResults } from '#app/curing/oven/oven-results.ts';
import { litOf } from '#app/curing/oven/oven-series.ts';
import { Absent } from '#app/parts/absent.tsx';
import { Action } from '#app/parts/action.tsx';
import { Lines } from '#app/parts/figure.tsx';
import { Empty } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Caution } from '#app/parts/warning.tsx';
import { HandOver } from '#app/phone/data/hand-over.tsx';
import { go, type Params } from '#app/router.ts';
import { loadJournals, ovenState } from '#app/state/journals.ts';
import { now, zoneAt } from '#app/state/now.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
import { formatClockTime, formatDay } from '#shared/units/time.ts';
import { calendarFile, type Reminder } from './ics.ts';
import { ovenReminders } from './oven-reminders.ts';

/** Rows shown; a calendar takes them all. */
const shown = 12;

function when(at: number): string {
  const day = formatDay(at, zoneAt(at), now.value);
  const time = formatClockTime(at);
  return day === 'Today' ? time : `${day}, ${time}`;
}

function fileOf(state: OvenState, reminders: readonly Reminder[]): File {
  const madeAt = Date.now();
  // Minutes since it was lit: each export of the same load counts as newer.
  const sequence = Math.max(0, Math.floor((madeAt - litOf(state)) / 60_000));
  const text = calendarFile({ reminders, madeAt, sequence });
  return new File([text], `oven-load-${state.header.number}.ics`, { type: 'text/calendar' });
}

function Reminders({ state }: { state: OvenState }) {
  const results = useMemo(() => ovenResults(state, []), [state]);
  const minute = Math.floor(now.value / 60_000) * 60_000;
  const reminders = ovenReminders(state, ovenNow(state, results, minute), minute);
  const back = { to: `/oven/${state.header.id}`, label: `Oven load ${state.header.number}` };
  const rest = reminders.length - shown;
  const rows = rest > 1 ? [...reminders.slice(0, shown - 1), ...reminders.slice(-1)] : reminders;
  return (
    <Screen
      kicker={`Oven load ${state.header.number}`}
      title="Reminders"
      back={back}
      actions={
        reminders.length > 0 ? (
          <HandOver what="calendar file" make={async () => fileOf(state, reminders)} />
        ) : (
          <Action onPress={() => go(back.to)}>Back to the oven</Action>
        )
      }
    >
      <p>
        A closed app cannot ring. For a long hold put these times into the calendar of your phone: it rings by
        itself.
      </p>
      {reminders.length === 0 && <Empty>The oven is off, so there is nothing left to read.</Empty>}
      {reminders.length > 0 && <Lines rows={rows.map((r) => [r.what, when(r.at)])} />}
      {rest > 1 && <p class="quiet small">{rest + 1} more readings in between, in the file too.</p>}
      <Caution>
        The times follow from what was read so far. After a reading that changes them, save the file again:
        your calendar takes the newer one.
      </Caution>
    </Screen>
  );
}

/** When is the oven to be read, and who says so with the app closed? */
export function RemindersScreen({ params }: { params: Params }) {
  const id = params.id ?? '';
  const looked = useSignal(false);
  useEffect(() => {
    loadJournals([id]).finally(() => {
      looked.value = true;
    });
  }, [id]);
  const state = ovenState(id);
  if (state) return <Reminders state={state} />;
  return looked.value ? <Absent what="oven load" /> : <div class="screen" />;
}
