import { signal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import { cureIsGood, focusWrong } from '#app/curing/cure/check-cure.ts';
import { ScheduleEditor } from '#app/curing/cure/schedule-editor.tsx';
import { buildName } from '#app/laying-up/clocks/clock-list.ts';
import { Action, LinkButton } from '#app/parts/action.tsx';
import { SelectField } from '#app/parts/field.tsx';
import { allGood } from '#app/parts/quantity-input.ts';
import { Empty } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { goInstead } from '#app/router.ts';
import { openBuilds, openOvenLoads } from '#app/state/journals.ts';
import { zoneAt } from '#app/state/now.ts';
import { nextOvenLoadNumber } from '#app/state/numbers.ts';
import { record } from '#app/state/record.ts';
import { theStore } from '#app/state/shop.ts';
import { undoable } from '#app/state/undo.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import { lastOvenLoad, offsetsOf, proposeErrors } from './error-draft.ts';
import { ErrorFields } from './error-fields.tsx';
import { lightDrafts } from './light.ts';
import { LimitList, OvenCautions } from './limit-check.tsx';
import {
  chooseSchedule,
  type LoadDraft,
  loadDraft,
  loadOf,
  scheduleChoices,
  scheduleFrom,
  tapeNotOn,
} from './load-draft.ts';
import { limitsOf } from './oven-limits.ts';
import { isFree } from './oven-schedule.ts';
import { marginsOf } from './over-limits.ts';
import { SensorRows, TubeRows } from './tube-rows.tsx';

/** What is set up here stays while the builder looks something up elsewhere. */
const kept = signal<LoadDraft | undefined>(undefined);

function useDraft(): LoadDraft {
  const draft = useMemo(() => {
    kept.value ??= loadDraft(openBuilds.value, openOvenLoads.value);
    return kept.value;
  }, []);
  useEffect(() => {
    lastOvenLoad().then((last) => {
      if (last && draft.errors.from.value === undefined) proposeErrors(draft.errors, last);
    });
  }, [draft]);
  return draft;
}

function useNumber() {
  const number = useMemo(() => signal<number | undefined>(undefined), []);
  useEffect(() => {
    nextOvenLoadNumber().then((next) => {
      number.value = next;
    });
  }, [number]);
  return number.value;
}

async function light(builds: readonly BuildState[], draft: LoadDraft, schedule: CureSchedule): Promise<void> {
  const store = theStore();
  const at = Date.now();
  const { header, drafts } = lightDrafts({
    builds,
    unread: draft.unread.value,
    schedule,
    offsets: offsetsOf(draft.errors),
    element: draft.errors.element.value,
    unevenness: draft.errors.unevenness.si.value,
    number: await nextOvenLoadNumber(),
    at,
    zone: zoneAt(at),
    device: store.device,
    newId: () => store.newId(),
  });
  if (!(await record(drafts, { headers: [header] }))) return;
  kept.value = undefined;
  // The way back would take the press before this one, under a key that is read as 'not lit'.
  undoable.value = undefined;
  goInstead(`/oven/${header.id}`);
}

function SchedulePick({ draft, builds }: { draft: LoadDraft; builds: readonly BuildState[] }) {
  const choices = scheduleChoices(builds);
  const planned = new Set(builds.map((b) => JSON.stringify(b.header.schedule)));
  return (
    <SelectField
      label="Schedule"
      value={draft.schedule.value}
      options={choices}
      hint={planned.size > 1 ? 'These tubes were planned differently: choose one for all.' : undefined}
      onChange={(value) => {
        const choice = choices.find((c) => c.value === value);
        if (choice) chooseSchedule(draft, choice);
      }}
    />
  );
}

/** A word before it is too late; who knows better lights the oven all the same. */
function TapeNotOn({ builds }: { builds: readonly BuildState[] }) {
  const bare = builds.filter(tapeNotOn);
  if (bare.length === 0) return null;
  return (
    <Warning kind="amber" title="Tape is not on yet">
      No taping of {bare.map(buildName).join(' and ')} is ticked. In the heat the resin runs before anything
      holds it: wind the tape first, or tick it if it is on.
    </Warning>
  );
}

const offsetOf = ({ errors }: LoadDraft, key: string) => {
  const offset = errors.offsets.get(key)?.si.value;
  return offset !== undefined && { offset };
};

/** What goes into the oven, how hot, for how long, and who watches it? */
export function OvenNewScreen() {
  const draft = useDraft();
  const number = useNumber();
  const builds = openBuilds.value;
  const chosen = builds.filter((b) => draft.builds.value.has(b.header.id) && !loadOf(b, openOvenLoads.value));
  const schedule = scheduleFrom(draft);
  const resins = chosen.map((b) => b.header.resin);
  const free = schedule !== undefined && isFree(schedule);
  const limits = limitsOf(
    chosen.map((b) => b.header),
    free,
  );
  const read = chosen.filter((b) => !draft.unread.value.has(b.header.id));
  const channels = read.map((b) => ({ sees: 'part', ...offsetOf(draft, b.header.id) }) as const);
  const margins = marginsOf(
    [{ sees: 'air', ...offsetOf(draft, 'air') }, ...channels],
    draft.errors.unevenness.si.value,
  );
  const press = async () => {
    const errors = [...draft.errors.offsets.values(), draft.errors.unevenness];
    const cured = cureIsGood(draft.cure, resins[0]);
    if (!allGood(errors) || !cured || !schedule) {
      focusWrong();
      return;
    }
    await light(chosen, draft, schedule);
  };
  return (
    <Screen
      kicker={number === undefined ? 'Oven load' : `Oven load ${number}`}
      title="Set up an oven load"
      back={{ to: '/', label: 'Bench' }}
      actions={
        <Action onPress={press} not={chosen.length === 0 ? 'An oven load needs a tube' : undefined}>
          Oven is lit
        </Action>
      }
    >
      {builds.length === 0 ? (
        <>
          <Empty>An oven load needs a tube: start one, lay it up, then light the oven.</Empty>
          <LinkButton to="/start">Start a tube</LinkButton>
        </>
      ) : (
        <TubeRows draft={draft} builds={builds} />
      )}
      {chosen.length > 0 && (
        <>
          <TapeNotOn builds={chosen} />
          <SchedulePick draft={draft} builds={chosen} />
          <ScheduleEditor
            draft={draft.cure}
            limits={limits}
            margins={margins}
            resins={resins}
            tape={free ? undefined : chosen.find((b) => b.header.tape)?.header.tape}
          />
          <LimitList limits={limits} />
          <SensorRows draft={draft} builds={chosen} />
          <ErrorFields draft={draft.errors} read={read} />
          <OvenCautions limits={limits} />
        </>
      )}
    </Screen>
  );
}
