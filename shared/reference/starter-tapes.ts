import type { Tape } from '#shared/record/tape.ts';
import { celsius, millimeters, typicalNote } from './quantities.ts';

// Width, thickness, shrink window, pull and roll of polyester tape: common practice, no source.
// Real tapes pull 0.2 to 1 N for each mm of width when hot.
const polyester = {
  thickness: millimeters(0.05),
  shrinksFrom: celsius(65),
  pullsFrom: celsius(100),
  highestTemperature: celsius(150),
  shrinkForce: [
    { temperature: celsius(65), force: 0 },
    { temperature: celsius(80), force: 200 },
    { temperature: celsius(100), force: 400 },
    { temperature: celsius(130), force: 600 },
  ],
  rollLength: 50,
  typical: true,
  note: `${typicalNote} Below its window it holds with winding tension only.`,
} satisfies Partial<Tape>;

export const starterTapes = {
  'starter-tape-polyester-25': {
    name: 'Polyester shrink tape, 25 mm (1 in)',
    width: millimeters(25),
    ...polyester,
  },
  'starter-tape-polyester-12': {
    name: 'Polyester shrink tape, 12 mm (1/2 in)',
    width: millimeters(12),
    ...polyester,
  },
} satisfies Record<string, Tape>;
