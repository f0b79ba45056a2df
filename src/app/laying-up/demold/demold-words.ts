import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import type { ReleaseSystem } from '#shared/record/release-system.ts';
import { formatClockTime, formatDuration } from '#shared/units/time.ts';
import { coldShop, type Fit, type Material, type Missing, type Verdict } from './demold-fit.ts';
import type { ReadLast, SetAt } from './part-heat.ts';

export const materialWords: Record<Material, string> = {
  aluminum: 'aluminum',
  steel: 'steel',
  stainless: 'stainless steel',
  composite: 'composite',
  foam: 'foam',
  other: 'something else',
};

const degrees = (k: number) => show(k, 'temperature', 0);

/** Hundredths of a millimeter matter here, and so do tenths of a thou. */
export const showRoom = (m: number): string =>
  show(m, 'thickness', settings.value.units === 'metric' ? 3 : 2);

/** '23.6 × 10⁻⁶ per °C' */
export function showGrowth(perKelvin: number): string {
  const metric = settings.value.units === 'metric';
  const figure = show((metric ? perKelvin : perKelvin / 1.8) * 1e6, 'number', 1);
  return `${figure} × 10⁻⁶ per ${metric ? '°C' : '°F'}`;
}

export function verdictTitle(verdict: Verdict): string {
  switch (verdict.is) {
    case 'loose':
      return verdict.barely ? 'Barely loose: it may still grip' : 'It is loose: twist, then pull';
    case 'wait':
      return `Wait until it is below ${degrees(verdict.below)}`;
    case 'grips':
      return 'It will not come loose by cooling';
  }
}

/** What to do where the mandrel does not shrink away. */
export function gripsSentence(below: number | null, release: ReleaseSystem | undefined): string {
  const cold =
    below === null
      ? ''
      : ` Only below ${degrees(below)} would it, colder than a shop gets it (${degrees(coldShop)}).`;
  const first =
    release?.kind === 'filmSleeve'
      ? 'Pull the film first: it slides out between mandrel and tube, and takes the grip with it.'
      : 'Only the release lets go here: twist first, until it cracks free, then pull straight against a stop.';
  return `Around the hoop the wall shrinks about as much as this mandrel, or more.${cold} ${first}`;
}

export function setWords(set: SetAt): string {
  switch (set.by) {
    case 'gel':
      return `Gel was seen at ${formatClockTime(set.at)}, the ${set.sees} read ${show(set.temperature, 'temperature')}.`;
    case 'schedule':
      return `Nobody saw gel with a reading beside it: taken as the first hold of the schedule, ${degrees(set.temperature)}.`;
    case 'shop':
      return `It set in the shop, taken as ${degrees(set.temperature)}.`;
  }
}

/** A part that cools is another part half an hour later, s */
const stale = 1800;

export function readWords({ at, sees }: ReadLast, now: number): string {
  const since = (now - at) / 1000;
  const when = `read ${formatClockTime(at)}${since > stale ? `, ${formatDuration(since)} ago: read it again` : ''}`;
  return sees === 'part' ? `The part, ${when}` : `The air, ${when}; the part follows it by 5 to 40 minutes`;
}

export function missingWords(
  missing: Exclude<Missing, 'material'>,
  material: Material | undefined,
): { title: string; says: string } {
  switch (missing) {
    case 'expansion':
      return {
        title: 'How this mandrel grows is not known',
        says:
          material === 'foam'
            ? 'A foam mandrel is dug or melted out; clearance does not enter.'
            : 'A composite mandrel grows as its own fibers lie, so nothing is reckoned here. One of carbon barely shrinks: count on the release, twist first.',
      };
    case 'fiber':
      return {
        title: 'How this fiber grows is not known',
        says: 'Clearance is reckoned for carbon, glass and aramid. Let it cool to the shop, then twist first, pull second.',
      };
    case 'diameter':
      return {
        title: 'The diameter of its mandrel is not known',
        says: 'This tube was started without it. Let it cool to the shop, then twist first, pull second.',
      };
  }
}

export function wallWords({ growth }: Fit): string {
  return growth.by === 'pieces'
    ? `${growth.fibers}, by the directions of its pieces, where they grip hardest`
    : `${growth.fibers}, one cloth taken to lie along and around`;
}
