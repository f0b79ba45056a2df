import { dewPoint } from '#calc';
import type { EntryOf } from '#shared/record/entry.ts';

/** Mandrel and cloth stay this far above the dew point, K (as in ISO 8502-4). */
export const dewMargin = 3;
/** Above this much water in the air amine hardener blushes (common practice, no source). */
export const dampFrom = 0.7;
/** Below this resin is too thick to wet cloth, K: 15 C (common practice, no source). */
export const coldUnder = 288.15;

export type Surroundings = Pick<EntryOf<'surroundings'>, 'air' | 'resin' | 'mandrel' | 'humidity'>;

export type Concern =
  /** K above the dew point; negative when below it */
  | { what: 'mandrelNearDew' | 'resinNearDew'; above: number; least: number }
  | { what: 'damp'; humidity: number }
  | { what: 'cold'; air: number };

export interface Judged {
  /** K; absent while air or humidity is not known */
  dewPoint?: number;
  concerns: Concern[];
}

// Below this a thermometer's own last figure decides, K
const hair = 1e-6;

export function judgeSurroundings({ air, resin, mandrel, humidity }: Surroundings): Judged {
  const dew =
    air !== undefined && humidity !== undefined && humidity > 0
      ? dewPoint({ temperature: air, relativeHumidity: humidity })
      : undefined;
  const concerns: Concern[] = [];
  const near = (what: 'mandrelNearDew' | 'resinNearDew', temperature: number | undefined) => {
    if (dew === undefined || temperature === undefined || temperature - dew >= dewMargin - hair) return;
    concerns.push({ what, above: temperature - dew, least: dew + dewMargin });
  };
  near('mandrelNearDew', mandrel);
  near('resinNearDew', resin);
  if (humidity !== undefined && humidity > dampFrom + hair) concerns.push({ what: 'damp', humidity });
  if (air !== undefined && air < coldUnder - hair) concerns.push({ what: 'cold', air });
  return { ...(dew !== undefined && { dewPoint: dew }), concerns };
}
