import type { Cloth } from '#shared/record/cloth.ts';
import { fiberDensities } from './fiber-densities.ts';
import { gramsPerSquareMeter, millimeters } from './quantities.ts';

const note =
  'Typical values. Weigh a square of your own cloth, and check the fiber density on its data sheet.';

const carbon = { fiber: 'carbon', fiberDensity: fiberDensities.carbon } as const;
const glass = { fiber: 'glass', fiberDensity: fiberDensities.glass } as const;
const aramid = { fiber: 'aramid', fiberDensity: fiberDensities.aramid } as const;

// Areal weights and roll widths are what these cloths are commonly sold as: common practice, no source.
// ASTM D4389 lets woven roving be 10 % off its nominal weight, hence the note.
export const starterCloths = {
  'starter-cloth-carbon-plain-193': {
    name: 'Carbon, plain weave, 193 g/m2 (5.7 oz/yd2)',
    ...carbon,
    arealWeight: gramsPerSquareMeter(193),
    rollWidth: millimeters(1270),
    typical: true,
    note,
  },
  'starter-cloth-carbon-twill-200': {
    name: 'Carbon, 2x2 twill, 200 g/m2 (5.9 oz/yd2)',
    ...carbon,
    arealWeight: gramsPerSquareMeter(200),
    rollWidth: millimeters(1000),
    typical: true,
    note,
  },
  'starter-cloth-carbon-unidirectional-150': {
    name: 'Carbon, unidirectional, 150 g/m2 (4.4 oz/yd2)',
    ...carbon,
    weave: 'unidirectional',
    arealWeight: gramsPerSquareMeter(150),
    rollWidth: millimeters(300),
    typical: true,
    note,
  },
  'starter-cloth-glass-plain-163': {
    name: 'Glass, plain weave, 163 g/m2 (4.8 oz/yd2)',
    ...glass,
    arealWeight: gramsPerSquareMeter(163),
    rollWidth: millimeters(1000),
    typical: true,
    note,
  },
  'starter-cloth-glass-plain-100': {
    name: 'Glass, plain weave, 100 g/m2 (2.9 oz/yd2)',
    ...glass,
    arealWeight: gramsPerSquareMeter(100),
    rollWidth: millimeters(1000),
    typical: true,
    note,
  },
  'starter-cloth-aramid-170': {
    name: 'Aramid, plain weave, 170 g/m2 (5.0 oz/yd2)',
    ...aramid,
    arealWeight: gramsPerSquareMeter(170),
    rollWidth: millimeters(1000),
    typical: true,
    note: `${note} Aramid takes up water: dry it before it is weighed.`,
  },
} as const satisfies Record<string, Cloth>;
