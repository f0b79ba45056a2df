import type { ResinSystem } from '#shared/record/resin-system.ts';
import { celsius, grams, hours, minutes, typicalNote } from './quantities.ts';

// Liquid densities: usual for thinned bisphenol-A resin and for amine hardeners. Cured: Gibson 1994 and
// Hyer 1998 give epoxy 1.11 to 1.40, usually 1.1 to 1.2 g/cm3.
const densities = { resinDensity: 1150, hardenerDensity: 970, curedDensity: 1180 };

// Off by 2 to 5 % of the hardener is what data sheets commonly allow: common practice, no source.
const tolerance = 0.03;

export const starterResins = {
  'starter-resin-laminating-slow': {
    name: 'Laminating epoxy with SLOW',
    hardener: 'SLOW',
    // 30 parts to 100: common practice, no source.
    ratio: { by: 'weight', phr: 30 },
    ...densities,
    tolerance,
    // The mass its pot life is quoted for. Aviation practice mixes pots of about 100 g and pours larger ones flat
    // (DA20-C1 Maintenance Manual, 51-00-00, 2013).
    largestCup: grams(150),
    potLife: { time: minutes(75), mass: grams(150), temperature: celsius(25), ends: 'gel' },
    // The two points give 57 kJ/mol; Sbirrazzuoli 2006 measured 55 to 60 on epoxy and amine.
    curePoints: [
      { temperature: celsius(25), time: hours(48) },
      { temperature: celsius(66), time: hours(3) },
    ],
    // Both: common practice, no source.
    highestTemperature: celsius(100),
    glassTransition: celsius(80),
    typical: true,
    note: typicalNote,
  },
  'starter-resin-laminating-fast': {
    name: 'Laminating epoxy with FAST',
    hardener: 'FAST',
    // 3:1 by volume is 28 parts by weight at these densities, beside 30 for SLOW: common practice, no source.
    ratio: { by: 'volume', resinParts: 3, hardenerParts: 1 },
    ...densities,
    tolerance,
    // A fast cup heats itself sooner: common practice, no source.
    largestCup: grams(125),
    potLife: { time: minutes(20), mass: grams(100), temperature: celsius(25), ends: 'peakExotherm' },
    // Twice as quick as SLOW at both temperatures: common practice, no source.
    curePoints: [
      { temperature: celsius(25), time: hours(24) },
      { temperature: celsius(66), time: hours(1.5) },
    ],
    highestTemperature: celsius(95),
    glassTransition: celsius(72),
    typical: true,
    note: typicalNote,
  },
  'starter-resin-warm-cure': {
    name: 'Warm-cure epoxy',
    hardener: 'WARM',
    // Bisphenol-A resin near 0.19 kg to a mole of epoxide, a polyether amine near 0.06 kg to a mole of amine hydrogen: from memory.
    ratio: { by: 'equivalents', epoxide: 0.19, amineHydrogen: 0.06 },
    resinDensity: 1160,
    hardenerDensity: 950,
    curedDensity: 1160,
    tolerance,
    // Slow to react, so a bigger cup stays cool: common practice, no source.
    largestCup: grams(400),
    potLife: { time: minutes(150), mass: grams(150), temperature: celsius(25), ends: 'viscosityDoubled' },
    // The two points give 55 kJ/mol, inside Sbirrazzuoli 2006 (55 to 60).
    curePoints: [
      { temperature: celsius(60), time: hours(10) },
      { temperature: celsius(80), time: hours(3.25) },
    ],
    highestTemperature: celsius(125),
    glassTransition: celsius(90),
    typical: true,
    note: typicalNote,
  },
} as const satisfies Record<string, ResinSystem>;
