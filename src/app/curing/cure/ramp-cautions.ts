import { show } from '#app/state/show.ts';
import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import type { ResinSystem } from '#shared/record/resin-system.ts';
import { kelvinPerMinute } from '#shared/reference/quantities.ts';
import { showRate } from './rate-words.ts';

// All four: common practice, no source.
const fastestWet = kelvinPerMinute(3);
const fastestFree = 20 / 3600;
const aboveCure = 15;
const overTransition = 10;

const hair = 1e-6;

export interface RampCaution {
  title: string;
  says: string;
}

/** The glass transition that a cure so hot ends at: some degrees above it, never above the resin's own, K */
export const reachedTransition = (hottest: number, resin: ResinSystem | undefined): number =>
  Math.min(resin?.glassTransition ?? Number.POSITIVE_INFINITY, hottest + aboveCure);

/** Where a ramp is faster, or a postcure hotter, than practice has it. */
export function rampCautions({ start, stages }: CureSchedule, resin: ResinSystem | undefined): RampCaution[] {
  const found: RampCaution[] = [];
  let hottest = start;
  let temperature = start;
  stages.forEach((stage, index) => {
    if (stage.kind === 'hold') return;
    const number = index + 1;
    const free = stage.offMandrel === true;
    const rate = showRate(stage.rate);
    if (stage.kind === 'ramp' && !free && stage.rate > fastestWet + hair) {
      found.push({
        title: `Stage ${number} ramps at ${rate}`,
        says: `Before gel ${showRate(kelvinPerMinute(1))} to ${showRate(fastestWet)} is usual: faster, the outside runs ahead of the mandrel and the resin may run hot. Take ${showRate(kelvinPerMinute(2))}.`,
      });
    }
    if (free && stage.rate > fastestFree + hair) {
      found.push({
        title: `Stage ${number} goes at ${rate} with nothing to hold the tube`,
        says: `Free-standing, ${showRate(10 / 3600)} to ${showRate(fastestFree)} lets its glass transition rise along: faster, it softens and sags. Go slower, and support it straight.`,
      });
    }
    const bears = reachedTransition(hottest, resin);
    if (stage.kind === 'ramp' && free && stage.to > bears + overTransition + hair) {
      found.push({
        title: `Stage ${number} goes ${show(stage.to - bears, 'temperatureDifference', 0)} above where it softens now`,
        says: `Cured so far it softens at about ${show(bears, 'temperature', 0)}; free-standing it may go about ${show(overTransition, 'temperatureDifference', 0)} above that. Ramp to ${show(bears + overTransition, 'temperature', 0)}, hold, then go on.`,
      });
    }
    if (stage.kind === 'ramp' && stage.to < temperature - hair) {
      found.push({
        title: `Stage ${number} ramps down`,
        says: `It goes from ${show(temperature, 'temperature', 0)} to ${show(stage.to, 'temperature', 0)}. Write it as a cooling, or raise what it ramps to.`,
      });
    }
    temperature = stage.to;
    hottest = Math.max(hottest, temperature);
  });
  return found;
}
