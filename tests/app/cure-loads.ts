import type { BuildHeader } from '#shared/record/build.ts';
import type { OvenLoadHeader } from '#shared/record/oven-load.ts';
import { starterMandrels } from '#shared/reference/starter-mandrels.ts';
import { starterSchedules } from '#shared/reference/starter-schedules.ts';
import { buildHeader, celsius, entries, lit, loadHeader, minutes } from './oven-loads.ts';

type Pairs = readonly (readonly [minute: number, degrees: number])[];

interface Firing {
  /** Of the part; of the air where `by` says so. */
  read: Pairs;
  by?: 'air' | 'boom';
  build?: Partial<BuildHeader>;
  load?: Partial<OvenLoadHeader>;
  /** Cups emptied on the cloth so many minutes before it was lit, and the minute at which gel was seen */
  cup?: number;
  gel?: number;
  /** A cure of the same round before this one, so many minutes earlier. */
  before?: { earlier: number; read: Pairs };
}

export const room = starterSchedules['starter-schedule-room-24'].schedule;
export const tube38 = starterMandrels['starter-mandrel-aluminum-38'];

const cupDrafts = (minute: number) => [
  {
    kind: 'cupStarted',
    cup: 'cup',
    number: 1,
    of: 1,
    round: 1,
    resin: 0.1,
    hardener: 0.03,
    holds: 0.13,
    happenedAt: minutes(-minute - 10),
  },
  { kind: 'pour', cup: 'cup', part: 'resin', mass: 0.1, happenedAt: minutes(-minute - 9) },
  { kind: 'pour', cup: 'cup', part: 'hardener', mass: 0.03, happenedAt: minutes(-minute - 8) },
  {
    kind: 'clockStarted',
    clock: 'pot',
    purpose: 'potLife',
    cup: 'cup',
    label: 'Pot life',
    lasts: 2925,
    warns: 300,
    happenedAt: minutes(-minute - 8),
  },
  { kind: 'cupEmpty', cup: 'cup', happenedAt: minutes(-minute) },
];

function firing(id: string, at: number, read: Pairs, by: string, load: Partial<OvenLoadHeader>) {
  const join = { kind: 'joinedOvenLoad', build: 'boom', ovenLoad: id, round: 1, channel: 'boom' };
  const joined = { ...join, happenedAt: minutes(at) };
  return [
    ...entries('boom', [joined] as never),
    {
      ...loadHeader,
      channels: loadHeader.channels.slice(0, by === 'air' ? 1 : 2),
      ...load,
      id,
      startedAt: minutes(at),
    },
    ...entries(id, [
      { kind: 'ovenStage', stage: 'lit', happenedAt: minutes(at) },
      joined,
      ...read.map(([minute, degrees]) => ({
        kind: 'reading',
        channel: by,
        temperature: celsius(degrees),
        happenedAt: minutes(at + minute),
      })),
    ] as never),
  ];
}

/** A boom in the oven, as its records stand on a phone. */
export function fired({ read, by = 'boom', build, load = {}, cup, gel, before }: Firing): object[] {
  const header = buildHeader({ startedAt: lit - 10 * 86_400_000, schedule: loadHeader.schedule, ...build });
  const gelled = { kind: 'check', what: 'gel', outcome: 'gelled', happenedAt: minutes(gel ?? 0) };
  return [
    header,
    ...entries('boom', (cup === undefined ? [] : cupDrafts(cup)) as never),
    ...entries('boom', (gel === undefined ? [] : [gelled]) as never),
    ...(before ? firing('before', -before.earlier, before.read, by, { schedule: room }) : []),
    ...firing('oven', 0, read, by, load),
  ];
}
