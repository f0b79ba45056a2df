import * as z from 'zod/mini';
import { id, kelvin, name, nonNegative, positive, share, text } from './common.ts';
import { cureSchedule } from './cure-schedule.ts';
import type { Known } from './known.ts';
import { loadPlan } from './load-plan.ts';
import { wallPlan } from './piece.ts';

/** How much cloth a tube takes: weighed, or an area of the cloth on the shelf. */
export const clothAmount = z.lazy(() =>
  z.discriminatedUnion('by', [
    z.looseObject({ by: z.literal('mass'), /** kg */ mass: positive }),
    z.looseObject({ by: z.literal('area'), /** m2 */ area: positive }),
  ]),
);
export type ClothAmount = Known<z.infer<typeof clothAmount>>;

/** Figures that a shop's own builds can stand in for. */
export const learnable = ['fiberVolume', 'lossPerCup', 'squeezeOut', 'workingRate', 'plyThickness'] as const;
export type Learnable = (typeof learnable)[number];

/** Whose figure was taken: the median of so many builds of this shop, or common practice. */
export const origin = z.lazy(() =>
  z.looseObject({ of: z.enum(['shop', 'book']), builds: z.optional(nonNegative) }),
);
export type Origin = Known<z.infer<typeof origin>>;

/** How resin goes from the can into the wall. */
export const resinGoal = z.lazy(() =>
  z.looseObject({
    /** Fiber volume fraction wanted in the cured wall. */
    fiberVolumeFraction: share,
    /** Left in cup, stick, film and gloves with every cup, kg */
    lossPerCup: nonNegative,
    /** Share of what is applied that the tape squeezes out. */
    squeezeOut: z.number().check(z.gte(0), z.lt(1)),
    /** Mixed resin that one pair of hands lays down, kg/s */
    workingRate: z.optional(positive),
    /** Whose each figure is, by its name; absent where it was typed. */
    from: z.optional(z.record(z.string(), origin)),
  }),
);
export type ResinGoal = Known<z.infer<typeof resinGoal>>;

/** How much of its reckoned stiffness this shop's tubes show when they are bent under a weight. */
export const shopStiffness = z.lazy(() =>
  z.looseObject({
    /** Times the modulus along and across the fibers */
    factor: z.number().check(z.gte(0.1), z.lte(10)),
    /** The median of so many tubes */
    builds: z.optional(nonNegative),
  }),
);
export type ShopStiffness = Known<z.infer<typeof shopStiffness>>;

export const planBody = z.lazy(() =>
  z.looseObject({
    name,
    /** m, what the first ply sees less release build-up */
    mandrelDiameter: positive,
    tubeLength: positive,
    cloth: id,
    clothAmount,
    plies: positive,
    /** Of one cured ply of `cloth`, m, as this shop's come out; from cloth and fiber volume when absent */
    plyThickness: z.optional(positive),
    resin: id,
    release: z.optional(id),
    tape: z.optional(id),
    mandrel: z.optional(id),
    checklist: id,
    goal: resinGoal,
    schedule: cureSchedule,
    /** Hottest the tube gets in use, K */
    serviceTemperature: kelvin,
    /** Piece by piece, where the builder drew it; without it the plan knows only how much cloth. */
    wall: z.optional(wallPlan),
    /** The shop's own; as its cloths' figures say when absent. */
    stiffness: z.optional(shopStiffness),
    /** What the wall has to carry. */
    loads: z.optional(loadPlan),
    note: z.optional(text),
  }),
);
export type Plan = Known<z.infer<typeof planBody>>;
