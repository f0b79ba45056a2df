import * as z from 'zod/mini';
import { id, kelvin, name, nonNegative, positive, share, text } from './common.ts';
import { cureSchedule } from './cure-schedule.ts';
import type { Known } from './known.ts';
import { wallPlan } from './piece.ts';

/** How much cloth a tube takes: weighed, or an area of the cloth on the shelf. */
export const clothAmount = z.discriminatedUnion('by', [
  z.looseObject({ by: z.literal('mass'), /** kg */ mass: positive }),
  z.looseObject({ by: z.literal('area'), /** m2 */ area: positive }),
]);
export type ClothAmount = Known<z.infer<typeof clothAmount>>;

/** How resin goes from the can into the wall. */
export const resinGoal = z.looseObject({
  /** Fiber volume fraction wanted in the cured wall. */
  fiberVolumeFraction: share,
  /** Left in cup, stick, film and gloves with every cup, kg */
  lossPerCup: nonNegative,
  /** Share of what is applied that the tape squeezes out. */
  squeezeOut: z.number().check(z.gte(0), z.lt(1)),
  /** Mixed resin that one pair of hands lays down, kg/s */
  workingRate: z.optional(positive),
});
export type ResinGoal = Known<z.infer<typeof resinGoal>>;

export const planBody = z.looseObject({
  name,
  /** m, what the first ply sees less release build-up */
  mandrelDiameter: positive,
  tubeLength: positive,
  cloth: id,
  clothAmount,
  plies: positive,
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
  note: z.optional(text),
});
export type Plan = Known<z.infer<typeof planBody>>;
