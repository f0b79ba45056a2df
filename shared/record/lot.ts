import * as z from 'zod/mini';
import { id, name, nonNegative, positive, stamp, text } from './common.ts';
import type { Known } from './known.ts';

/** What comes in lots, and what each is counted in: cloth m2, resin and hardener kg, tape m. */
export const lotKinds = ['cloth', 'resin', 'hardener', 'tape'] as const;
export type LotKind = (typeof lotKinds)[number];

/** One roll or one can. What is left of it follows from what builds drew since it was last counted. */
export const lotBody = z.lazy(() =>
  z.looseObject({
    /** As it stands on the label: 'Lot 7, roll 2' */
    name,
    of: z.enum(lotKinds),
    /** The cloth, resin system or tape on the shelf that it is; a hardener's lot names its resin system. */
    item: id,
    /** m2, kg or m */
    received: positive,
    receivedAt: stamp,
    openedAt: z.optional(stamp),
    /** The date on the label. */
    expiresAt: z.optional(stamp),
    /** How long it keeps once opened, s */
    keepsOpen: z.optional(positive),
    /** Of the whole lot, in the builder's own money */
    price: z.optional(positive),
    /** What a count of the shelf found, and when: it holds from then on, whatever was drawn before. */
    counted: z.optional(z.looseObject({ at: stamp, amount: nonNegative })),
    note: z.optional(text),
  }),
);
export type Lot = Known<z.infer<typeof lotBody>>;
