import * as z from 'zod/mini';
import { id, kelvin, name, nonNegative, once, positive, share, stamp, text, typed, zone } from './common.ts';
import type { Known } from './known.ts';
import { loggerColumn, loggerDialect, loggerRepairs, loggerSeries } from './logger-file.ts';
import { lotKinds } from './lot.ts';
import { channel } from './oven-load.ts';
import { gaveWayFields, proofLoadFields, squeezeTestFields } from './proof.ts';

export const entryVersion = 1;

/** Free timers belong to the bench, not to a build or an oven load. */
export const benchSubject = 'bench';

const base = once(() => ({
  record: z.literal('entry'),
  v: z.number(),
  id,
  /** The build, the oven load or the bench it belongs to. */
  subject: id,
  /** May be set back by the builder. */
  happenedAt: stamp,
  /** May not. */
  recordedAt: stamp,
  zone,
  device: id,
  /** The first entry of the fact this one corrects, never another correction. */
  corrects: z.optional(id),
  typed: z.optional(typed),
}));

export const overrideReasons = ['doneNotTicked', 'notNeeded', 'anotherWay', 'goingOn'] as const;
export type OverrideReason = (typeof overrideReasons)[number];
export const guards = ['dryRun', 'release', 'rotation', 'films'] as const;
export type Guard = (typeof guards)[number];
export const clockPurposes = ['potLife', 'dry', 'soak', 'hold', 'free'] as const;
export type ClockPurpose = (typeof clockPurposes)[number];
export const weightsOf = [
  'cutCloth',
  'wetCloth',
  'wetFilms',
  'leftover',
  'wipings',
  /** Tube as it came off the mandrel, before its ends were cut. */
  'cured',
  /** Tube after its ends were cut; with the offcuts it stands for 'cured'. */
  'trimmed',
  'offcut',
  'filmIn',
  'filmOut',
] as const;
export type WeightOf = (typeof weightsOf)[number];
export const checkOutcomes = ['gelled', 'notYet', 'tacky', 'dry', 'soft', 'hard'] as const;
/** What is judged by eye and hand at demold, each in four steps from worst to best. */
export const ratingsOf = ['surface', 'release', 'drySpots', 'straightness'] as const;
export type RatingOf = (typeof ratingsOf)[number];
export const ovenStages = ['lit', 'off', 'out'] as const;

/** What a pot life was reckoned from when hardener went in. */
export const lifeBasis = z.lazy(() =>
  z.looseObject({
    /** kg of mixed resin in the cup */
    mass: positive,
    /** Resin, K: as entered, else the data sheet's */
    resin: kelvin,
    /** Air of the shop, K: as entered, else the resin's */
    air: kelvin,
    /** How time follows temperature, J/mol */
    energy: positive,
    /** Usable life by the data sheet's own point, s */
    sheet: positive,
    /** How long it lasts on a film at the resin's temperature, s */
    film: positive,
    /** Nobody had entered a temperature. */
    assumed: z.optional(z.boolean()),
  }),
);
export type LifeBasis = Known<z.infer<typeof lifeBasis>>;

const round = z.number().check(z.gte(1), z.lte(99));

