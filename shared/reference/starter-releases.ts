import type { ReleaseSystem } from '#shared/record/release-system.ts';
import { celsius, millimeters, typicalNote } from './quantities.ts';

export const starterReleases = {
  'starter-release-polyester-sleeve': {
    name: 'Polyester film sleeve and release spray',
    kind: 'filmSleeve',
    // 180 F: common practice, no source. Heat, time and amine make it brittle well before it melts.
    highestTemperature: celsius(82),
    // One wrap of 0.05 mm film, twice on the diameter: common practice, no source.
    buildUp: millimeters(0.1),
    typical: true,
    note: `${typicalNote} Count the minutes above the limit, not only the peak.`,
  },
  'starter-release-nylon-sleeve': {
    name: 'Nylon film sleeve',
    kind: 'filmSleeve',
    // 400 F: FAA AC 43.13-1B (1998), p. 3-6, nylon film.
    highestTemperature: celsius(204),
    // One wrap of 0.05 mm film, twice on the diameter: common practice, no source.
    buildUp: millimeters(0.1),
    typical: true,
    note: typicalNote,
  },
  'starter-release-wax-pva': {
    name: 'Paste wax and PVA coat',
    kind: 'waxAndPva',
    // 80 C to start with: common practice, no source. The 250 F of FAA AC 43.13-1B is for PVA film, not this coat.
    highestTemperature: celsius(80),
    // A mist coat and two wet coats: common practice, no source.
    buildUp: millimeters(0.05),
    typical: true,
    note: `${typicalNote} Water spoils the coat, and so does heat while it is not dry.`,
  },
  'starter-release-semi-permanent': {
    name: 'Semi-permanent release',
    kind: 'semiPermanent',
    // Far above any hand layup's cure: common practice, no source.
    highestTemperature: celsius(200),
    // A few molecules thick.
    buildUp: 0,
    typical: true,
    note: `${typicalNote} It wants bare, clean metal.`,
  },
} as const satisfies Record<string, ReleaseSystem>;
