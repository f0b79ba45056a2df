import { roleTick } from '#app/laying-up/build/ticks.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import type { EntryDraft } from '#shared/record/entry.ts';
import { type Channel, type OvenLoadHeader, ovenLoadVersion } from '#shared/record/oven-load.ts';
import { nothingWet } from './load-draft.ts';
import { limitsOf } from './oven-limits.ts';
import { isFree } from './oven-schedule.ts';

export interface Lighting {
  builds: readonly BuildState[];
  /** Builds with no sensor on them. */
  unread: ReadonlySet<string>;
  schedule: CureSchedule;
  /** What the sensor of the air, the element or a build reads too high, K */
  offsets?: ReadonlyMap<string, number | undefined>;
  /** A sensor is in view of the element. */
  element?: boolean;
  /** K */
  unevenness?: number | undefined;
  number: number;
  at: number;
  zone: number;
  device: string;
  newId: () => string;
}

const nameOf = ({ header }: BuildState) => `${header.name} no. ${header.number}`;

function channelsOf({ builds, unread, offsets, element, newId }: Lighting): Channel[] {
  const off = (key: string) => {
    const offset = offsets?.get(key);
    return offset !== undefined && offset !== 0 && { offset };
  };
  return [
    { id: newId(), sees: 'air', name: 'Air', ...off('air') },
    ...builds
      .filter((b) => !unread.has(b.header.id))
      .map(
        (b): Channel => ({
          id: newId(),
          sees: 'part',
          build: b.header.id,
          name: nameOf(b),
          ...off(b.header.id),
        }),
      ),
    ...(element ? [{ id: newId(), sees: 'element', name: 'Element', ...off('element') } as const] : []),
  ];
}

/**
 * All that is written when an oven is lit: its header, the tubes that joined in both journals, and the step of their
 * routes that this does.
 */
export function lightDrafts(lighting: Lighting): { header: OvenLoadHeader; drafts: EntryDraft[] } {
  const { builds, schedule, unevenness, number, at, zone, device, newId } = lighting;
  const id = newId();
  const channels = channelsOf(lighting);
  const header: OvenLoadHeader = {
    record: 'ovenLoad',
    v: ovenLoadVersion,
    id,
    number,
    schedule,
    channels,
    limits: limitsOf(
      builds.map((b) => b.header),
      isFree(schedule),
    ),
    ...(unevenness !== undefined && { unevenness }),
    startedAt: at,
    zone,
    device,
  };
  const joined = builds.flatMap((b): EntryDraft[] => {
    const channel = channels.find((c) => c.build === b.header.id)?.id;
    const join = {
      kind: 'joinedOvenLoad',
      build: b.header.id,
      ovenLoad: id,
      round: b.rounds,
      ...(channel !== undefined && { channel }),
    } as const;
    return [
      { ...join, subject: id },
      { ...join, subject: b.header.id },
      ...(nothingWet(b) ? [] : roleTick(b, 'oven', { round: b.rounds, newId })),
    ];
  });
  return { header, drafts: [...joined, { kind: 'ovenStage', subject: id, stage: 'lit' }] };
}