export const entry = z.lazy(() =>
  z.discriminatedUnion('kind', [
    z.looseObject({
      ...base(),
      kind: z.literal('tick'),
      step: id,
      round,
      /** Ticked later by 'all done to here': it was done, nobody saw when. */
      timeNotSeen: z.optional(z.boolean()),
    }),
    z.looseObject({
      ...base(),
      kind: z.literal('override'),
      guard: z.enum(guards),
      round,
      reason: z.enum(overrideReasons),
    }),
    z.looseObject({
      ...base(),
      kind: z.literal('surroundings'),
      air: z.optional(kelvin),
      resin: z.optional(kelvin),
      mandrel: z.optional(kelvin),
      /** Relative humidity, 0 to 1 */
      humidity: z.optional(share),
    }),
    z.looseObject({
      ...base(),
      kind: z.literal('cupStarted'),
      cup: id,
      /** First, second, third of its round. */
      number: z.number().check(z.gte(1)),
      of: z.number().check(z.gte(1)),
      round,
      /** kg wanted of each part */
      resin: positive,
      hardener: positive,
      /** Most the cup may hold, kg */
      holds: positive,
    }),
    z.looseObject({
      ...base(),
      kind: z.literal('pour'),
      cup: id,
      part: z.enum(['resin', 'hardener']),
      /** kg of this pour alone; a cup's amount is the sum of its pours */
      mass: positive,
      /** Recorded short or over on purpose. */
      asItIs: z.optional(z.enum(['lean', 'rich'])),
    }),
    z.looseObject({ ...base(), kind: z.literal('cupEmpty'), cup: id }),
    z.looseObject({ ...base(), kind: z.literal('cupDiscarded'), cup: id }),
    z.looseObject({
      ...base(),
      kind: z.literal('clockStarted'),
      clock: id,
      purpose: z.enum(clockPurposes),
      label: z.string(),
      /** s */
      lasts: positive,
      /** s before the end at which it warns */
      warns: nonNegative,
      cup: z.optional(id),
      step: z.optional(id),
      round: z.optional(round),
      /** Of a pot life. */
      basis: z.optional(lifeBasis),
    }),
    z.looseObject({ ...base(), kind: z.literal('clockAnswered'), clock: id }),
    z.looseObject({
      ...base(),
      kind: z.literal('filmCount'),
      direction: z.enum(['in', 'out']),
      count: nonNegative,
      round,
    }),
    z.looseObject({ ...base(), kind: z.literal('reading'), channel: id, temperature: kelvin }),
    /** One file of a logger: its readings are made from its bytes whenever they are shown, and never written. */
    z.looseObject({
      ...base(),
      kind: z.literal('loggerFile'),
      /** SHA-256 of its bytes, under which they are kept. */
      hash: id,
      name,
      bytes: positive,
      dialect: loggerDialect,
      columns: z.array(loggerColumn),
      /** Channels that it brings to the oven load. */
      channels: z.optional(z.array(channel)),
      /** When its count began, or a time on the day its first time of day was, ms */
      startsAt: z.optional(stamp),
      /** s by which its clock is put on */
      shift: z.optional(z.number()),
      /** Minutes east of UTC that its clock shows. */
      clockZone: zone,
      repairs: loggerRepairs,
      series: z.array(loggerSeries),
      from: stamp,
      until: stamp,
    }),
    z.looseObject({ ...base(), kind: z.literal('ovenStage'), stage: z.enum(ovenStages) }),
    z.looseObject({ ...base(), kind: z.literal('roundStarted'), round }),
    z.looseObject({
      ...base(),
      kind: z.literal('check'),
      what: z.enum(['gel', 'tack', 'hardness']),
      outcome: z.enum(checkOutcomes),
      /** The cup whose kept sample was felt. */
      cup: z.optional(id),
      shoreD: z.optional(nonNegative),
    }),
    z.looseObject({
      ...base(),
      kind: z.literal('weight'),
      what: z.enum(weightsOf),
      /** kg */
      mass: nonNegative,
      round: z.optional(round),
      /** The piece of the plan's wall that alone was on the scale. */
      piece: z.optional(id),
    }),
    z.looseObject({
      ...base(),
      kind: z.literal('measurement'),
      what: z.enum(['outsideDiameter', 'circumference', 'length']),
      /** Distance from the datum end, m */
      station: nonNegative,
      /** m */
      value: positive,
    }),
    z.looseObject({
      ...base(),
      kind: z.literal('edgeMark'),
      /** Distance from the datum end, m */
      station: nonNegative,
      /** Where the outer edge landed from the plan's mark, m; above 0 further round. */
      off: z.number().check(z.gte(-1), z.lte(1)),
      /** How well that was read, m */
      reading: z.optional(positive),
      /** The piece of the plan's wall whose edge it is; the last one, the outside, when absent. */
      piece: z.optional(id),
    }),
    z.looseObject({ ...base(), kind: z.literal('proofLoad'), ...proofLoadFields() }),
    z.looseObject({ ...base(), kind: z.literal('squeezeTest'), ...squeezeTestFields() }),
    z.looseObject({ ...base(), kind: z.literal('gaveWay'), ...gaveWayFields() }),
    z.looseObject({
      ...base(),
      kind: z.literal('disposition'),
      outcome: z.enum(['good', 'rework', 'scrap']),
      text: z.optional(text),
    }),
    z.looseObject({
      ...base(),
      kind: z.literal('rating'),
      what: z.enum(ratingsOf),
      /** 0 worst, 3 best */
      value: z.number().check(z.gte(0), z.lte(3)),
    }),
    z.looseObject({
      ...base(),
      kind: z.literal('lotDrawn'),
      of: z.enum(lotKinds),
      /** From here on this build takes from this lot. */
      lot: id,
      /** Its label then, so that a record can be read without the shelf. */
      label: z.string(),
      /** What on the shelf it is a lot of: a wall may take several cloths. */
      item: z.optional(id),
      /** m of tape; of cloth the m2 planned, where several are weighed as one; besides another, what is from this one */
      amount: z.optional(nonNegative),
      /** Only its amount is from this lot: the rest is still from the one before. */
      besides: z.optional(z.literal(true)),
    }),
    z.looseObject({ ...base(), kind: z.literal('note'), text }),
    z.looseObject({ ...base(), kind: z.literal('photo'), hash: id, caption: z.optional(text) }),
    z.looseObject({
      ...base(),
      kind: z.literal('joinedOvenLoad'),
      build: id,
      ovenLoad: id,
      round,
      /** The part sensor on this build's tube. */
      channel: z.optional(id),
    }),
    z.looseObject({ ...base(), kind: z.literal('closed') }),
    z.looseObject({ ...base(), kind: z.literal('reopened') }),
    z.looseObject({ ...base(), kind: z.literal('retracted'), corrects: id }),
  ]),
);
export type Entry = Known<z.infer<typeof entry>>;
export type EntryKind = Entry['kind'];
export type EntryOf<K extends EntryKind> = Extract<Entry, { kind: K }>;

/** An entry of a kind this version does not know: kept, shown as such, passed on in backups. */
export const foreignEntry = z.lazy(() => z.looseObject({ ...base(), kind: z.string() }));
export type ForeignEntry = Known<z.infer<typeof foreignEntry>>;
export type AnyEntry = Entry | ForeignEntry;

const kinds = once(
  () => new Set(entry._zod.innerType.def.options.map((o) => o.def.shape.kind.def.values[0] as string)),
);
/** Whether this version knows it. */
export const isEntryKind = (kind: string): boolean => kinds().has(kind);

/** By kind and by version: a newer app may have given the fields of a kind another meaning. */
export function isKnown(e: AnyEntry): e is Entry {
  return isEntryKind(e.kind) && e.v <= entryVersion;
}

type Stamped = 'record' | 'v' | 'id' | 'recordedAt' | 'zone' | 'device' | 'happenedAt';
type DistributiveOmit<T, K extends string> = T extends unknown
  ? { [P in keyof T as P extends K ? never : P]: T[P] }
  : never;

/** What a screen says happened; the journal stamps it. `happenedAt` is now unless the builder set it back. */
export type EntryDraft = DistributiveOmit<Entry, Stamped> & { happenedAt?: number };
