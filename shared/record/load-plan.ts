import * as z from 'zod/mini';
import { id, name, nonNegative, positive, share, text } from './common.ts';
import type { Known } from './known.ts';

const finite = z.number().check(z.gt(-1e12), z.lt(1e12));

/** What a rest or a sleeve holds besides going aside; nothing when absent. */
const holdsToo = { holdsTwist: z.optional(z.boolean()), holdsAxial: z.optional(z.boolean()) };

/** Where the tube is held, m from end 0. A sleeve holds at both ends of its length. */
export const support = z.lazy(() =>
  z.discriminatedUnion('holds', [
    z.looseObject({ id, holds: z.literal('builtIn'), at: nonNegative }),
    z.looseObject({ id, holds: z.literal('rests'), at: nonNegative, ...holdsToo }),
    z.looseObject({
      id,
      holds: z.literal('sleeve'),
      at: nonNegative,
      /** m */ length: positive,
      ...holdsToo,
    }),
  ]),
);
export type Support = Known<z.infer<typeof support>>;

/** As the builder wrote its figure: a pound of force must not pass for a newton unseen. */
const asTyped = { typed: z.optional(z.string()) };

/** What pulls, presses or twists; above 0 is the way the main load goes, and tension along the axis. */
export const load = z.lazy(() =>
  z.discriminatedUnion('kind', [
    z.looseObject({ id, kind: z.literal('point'), at: nonNegative, /** N */ force: finite, ...asTyped }),
    /** N/m at both ends of its stretch, straight between them; even where they are alike. */
    z.looseObject({
      id,
      kind: z.literal('spread'),
      from: nonNegative,
      to: nonNegative,
      atFrom: finite,
      atTo: finite,
      ...asTyped,
    }),
    /** N/m at stations, straight between them. */
    z.looseObject({
      id,
      kind: z.literal('table'),
      stations: z.array(z.looseObject({ at: nonNegative, value: finite })).check(z.minLength(2)),
      ...asTyped,
    }),
    z.looseObject({ id, kind: z.literal('torque'), at: nonNegative, /** N m */ torque: finite, ...asTyped }),
    z.looseObject({
      id,
      kind: z.literal('spreadTorque'),
      from: nonNegative,
      to: nonNegative,
      /** N m for each m */
      torque: finite,
      ...asTyped,
    }),
    z.looseObject({ id, kind: z.literal('axial'), at: nonNegative, /** N */ force: finite, ...asTyped }),
  ]),
);
export type LoadRecord = Known<z.infer<typeof load>>;

/** One way the tube is loaded. */
export const loadCase = z.lazy(() =>
  z.looseObject({
    id,
    name,
    loads: z.array(load),
    /** The builder's own: how much more than these loads it may meet; nothing is checked without it. */
    loadFactor: z.optional(positive),
  }),
);
export type LoadCase = Known<z.infer<typeof loadCase>>;

/** What holds on to the wall or is bonded to it. */
export const fitting = z.lazy(() =>
  z.discriminatedUnion('kind', [
    z.looseObject({
      id,
      kind: z.literal('clamp'),
      name,
      at: nonNegative,
      /** m along the tube */
      width: positive,
      /** N squeezing across */
      force: positive,
    }),
    z.looseObject({
      id,
      kind: z.literal('bond'),
      name,
      at: nonNegative,
      /** m */
      length: positive,
      /** Of the glue: thickness m, shear modulus and shear strength Pa */
      glue: positive,
      shearModulus: positive,
      shearStrength: positive,
      /** Of what is bonded on: modulus Pa, wall m */
      modulus: positive,
      wall: positive,
      /** N along the tube, and N m about it */
      force: nonNegative,
      torque: z.optional(nonNegative),
    }),
  ]),
);
export type Fitting = Known<z.infer<typeof fitting>>;

/** Loads of a plan, and what the builder asks of the wall under them. */
export const loadPlan = z.lazy(() =>
  z.looseObject({
    supports: z.array(support),
    cases: z.array(loadCase),
    /** Furthest that any place may go aside under any case, m */
    mostDeflection: z.optional(positive),
    /** Between what keeps the wall round, m; the tube's length when absent */
    freeLength: z.optional(positive),
    /** The builder's own; nothing is checked without it. */
    safetyFactor: z.optional(z.number().check(z.gte(1), z.lte(100))),
    /** What a wet layup keeps of its strength in compression. */
    compressionKept: z.optional(share),
    /** A ply is dropped over at least so many times its thickness. */
    dropTaper: z.optional(positive),
    fittings: z.optional(z.array(fitting)),
    note: z.optional(text),
  }),
);
export type LoadPlan = Known<z.infer<typeof loadPlan>>;
