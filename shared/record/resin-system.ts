import * as z from 'zod/mini';
import { kelvin, name, positive, share, text } from './common.ts';
import type { Known } from './known.ts';

/** How the data sheet states the mix. Whatever it says, the bench works in grams. */
export const mixRatio = z.lazy(() =>
  z.discriminatedUnion('by', [
    z.looseObject({ by: z.literal('weight'), /** parts of hardener to 100 of resin */ phr: positive }),
    z.looseObject({ by: z.literal('volume'), resinParts: positive, hardenerParts: positive }),
    z.looseObject({
      by: z.literal('equivalents'),
      /** kg of resin to one mole of epoxide */
      epoxide: positive,
      /** kg of hardener to one mole of amine hydrogen */
      amineHydrogen: positive,
    }),
  ]),
);
export type MixRatio = Known<z.infer<typeof mixRatio>>;

/** What the data sheet calls the end of the pot life; for gel and peak only part of it is usable. */
export const potLifeEnds = ['viscosityDoubled', 'gel', 'peakExotherm'] as const;

export const potLife = z.lazy(() =>
  z.looseObject({
    /** s */
    time: positive,
    /** kg of mixed resin it was measured on */
    mass: positive,
    /** K */
    temperature: kelvin,
    ends: z.enum(potLifeEnds),
  }),
);
export type PotLife = Known<z.infer<typeof potLife>>;

/** So long at such a temperature. */
const timeAt = { temperature: kelvin, /** s */ time: positive };

/** A resin with one hardener. The same resin with SLOW and with FAST is two systems. */
export const resinSystemBody = z.lazy(() =>
  z.looseObject({
    name,
    /** As it stands on the can, and shown wherever hardener is poured: SLOW, FAST. */
    hardener: name,
    lot: z.optional(z.string()),
    ratio: mixRatio,
    /** kg/m3 */
    resinDensity: positive,
    hardenerDensity: positive,
    curedDensity: positive,
    /** Share of the hardener by which a cup may be off. */
    tolerance: share,
    /** Most that may be mixed in one cup, kg */
    largestCup: positive,
    potLife,
    /** Further pot lives of the data sheet: other masses, other temperatures. */
    morePotLives: z.optional(z.array(potLife)),
    /** How long it can be worked spread thin. */
    thinFilm: z.optional(z.looseObject(timeAt)),
    gelTimes: z.optional(z.array(z.looseObject({ ...timeAt, /** kg */ mass: z.optional(positive) }))),
    /** Glass transition after a cure that the data sheet states. */
    glassAfter: z.optional(z.array(z.looseObject({ ...timeAt, /** K */ glassTransition: kelvin }))),
    /** kg of resin to one mole of epoxide; of a ratio by equivalents it is the ratio's own */
    epoxideEquivalent: z.optional(positive),
    /** kg of hardener to one mole of amine hydrogen */
    amineEquivalent: z.optional(positive),
    /** Heat of reaction of the mix, J/kg */
    reactionHeat: z.optional(positive),
    /** J/(kg K) */
    specificHeat: z.optional(positive),
    /** Times at temperature that the data sheet gives for full cure. */
    curePoints: z.array(z.looseObject(timeAt)),
    highestTemperature: z.optional(kelvin),
    /** Highest glass transition the system reaches, K */
    glassTransition: z.optional(kelvin),
    typical: z.optional(z.boolean()),
    note: z.optional(text),
  }),
);
export type ResinSystem = Known<z.infer<typeof resinSystemBody>>;
