import fc from 'fast-check';
import type { BuildHeader } from '#shared/record/build.ts';
import type { AnyEntry, Entry, EntryDraft, EntryKind, EntryOf } from '#shared/record/entry.ts';
import {
  checkOutcomes,
  clockPurposes,
  entryVersion,
  guards,
  ovenStages,
  overrideReasons,
  ratingsOf,
  weightsOf,
} from '#shared/record/entry.ts';
import { lotKinds } from '#shared/record/lot.ts';
import type { OvenLoadHeader } from '#shared/record/oven-load.ts';
import { gaveWays } from '#shared/record/proof.ts';
import { starterChecklists } from '#shared/reference/starter-checklists.ts';
import { starterCloths } from '#shared/reference/starter-cloths.ts';
import { starterReleases } from '#shared/reference/starter-releases.ts';
import { starterResins } from '#shared/reference/starter-resins.ts';
import { starterSchedules } from '#shared/reference/starter-schedules.ts';

export const begun = Date.UTC(2026, 4, 16, 12);

export const buildHeader: BuildHeader = {
  record: 'build',
  v: 1,
  id: 'build-1',
  name: 'Boom',
  number: 1,
  cloth: starterCloths['starter-cloth-carbon-plain-193'],
  clothMass: 0.13,
  resin: starterResins['starter-resin-laminating-slow'],
  release: starterReleases['starter-release-polyester-sleeve'],
  goal: { fiberVolumeFraction: 0.35, lossPerCup: 0.014, squeezeOut: 0.1 },
  route: starterChecklists['starter-checklist-film-sleeve'].stages,
  startedAt: begun,
  zone: -240,
  device: 'phone-1',
};

export const ovenLoadHeader: OvenLoadHeader = {
  record: 'ovenLoad',
  v: 1,
  id: 'oven-1',
  number: 1,
  schedule: starterSchedules['starter-schedule-66-3'].schedule,
  channels: [
    { id: 'air', sees: 'air', name: 'Air' },
    { id: 'part-1', sees: 'part', name: 'Boom no. 1', build: 'build-1' },
  ],
  limits: [{ name: 'Film sleeve', sees: 'part', highest: 355.15 }],
  startedAt: begun,
  zone: -240,
  device: 'phone-1',
};

// Small pools, so that entries meet: two ticks of one step, a pour and its cup, a clock and its answer.
const steps = buildHeader.route.flatMap((s) => s.steps.map((one) => one.id));
const cup = fc.constantFrom('cup-a', 'cup-b', 'cup-c');
const clock = fc.constantFrom('clock-a', 'clock-b');
const round = fc.integer({ min: 1, max: 3 });
const mass = fc.double({ min: 0.0001, max: 1, noNaN: true });
// A −0 does not come back from a file as such.
const down = fc.double({ min: -1, max: 1, noNaN: true }).map((far) => far + 0);
const temperature = fc.double({ min: 270, max: 420, noNaN: true });
const kind = <K extends EntryKind>(name: K) => fc.constant(name);
const maybe = { requiredKeys: [] as never[] };

