import * as z from 'zod/mini';
import { checklistStage } from './checklist.ts';
import { clothBody } from './cloth.ts';
import { id, kelvin, name, nonNegative, positive, stamp, zone } from './common.ts';
import { cureSchedule } from './cure-schedule.ts';
import type { Known } from './known.ts';
import { mandrelBody } from './mandrel.ts';
import { ovenLimit } from './oven-load.ts';
import { resinGoal } from './plan.ts';
import { releaseSystemBody } from './release-system.ts';
import { resinSystemBody } from './resin-system.ts';
import { revision } from './revision.ts';
import { tapeBody } from './tape.ts';

export const buildVersion = 1;

/** One making of a tube. Everything it depends on is copied in when it starts and never changes. */
export const buildHeader = z.lazy(() =>
  z.looseObject({
    record: z.literal('build'),
    v: z.number(),
    id,
    name,
    /** Third of its name: 'Upper mast no. 3' */
    number: z.number().check(z.gte(1)),
    /** The plan revision it was started from, whole. */
    plan: z.optional(revision),
    cloth: clothBody,
    /** Dry cloth that goes in, kg */
    clothMass: positive,
    typed: z.optional(z.string()),
    /** As planned, m2; known where the plan says it or its wall is drawn */
    clothArea: z.optional(positive),
    /** Core sheet in the wall, and the resin its faces drink, kg */
    coreMass: z.optional(nonNegative),
    coreResin: z.optional(nonNegative),
    resin: resinSystemBody,
    /** Which documents on the shelf these are, so that lots of them can be told: each cloth with its m2. */
    takes: z.optional(
      z.looseObject({
        cloths: z.array(z.looseObject({ item: id, area: positive })),
        resin: id,
        tape: z.optional(id),
      }),
    ),
    release: z.optional(releaseSystemBody),
    tape: z.optional(tapeBody),
    goal: resinGoal,
    route: z.array(checklistStage),
    schedule: z.optional(cureSchedule),
    mandrelDiameter: z.optional(positive),
    /** Off the shelf; absent when only its diameter was typed. */
    mandrel: z.optional(mandrelBody),
    tubeLength: z.optional(positive),
    plies: z.optional(positive),
    serviceTemperature: z.optional(kelvin),
    /** Of what else goes into the oven with it: core, plugs and masking of the mandrel. */
    limits: z.optional(z.array(ovenLimit)),
    startedAt: stamp,
    zone,
    device: id,
  }),
);
export type BuildHeader = Known<z.infer<typeof buildHeader>>;
