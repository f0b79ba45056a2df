import * as z from 'zod/mini';
import { id, kelvin, name, nonNegative, stamp, text, zone } from './common.ts';
import { cureSchedule } from './cure-schedule.ts';
import type { Known } from './known.ts';

export const ovenLoadVersion = 1;

/** What a sensor sees. Tape, masking and plugs feel the air; release, core and resin feel the part. */
export const channelSees = ['air', 'part', 'element'] as const;

export const channel = z.lazy(() =>
  z.looseObject({
    id,
    sees: z.enum(channelSees),
    /** The build whose tube a part sensor sits on. */
    build: z.optional(id),
    name,
    /** What it reads above the truth, K; below 0 when it reads too low */
    offset: z.optional(z.number().check(z.gte(-50), z.lte(50))),
  }),
);
export type Channel = Known<z.infer<typeof channel>>;

/** A temperature that something in the oven must not exceed. */
export const ovenLimit = z.lazy(() =>
  z.looseObject({
    name,
    sees: z.enum(channelSees),
    highest: kelvin,
    /** Where the figure comes from. */
    source: z.optional(text),
  }),
);
export type OvenLimit = Known<z.infer<typeof ovenLimit>>;

/** One oven firing. Its schedule, channels and limits are frozen when it is set up. */
export const ovenLoadHeader = z.lazy(() =>
  z.looseObject({
    record: z.literal('ovenLoad'),
    v: z.number(),
    id,
    number: z.number().check(z.gte(1)),
    schedule: cureSchedule,
    channels: z.array(channel),
    limits: z.array(ovenLimit),
    /** How much hotter its hottest corner is than where the sensors hang, K */
    unevenness: z.optional(nonNegative),
    startedAt: stamp,
    zone,
    device: id,
  }),
);
export type OvenLoadHeader = Known<z.infer<typeof ovenLoadHeader>>;