/** What each kind says besides its stamps; the types see to it that none is forgotten. */
const bodies: { [K in EntryKind]: fc.Arbitrary<{ kind: K }> } = {
  tick: fc.record({ kind: kind('tick'), step: fc.constantFrom(...steps), round }),
  override: fc.record({
    kind: kind('override'),
    guard: fc.constantFrom(...guards),
    round,
    reason: fc.constantFrom(...overrideReasons),
  }),
  surroundings: fc
    .record({ air: temperature, humidity: fc.double({ min: 0, max: 1, noNaN: true }) }, maybe)
    .map((rest) => ({ kind: 'surroundings' as const, ...rest })),
  cupStarted: fc.record({
    kind: kind('cupStarted'),
    cup,
    number: fc.integer({ min: 1, max: 3 }),
    of: fc.constant(3),
    round,
    resin: mass,
    hardener: mass,
    holds: mass,
  }),
  pour: fc.record({ kind: kind('pour'), cup, part: fc.constantFrom('resin', 'hardener'), mass }),
  cupEmpty: fc.record({ kind: kind('cupEmpty'), cup }),
  cupDiscarded: fc.record({ kind: kind('cupDiscarded'), cup }),
  clockStarted: fc.record({
    kind: kind('clockStarted'),
    clock,
    purpose: fc.constantFrom(...clockPurposes),
    label: fc.constant('Cup 1, SLOW'),
    lasts: fc.integer({ min: 1, max: 90_000 }),
    warns: fc.integer({ min: 0, max: 900 }),
    cup,
    basis: fc.option(
      fc.record({
        mass,
        resin: temperature,
        air: temperature,
        energy: fc.constant(55_000),
        sheet: fc.constant(1800),
        film: fc.constant(3600),
      }),
      { nil: undefined },
    ),
  }),
  clockAnswered: fc.record({ kind: kind('clockAnswered'), clock }),
  filmCount: fc.record({
    kind: kind('filmCount'),
    direction: fc.constantFrom('in', 'out'),
    count: fc.integer({ min: 0, max: 6 }),
    round,
  }),
  reading: fc.record({
    kind: kind('reading'),
    channel: fc.constantFrom('air', 'part-1', 'lost'),
    temperature,
  }),
  loggerFile: fc
    .record({
      hash: fc.constantFrom('cc', 'dd'),
      shift: fc.integer({ min: -7200, max: 7200 }),
      clockZone: fc.constantFrom(-240, 60),
      readings: fc.integer({ min: 0, max: 100_000 }),
      highest: temperature,
      brings: fc.boolean(),
    })
    .map(({ readings, highest, brings, ...rest }) => ({
      ...rest,
      kind: 'loggerFile' as const,
      name: 'oven.csv',
      bytes: 4000,
      dialect: {
        encoding: 'utf-8',
        delimiter: ';',
        decimal: ',',
        heads: ['Time', 'Air'],
        firstRow: 1,
        time: { columns: [0], form: 'stamp', order: 'dmy' },
      },
      columns: [{ column: 1, channel: brings ? 'brought' : 'air', unit: 'C' }],
      ...(brings && { channels: [{ id: 'brought', sees: 'air', name: 'Air at the door' }] }),
      repairs: { shifts: [], cuts: [], lowest: 213.15, highest: 973.15, repeats: 'first' },
      series: [{ channel: brings ? 'brought' : 'air', readings, highest }],
      from: begun,
      until: begun + 7_200_000,
    })),
  ovenStage: fc.record({ kind: kind('ovenStage'), stage: fc.constantFrom(...ovenStages) }),
  roundStarted: fc.record({ kind: kind('roundStarted'), round }),
  check: fc.record({
    kind: kind('check'),
    what: fc.constantFrom('gel', 'tack', 'hardness'),
    outcome: fc.constantFrom(...checkOutcomes),
    cup,
  }),
  weight: fc
    .record(
      { what: fc.constantFrom(...weightsOf), mass, piece: fc.constantFrom('skin', 'sleeve') },
      { requiredKeys: ['what', 'mass'] },
    )
    .map((rest) => ({ kind: 'weight' as const, ...rest })),
  edgeMark: fc.record({
    kind: kind('edgeMark'),
    station: fc.constantFrom(0, 0.6, 1.2),
    // A −0 does not come back from a file as such.
    off: fc.double({ min: -1, max: 1, noNaN: true }).map((off) => off + 0),
  }),
  measurement: fc.record({
    kind: kind('measurement'),
    what: fc.constantFrom('outsideDiameter', 'circumference', 'length'),
    station: mass,
    value: mass,
  }),
  proofLoad: fc.record(
    {
      kind: kind('proofLoad'),
      at: mass,
      mass,
      station: mass,
      deflection: down,
      set: down,
      test: fc.constantFrom('first', 'second'),
      held: fc.constant([{ id: 'held', holds: 'builtIn' as const, at: 0 }]),
      expectedEach: down,
      plannedModulus: mass,
    },
    { requiredKeys: ['kind', 'at', 'mass', 'station', 'deflection'] },
  ),
  squeezeTest: fc.record(
    {
      kind: kind('squeezeTest'),
      station: mass,
      force: mass,
      narrower: mass,
      length: mass,
      expected: mass,
    },
    { requiredKeys: ['kind', 'station', 'force', 'narrower', 'length'] },
  ),
  gaveWay: fc.record(
    {
      kind: kind('gaveWay'),
      how: fc.constantFrom(...gaveWays),
      mass,
      at: mass,
      place: mass,
      test: fc.constantFrom('first', 'second'),
    },
    { requiredKeys: ['kind', 'how', 'mass', 'at'] },
  ),
  disposition: fc.record({ kind: kind('disposition'), outcome: fc.constantFrom('good', 'rework', 'scrap') }),
  rating: fc.record({
    kind: kind('rating'),
    what: fc.constantFrom(...ratingsOf),
    value: fc.integer({ min: 0, max: 3 }),
  }),
  lotDrawn: fc.record({
    kind: kind('lotDrawn'),
    of: fc.constantFrom(...lotKinds),
    lot: fc.constantFrom('lot-a', 'lot-b'),
    label: fc.constant('Lot 7'),
  }),
  note: fc.record({ kind: kind('note'), text: fc.string({ maxLength: 40 }) }),
  photo: fc.record({ kind: kind('photo'), hash: fc.constantFrom('aa', 'bb') }),
  joinedOvenLoad: fc.record({
    kind: kind('joinedOvenLoad'),
    build: fc.constantFrom('build-1', 'build-2'),
    ovenLoad: fc.constant('oven-1'),
    round,
  }),
  closed: fc.record({ kind: kind('closed') }),
  reopened: fc.record({ kind: kind('reopened') }),
  retracted: fc.record({ kind: kind('retracted'), corrects: fc.constant('never-came') }),
};

