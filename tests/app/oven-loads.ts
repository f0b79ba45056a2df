import type { BuildHeader } from '#shared/record/build.ts';
import { foldBuild } from '#shared/record/build-state.ts';
import type { AnyEntry, EntryDraft } from '#shared/record/entry.ts';
import type { OvenLoadHeader } from '#shared/record/oven-load.ts';
import { foldOvenLoad, type OvenState } from '#shared/record/oven-state.ts';
import { starterChecklists } from '#shared/reference/starter-checklists.ts';
import { starterCloths } from '#shared/reference/starter-cloths.ts';
import { starterReleases } from '#shared/reference/starter-releases.ts';
import { starterResins } from '#shared/reference/starter-resins.ts';
import { starterSchedules } from '#shared/reference/starter-schedules.ts';
import { starterTapes } from '#shared/reference/starter-tapes.ts';

/** When the oven of these tests was lit, ms */
export const lit = Date.UTC(2026, 4, 16, 14);
export const minutes = (n: number) => lit + n * 60_000;
export const celsius = (degrees: number) => degrees + 273.15;

/** 66 °C for 3 h from 23 °C at 2 a minute: in the hold from 21.5 min to 3 h 21.5 by the schedule. */
export const schedule = starterSchedules['starter-schedule-66-3'].schedule;
export const slow = starterResins['starter-resin-laminating-slow'];

export const buildHeader = (change: Partial<BuildHeader> = {}): BuildHeader => ({
  record: 'build',
  v: 1,
  id: 'boom',
  name: 'Boom',
  number: 2,
  cloth: starterCloths['starter-cloth-carbon-plain-193'],
  clothMass: 0.13,
  resin: slow,
  release: starterReleases['starter-release-polyester-sleeve'],
  tape: starterTapes['starter-tape-polyester-25'],
  goal: { fiberVolumeFraction: 0.35, lossPerCup: 0.014, squeezeOut: 0.1 },
  route: starterChecklists['starter-checklist-film-sleeve'].stages,
  startedAt: lit - 7200_000,
  zone: 0,
  device: 'phone',
  ...change,
});

let count = 0;

export function entries(subject: string, drafts: readonly Omit<EntryDraft, 'subject'>[]): AnyEntry[] {
  return drafts.map((draft) => {
    count += 1;
    const happenedAt = draft.happenedAt ?? lit;
    const id = `e${String(count).padStart(8, '0')}`;
    const stamped = { ...draft, subject, happenedAt, recordedAt: happenedAt };
    return { ...stamped, record: 'entry', v: 1, id, zone: 0, device: 'phone' } as unknown as AnyEntry;
  });
}

export const build = (
  change: Partial<BuildHeader> = {},
  drafts: readonly Omit<EntryDraft, 'subject'>[] = [],
) => {
  const header = buildHeader(change);
  return foldBuild(header, entries(header.id, drafts));
};

export const loadHeader: OvenLoadHeader = {
  record: 'ovenLoad',
  v: 1,
  id: 'oven',
  number: 12,
  schedule,
  channels: [
    { id: 'air', sees: 'air', name: 'Air' },
    { id: 'boom', sees: 'part', name: 'Boom no. 2', build: 'boom' },
    { id: 'sprit', sees: 'part', name: 'Sprit no. 1', build: 'sprit' },
  ],
  limits: [
    { name: 'release film', sees: 'part', highest: celsius(82) },
    { name: 'tape', sees: 'air', highest: celsius(150) },
  ],
  startedAt: lit,
  zone: 0,
  device: 'phone',
};

/** Minutes and °C of each channel. */
export type Read = Record<string, readonly (readonly [number, number])[]>;

export interface Stages {
  off?: number;
  out?: number;
  header?: Partial<OvenLoadHeader>;
}

/** An oven load with these readings, off and out at these minutes. */
export function load(read: Read, { off, out, header }: Stages = {}): OvenState {
  const drafts: Omit<EntryDraft, 'subject'>[] = [
    { kind: 'ovenStage', stage: 'lit', happenedAt: lit } as Omit<EntryDraft, 'subject'>,
  ];
  const stage = (name: 'off' | 'out', at: number | undefined) => {
    if (at === undefined) return;
    drafts.push({ kind: 'ovenStage', stage: name, happenedAt: minutes(at) } as Omit<EntryDraft, 'subject'>);
  };
  for (const [channel, pairs] of Object.entries(read)) {
    for (const [at, degrees] of pairs) {
      drafts.push({
        kind: 'reading',
        channel,
        temperature: celsius(degrees),
        happenedAt: minutes(at),
      } as Omit<EntryDraft, 'subject'>);
    }
  }
  stage('off', off);
  stage('out', out);
  return foldOvenLoad({ ...loadHeader, ...header }, entries('oven', drafts));
}
