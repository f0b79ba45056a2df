import type { Core } from '#shared/record/core.ts';
import { celsius, gramsPerSquareMeter, millimeters } from './quantities.ts';

const note =
  'Typical values. Weigh a piece of your own sheet, and check on its data sheet where it begins to soften.';

// Densities, thicknesses and softening points are those these foams are commonly sold with, and a cut face
// drinking 100 to 300 g/m2 is common practice, no source. The finer the cells, the less it drinks.
export const starterCores = {
  'starter-core-polystyrene-6': {
    name: 'Extruded polystyrene, 6 mm (1/4 in)',
    density: 32,
    thickness: millimeters(6),
    faceResin: gramsPerSquareMeter(150),
    highestTemperature: celsius(70),
    typical: true,
    note: `${note} Polyester and vinylester resins, and many solvents, dissolve it; epoxy does not.`,
  },
  'starter-core-pvc-3': {
    name: 'Cross-linked PVC, 60 kg/m3, 3 mm (1/8 in)',
    density: 60,
    thickness: millimeters(3),
    faceResin: gramsPerSquareMeter(250),
    highestTemperature: celsius(75),
    typical: true,
    note,
  },
  'starter-core-pvc-5': {
    name: 'Cross-linked PVC, 80 kg/m3, 5 mm (3/16 in)',
    density: 80,
    thickness: millimeters(5),
    faceResin: gramsPerSquareMeter(200),
    highestTemperature: celsius(80),
    typical: true,
    note,
  },
  'starter-core-imide-3': {
    name: 'Imide foam, 52 kg/m3, 3 mm (1/8 in)',
    density: 52,
    thickness: millimeters(3),
    faceResin: gramsPerSquareMeter(120),
    highestTemperature: celsius(175),
    typical: true,
    note: `${note} It takes up water: dry it before a hot cure.`,
  },
} as const satisfies Record<string, Core>;