/** Kinds and versions that only a later app knows, with fields that would break a fold that read them. */
const fromLater = fc.oneof(
  fc.record({ kind: fc.constant('humSaid'), lot: fc.string(), cup }),
  fc.record({ kind: fc.constant('pour'), v: fc.constant(entryVersion + 1), cup, part: fc.constant('both') }),
  fc.record({ kind: fc.constant('tick'), v: fc.constant(entryVersion + 1), steps: fc.constant([]) }),
);

// Few different times, so that ties happen.
const stamps = fc.record({
  happenedAt: fc.integer({ min: 0, max: 12 }).map((n) => begun + n * 60_000),
  recordedAt: fc.integer({ min: 0, max: 12 }).map((n) => begun + n * 60_000),
  zone: fc.constantFrom(-240, 60),
  device: fc.constantFrom('phone-1', 'phone-2'),
});

const wording = (later: boolean) => fc.oneof(...Object.values(bodies), ...(later ? [fromLater] : []));

const fact = (later: boolean) =>
  fc.record({
    first: fc.tuple(wording(later), stamps),
    later: fc.array(fc.tuple(fc.oneof(wording(later), fc.constant({ kind: 'retracted' as const })), stamps), {
      maxLength: 3,
    }),
  });

/** Entries of one subject: facts, their corrections and retractions, in no order in particular. */
export function entries(options: { fromLater?: boolean; subject?: string } = {}): fc.Arbitrary<AnyEntry[]> {
  const { fromLater: later = true, subject = 'build-1' } = options;
  return fc.array(fact(later), { maxLength: 30 }).map((facts) =>
    facts.flatMap((one, i) => {
      const root = `e-${String(i).padStart(3, '0')}`;
      return [one.first, ...one.later].map(([body, stamp], n) => ({
        record: 'entry' as const,
        v: entryVersion,
        id: n === 0 ? root : `${root}-${n}`,
        subject,
        ...stamp,
        ...body,
        ...(n > 0 && { corrects: root }),
      })) as AnyEntry[];
    }),
  );
}

/** The same entries as they may come in: in any order, some of them twice, from two phones that share some. */
export function comingIn(all: readonly AnyEntry[]): fc.Arbitrary<AnyEntry[]> {
  return fc
    .tuple(
      fc.shuffledSubarray([...all], { minLength: all.length, maxLength: all.length }),
      fc.shuffledSubarray([...all]),
      fc.boolean(),
    )
    .map(([whole, again, before]) => (before ? [...again, ...whole] : [...whole, ...again]));
}

type Draft = EntryDraft extends infer D ? (D extends unknown ? Omit<D, 'subject'> : never) : never;
type Stamps = Partial<Pick<Entry, 'id' | 'subject' | 'happenedAt' | 'recordedAt'>>;

let made = 0;

/** One entry for a test that needs a certain one; each is a second later than the one before. */
export function entryOf<D extends Draft>(body: D & Stamps): EntryOf<D['kind']> {
  made += 1;
  const entry = {
    record: 'entry' as const,
    v: entryVersion,
    id: `made-${String(made).padStart(7, '0')}`,
    subject: 'build-1',
    happenedAt: begun + made * 1000,
    recordedAt: begun + made * 1000,
    zone: -240,
    device: 'phone-1',
    ...body,
  };
  return entry as unknown as EntryOf<D['kind']>;
}
