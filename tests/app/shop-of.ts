import { type BuildState, foldBuild } from '#shared/record/build-state.ts';
import type { Entry, EntryDraft } from '#shared/record/entry.ts';
import { foldOvenLoad, type OvenState } from '#shared/record/oven-state.ts';
import { begun, buildHeader, ovenLoadHeader } from '../record/arbitraries.ts';

export { begun };

const second = 1000;

/** ms of a time so many minutes after the start. */
export const minutes = (count: number) => begun + count * 60 * second;

export type Event = DistributiveOmit<EntryDraft, 'subject' | 'happenedAt'> & { minute: number };
type DistributiveOmit<T, K extends string> = T extends unknown ? Omit<T, K> : never;

/** What happened to a build, an oven load or the bench, as it is kept. */
export function entriesOf(subject: string, events: readonly Event[]): Entry[] {
  return events.map(({ minute, ...rest }, i) => ({
    ...rest,
    record: 'entry',
    v: 1,
    // Sorts before every id that the app makes, as what was written earlier does.
    id: `0-${subject}-${String(i).padStart(4, '0')}`,
    subject,
    happenedAt: minutes(minute),
    recordedAt: minutes(minute),
    zone: -240,
    device: 'phone-1',
  })) as Entry[];
}

/** A build to which this happened, minutes after its start. */
export function buildOf(events: readonly Event[], header: Partial<typeof buildHeader> = {}): BuildState {
  const own = { ...buildHeader, ...header };
  return foldBuild(own, entriesOf(own.id, events));
}

export function ovenOf(events: readonly Event[]): OvenState {
  return foldOvenLoad(ovenLoadHeader, entriesOf(ovenLoadHeader.id, events));
}

/** A cup whose hardener goes in at a minute, with so many minutes of usable life. */
export function cupOf(cup: string, number: number, minute: number, life = 30, round = 1): Event[] {
  const contact = { minute, cup, round };
  return [
    {
      ...contact,
      minute: minute - 2,
      kind: 'cupStarted',
      number,
      of: 3,
      resin: 0.1,
      hardener: 0.03,
      holds: 0.2,
    },
    { minute: minute - 1, kind: 'pour', cup, part: 'resin', mass: 0.1 },
    {
      ...contact,
      kind: 'clockStarted',
      clock: `pot-${cup}`,
      purpose: 'potLife',
      label: `Cup ${number}`,
      lasts: life * 60,
      warns: 300,
    },
    { minute, kind: 'pour', cup, part: 'hardener', mass: 0.03 },
  ];
}

/** Every step of a stage ticked. */
export function ticksOf(stage: string, minute: number, round = 1): Event[] {
  const steps = buildHeader.route.find((s) => s.stage === stage)?.steps ?? [];
  return steps.map((step) => ({ minute, kind: 'tick' as const, step: step.id, round }));
}
