import { type Signal, signal } from '@preact/signals';
import { aside } from './aside.ts';
import { assigned, type ColumnChoice, notUsed } from './channel-choices.ts';
import type { Choices } from './faults.ts';
import { faultKey } from './faults.ts';
import type { Retained } from './file-kept.ts';
import { holdsRepair } from './holds-repair.ts';
import type { Look, Looked } from './look.ts';
import type { Trial, Tried } from './protocol.ts';
import { asBefore, rememberedFor } from './remembered.ts';
import { hottestAsked, litAt, type Subject } from './subject.ts';
import type { Clocked } from './time-column.ts';

export interface Preview {
  file: Retained;
  look: Look;
  columns: ColumnChoice[];
  clocked: Clocked;
  choices: Choices;
  /** Dates fit two orders, and the builder has not said which. */
  orderOpen: boolean;
  /** The name of a file of the same look that this one is read like. */
  like?: string;
  tried?: Tried;
}

export type Draft =
  | { step: 'choose' }
  | { step: 'reading'; name: string }
  | { step: 'refused'; name: string; why: (Looked & { ok: false })['why'] | 'tooBig' | 'empty' | 'failed' }
  | { step: 'again'; name: string; root: string; broughtBack: boolean }
  | { step: 'preview'; preview: Preview };

export const newDraft = (): Signal<Draft> => signal<Draft>({ step: 'choose' });

function trialOf({ look, columns, clocked, choices }: Preview, { state }: Subject): Trial {
  return {
    dialect: look.dialect,
    columns: columns
      .filter((c) => c.to !== notUsed)
      .map(({ column, unit }) => ({ column, unit, channel: `column ${column}` })),
    clocked,
    span: { lit: litAt(state), out: state.outAt },
    choices,
  };
}

let newest = 0;

/** Reads the file again as it is now said to be read; an answer that comes late is dropped. */
export async function tryAgain(draft: Signal<Draft>, preview: Preview, subject: Subject): Promise<void> {
  newest += 1;
  const mine = newest;
  draft.value = { step: 'preview', preview };
  const tried = await aside('try', trialOf(preview, subject));
  const now = draft.value;
  if (mine === newest && now.step === 'preview') draft.value = { ...now, preview: { ...now.preview, tried } };
}

/** In the shop's own time until a file or the builder says otherwise. */
function clockedOf(look: Look, { state }: Subject): Clocked {
  const { zone } = state.header;
  const said = look.startSaid === undefined ? undefined : look.startSaid - zone * 60_000;
  return { zone, startsAt: said ?? litAt(state), shift: 0 };
}

async function firstPreview(file: Retained, look: Look, subject: Subject): Promise<Preview> {
  const columns = assigned(look.heat, subject.state);
  const base = { file, look, columns, clocked: clockedOf(look, subject), choices: {} };
  const before = await rememberedFor(look);
  if (!before) return { ...base, orderOpen: look.orders.length > 1 };
  const { time } = before.entry.dialect;
  const isOrderKnown = time.order !== undefined && look.orders.includes(time.order);
  const isZoneOwn = before.entry.clockZone === 0;
  return {
    ...base,
    look: isOrderKnown || look.orders.length === 0 ? { ...look, dialect: { ...look.dialect, time } } : look,
    columns: asBefore(columns, before, subject.state),
    clocked: isZoneOwn ? { ...base.clocked, zone: 0 } : base.clocked,
    orderOpen: look.orders.length > 1 && !isOrderKnown,
    like: before.entry.name,
  };
}

export async function lookThrough(
  draft: Signal<Draft>,
  file: Retained,
  subject: Subject,
  timeColumn?: number,
): Promise<void> {
  const known = { near: litAt(subject.state), hottest: hottestAsked(subject.state), timeColumn };
  const looked = await aside('look', { bytes: file.bytes, known });
  if (!looked.ok) {
    draft.value = { step: 'refused', name: file.name, why: looked.why };
    return;
  }
  const preview = await firstPreview(file, looked.look, subject);
  await tryAgain(draft, preview, subject);
}

/** A file that is in the record, as it was taken in. */
export async function openAgain(draft: Signal<Draft>, file: Retained, subject: Subject): Promise<void> {
  const { state, fact } = subject;
  if (!fact) return;
  const { entry } = fact;
  const known = { near: litAt(state), hottest: hottestAsked(state) };
  const looked = await aside('look', { bytes: file.bytes, known, dialect: entry.dialect });
  if (!looked.ok) {
    draft.value = { step: 'refused', name: file.name, why: looked.why };
    return;
  }
  const columns = looked.look.heat.map((heat): ColumnChoice => {
    const taken = entry.columns.find((c) => c.column === heat.column);
    return { ...heat, unit: taken?.unit ?? heat.unit, to: taken?.channel ?? notUsed };
  });
  const { clockZone: zone, startsAt = litAt(state), shift = 0 } = entry;
  const preview: Preview = {
    file,
    look: { ...looked.look, dialect: entry.dialect },
    columns,
    clocked: { zone, startsAt, shift },
    choices: {},
    orderOpen: false,
  };
  const tried = await aside('try', trialOf(preview, subject));
  const choices = Object.fromEntries(tried.faults.map((f) => [faultKey(f), holdsRepair(entry.repairs, f)]));
  await tryAgain(draft, { ...preview, choices }, subject);
}
