import type { Tape } from '#shared/record/tape.ts';
import { celsius, millimeters, typicalNote } from './quantities.ts';

// Width, thickness and shrink window of polyester tape: common practice, no source.
const polyester = {
  thickness: millimeters(0.05),
  shrinksFrom: celsius(65),
  pullsFrom: celsius(100),
  highestTemperature: celsius(150),
  typical: true,
  note: `${typicalNote} Below its window it holds with winding tension only.`,
} as const;

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
} as const satisfies Record<string, Tape>;
