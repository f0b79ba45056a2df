import type { Mandrel } from '#shared/record/mandrel.ts';
import { millimeters } from './quantities.ts';

const note = 'Typical size. Measure yours where the first ply will lie.';

// Stock sizes of drawn aluminum tube, wall 0.065 in, and ground steel bar: common practice, no source.
export const starterMandrels = {
  'starter-mandrel-aluminum-25': {
    name: 'Aluminum tube, 25 mm (1 in)',
    material: 'aluminum',
    diameter: millimeters(25.4),
    length: millimeters(1830),
    wall: millimeters(1.65),
    typical: true,
    note,
  },
  'starter-mandrel-aluminum-38': {
    name: 'Aluminum tube, 38 mm (1 1/2 in)',
    material: 'aluminum',
    diameter: millimeters(38.1),
    length: millimeters(2440),
    wall: millimeters(1.65),
    typical: true,
    note,
  },
  'starter-mandrel-aluminum-50': {
    name: 'Aluminum tube, 50 mm (2 in)',
    material: 'aluminum',
    diameter: millimeters(50.8),
    length: millimeters(2440),
    wall: millimeters(1.65),
    typical: true,
    note,
  },
  'starter-mandrel-steel-16': {
    name: 'Ground steel bar, 16 mm (5/8 in)',
    material: 'steel',
    diameter: millimeters(15.88),
    length: millimeters(1830),
    typical: true,
    note,
  },
} as const satisfies Record<string, Mandrel>;
