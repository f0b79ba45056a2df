import type { Dimension } from './unit-table.ts';

export type UnitSystem = 'metric' | 'inchPound';

/** How a quantity is shown in one system. */
export interface Shown {
  unit: string;
  /** The most decimals shown when none are asked for. */
  decimals: number;
  example: string;
}

export interface QuantityDefinition {
  noun: string;
  dimension: Dimension;
  metric: Shown;
  inchPound: Shown;
  /** Read off a scale or a caliper, so 116.0 stays 116.0 and does not jump to 116. */
  keepsZeros: boolean;
  mayBeNegative: boolean;
}

const shown = (unit: string, decimals: number, example: string): Shown => ({ unit, decimals, example });

function define(
  noun: string,
  dimension: Dimension,
  metric: Shown,
  inchPound: Shown = metric,
  { keepsZeros = false, mayBeNegative = false } = {},
): QuantityDefinition {
  return { noun, dimension, metric, inchPound, keepsZeros, mayBeNegative };
}

const measured = { keepsZeros: true };
const signed = { mayBeNegative: true };
const percent = shown('%', 1, '10 %');

const quantities = {
  mass: define('a mass', 'mass', shown('g', 1, '116.1 g'), shown('oz', 2, '4.1 oz'), measured),
  // What hangs on a tube: kilograms and pounds, where cloth and resin are grams and ounces.
  hungMass: define('a weight', 'mass', shown('kg', 2, '12.5 kg'), shown('lb', 2, '27 lb')),
  // Of a dial or a rule beside a tube that bends.
  dial: define('a reading', 'length', shown('mm', 2, '12.4 mm'), shown('in', 3, '0.488 in'), signed),
  length: define('a length', 'length', shown('mm', 1, '1905 mm'), shown('in', 3, '6 ft 3 in')),
  // Tape on its reel: meters and feet, where other lengths are millimeters and inches.
  reelLength: define('a length', 'length', shown('m', 1, '50 m'), shown('ft', 1, '160 ft')),
  diameter: define('a diameter', 'length', shown('mm', 2, '38.1 mm'), shown('in', 3, '1 1/2 in')),
  thickness: define(
    'a thickness',
    'length',
    shown('mm', 2, '0.31 mm'),
    shown('thou', 1, '12 thou'),
    measured,
  ),
  area: define('an area', 'area', shown('m²', 3, '0.6 m²'), shown('yd²', 3, '0.72 yd²')),
  crossSection: define('a cross-section', 'area', shown('mm²', 0, '150 mm²'), shown('in²', 3, '0.23 in²')),
  arealWeight: define(
    'a cloth weight',
    'arealWeight',
    shown('g/m²', 0, '193 g/m²'),
    shown('oz/yd²', 2, '5.7 oz/yd²'),
  ),
  // Resin sheets print pounds a gallon, fiber sheets pounds a cubic inch (common practice, no source).
  density: define('a density', 'density', shown('g/cm³', 3, '1.16 g/cm³'), shown('lb/gal', 2, '9.6 lb/gal')),
  fiberDensity: define(
    'a density',
    'density',
    shown('g/cm³', 3, '1.78 g/cm³'),
    shown('lb/in³', 4, '0.0643 lb/in³'),
  ),
  volume: define('a volume', 'volume', shown('mL', 1, '100 mL'), shown('fl oz', 2, '3.4 fl oz')),
  temperature: define(
    'a temperature',
    'temperature',
    shown('°C', 1, '66 °C'),
    shown('°F', 1, '150 °F'),
    signed,
  ),
  temperatureDifference: define(
    'a temperature difference',
    'temperatureDifference',
    shown('°C', 1, '3 °C'),
    shown('°F', 1, '5 °F'),
    signed,
  ),
  duration: define('a length of time', 'duration', shown('min', 2, '90 min'), shown('min', 2, '1 h 30')),
  rampRate: define(
    'a heating rate',
    'rampRate',
    shown('°C/min', 2, '1.5 °C/min'),
    shown('°F/min', 2, '3 °F/min'),
    signed,
  ),
  fraction: define('a share', 'fraction', percent),
  humidity: define('a humidity', 'fraction', percent),
  massRate: define(
    'a working rate',
    'massRate',
    shown('g/min', 1, '12 g/min'),
    shown('oz/min', 2, '0.42 oz/min'),
  ),
  linearDensity: define(
    'a weight per length',
    'linearDensity',
    shown('g/m', 1, '120 g/m'),
    shown('oz/ft', 2, '1.3 oz/ft'),
  ),
  reactionHeat: define(
    'a heat of reaction',
    'specificEnergy',
    shown('J/g', 0, '400 J/g'),
    shown('Btu/lb', 0, '172 Btu/lb'),
  ),
  specificHeat: define(
    'a specific heat',
    'specificHeat',
    shown('J/(g·K)', 2, '2 J/(g·K)'),
    shown('Btu/(lb·°F)', 2, '0.48 Btu/(lb·°F)'),
  ),
  equivalentWeight: define('an equivalent weight', 'equivalentWeight', shown('g/eq', 1, '189 g/eq')),
  activationEnergy: define('an activation energy', 'activationEnergy', shown('kJ/mol', 1, '55 kJ/mol')),
  force: define('a force', 'force', shown('N', 1, '40 N'), shown('lbf', 2, '9 lbf')),
  stress: define('a stress', 'pressure', shown('MPa', 2, '350 MPa'), shown('psi', 0, '50 ksi')),
  strength: define('a strength', 'pressure', shown('MPa', 1, '600 MPa'), shown('ksi', 1, '90 ksi')),
  pressure: define('a pressure', 'pressure', shown('kPa', 0, '80 kPa'), shown('psi', 1, '12 psi')),
  pull: define(
    'a pull for each width',
    'lineForce',
    shown('N/mm', 2, '0.4 N/mm'),
    shown('lbf/in', 1, '2.3 lbf/in'),
  ),
  lineLoad: define(
    'a load for each length',
    'lineForce',
    shown('N/m', 1, '60 N/m'),
    shown('lbf/ft', 2, '4 lbf/ft'),
    signed,
  ),
  modulus: define('a modulus', 'pressure', shown('GPa', 2, '70 GPa'), shown('Msi', 3, '10 Msi')),
  stiffness: define(
    'a bending stiffness',
    'stiffness',
    shown('N·m²', 1, '850 N·m²'),
    shown('lbf·in²', 0, '300000 lbf·in²'),
  ),
  moment: define('a moment', 'moment', shown('N·m', 1, '120 N·m'), shown('lbf·in', 0, '1060 lbf·in')),
  angle: define('an angle', 'angle', shown('°', 1, '45°'), undefined, signed),
  phr: define('a mix in parts per hundred of resin', 'phr', shown('phr', 2, '28 phr')),
  count: define('a count', 'count', shown('', 0, '3')),
  number: define('a number', 'number', shown('', 3, '3.5'), undefined, signed),
} satisfies Record<string, QuantityDefinition>;

export type Quantity = keyof typeof quantities;

export const allQuantities = Object.keys(quantities) as Quantity[];

export function definitionOf(quantity: Quantity): QuantityDefinition {
  return quantities[quantity];
}

/** The unit a field shows, and reads when none is written. */
export function unitFor(quantity: Quantity, system: UnitSystem): string {
  return definitionOf(quantity)[system].unit;
}
