import * as z from 'zod/mini';
import { id, nonNegative, positive } from './common.ts';
import { support } from './load-plan.ts';

const far = z.number().check(z.gt(-100), z.lt(100));

/** Weight hung on the tube, and how far it went down at a station. */
export const proofLoadFields = () => ({
  /** Where the weight hung, m from the datum end */
  at: nonNegative,
  /** kg */
  mass: positive,
  /** Where the deflection was read, m from the datum end */
  station: nonNegative,
  /** m */
  deflection: far,
  /** How far it stayed down once the weight was off, m; absent where nobody read it again. */
  set: z.optional(far),
  /** Readings under the same weight are of one test. */
  test: z.optional(id),
  /** How the tube lay in the test. */
  held: z.optional(z.array(support)),
  /** What its wall as planned gives there for each kg, m. A fact of the day: the shelf may change later. */
  expectedEach: z.optional(far),
  /** Modulus along the tube that this goes by, Pa */
  plannedModulus: z.optional(positive),
});

/** From what cracked and went on holding, to what fell apart. */
export const gaveWays = ['crackled', 'dented', 'broke'] as const;
export type GaveWay = (typeof gaveWays)[number];

/** The tube gave way under a weight. */
export const gaveWayFields = () => ({
  how: z.enum(gaveWays),
  /** kg that hung when it did */
  mass: positive,
  /** Where the weight hung, m from the datum end */
  at: nonNegative,
  /** Where it gave way, m from the datum end; absent where nobody saw it. */
  place: z.optional(nonNegative),
  /** The test that it ended. */
  test: z.optional(id),
  held: z.optional(z.array(support)),
});

/** The tube squeezed across between two flats: how much narrower it got. */
export const squeezeTestFields = () => ({
  station: nonNegative,
  /** N */
  force: positive,
  /** m */
  narrower: positive,
  /** Of the stretch that was squeezed, m along the tube */
  length: positive,
  /** Ring stiffness that the wall as planned has there, N/m2 */
  expected: z.optional(positive),
});
