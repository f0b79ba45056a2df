import * as z from 'zod/mini';
import { positive, stamp } from './common.ts';
import type { Known } from './known.ts';

/** How this phone is set up. It stays on this phone: no backup carries it. */
export const settings = z.lazy(() =>
  z.looseObject({
    units: z.enum(['metric', 'inchPound']),
    theme: z.enum(['system', 'light', 'dark']),
    /** Smallest step the scale shows, kg */
    scaleStep: positive,
    /** Whether the scale goes on counting over both parts or is zeroed between them. */
    scaleShows: z.enum(['runningTotal', 'zeroedBetween']),
    sound: z.boolean(),
    /** Alarms are said aloud too, by a voice that lives on the phone. */
    speech: z.optional(z.boolean()),
    lastBackupAt: z.optional(stamp),
  }),
);
export type Settings = Known<z.infer<typeof settings>>;

export const defaultSettings: Settings = {
  units: 'metric',
  theme: 'light',
  scaleStep: 0.0001,
  scaleShows: 'runningTotal',
  sound: true,
};
