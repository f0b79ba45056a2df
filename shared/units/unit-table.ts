/**
 * Every unit a field takes, with its size in SI: exact by definition.
 *
 * Yard and pound: international agreement of 1959 (24 FR 5348): 1 yd = 0.9144 m, 1 lb = 0.45359237 kg.
 * Gallon: 231 in3, NIST Handbook 44, appendix C. Standard gravity 9.80665 m/s2, thermochemical calorie 4.184 J,
 * degree Fahrenheit: NIST Special Publication 811 (2008), appendix B.
 */
const inch = 0.0254;
const foot = 12 * inch;
const yard = 3 * foot;
const pound = 0.45359237;
const ounce = pound / 16;
const gallon = 231 * inch ** 3;
const poundForce = pound * 9.80665;
const psi = poundForce / inch ** 2;
const rankine = 5 / 9;
const minute = 60;
const hour = 3600;
const degree = Math.PI / 180;

/** label as shown, SI per unit, other spellings (see unitKey for how they are compared), SI at zero */
type Row = readonly [label: string, factor: number, spellings?: string, zero?: number];

const rows = {
  mass: [
    ['g', 1e-3, 'gram gm'],
    ['kg', 1, 'kilo kilogram'],
    ['oz', ounce, 'ounce'],
    ['lb', pound, 'pound lbm #'],
  ],
  length: [
    ['mm', 1e-3],
    ['cm', 1e-2],
    ['m', 1, 'meter metre'],
    ['µm', 1e-6, 'um micron'],
    ['in', inch, '" inch inches'],
    ['ft', foot, "' foot feet"],
    ['yd', yard, 'yard'],
    ['thou', inch / 1000, 'mil'],
  ],
  area: [
    ['m²', 1],
    ['cm²', 1e-4],
    ['mm²', 1e-6],
    ['yd²', yard ** 2],
    ['ft²', foot ** 2],
    ['in²', inch ** 2],
  ],
  // Cloth is sold as '200 g' and '5.7 oz': grams a square meter and ounces a square yard (common practice, no source).
  arealWeight: [
    ['g/m²', 1e-3, 'gsm g gram'],
    ['kg/m²', 1],
    ['oz/yd²', ounce / yard ** 2, 'oz ounce osy'],
    ['oz/ft²', ounce / foot ** 2],
    ['lb/ft²', pound / foot ** 2, 'psf'],
  ],
  density: [
    ['g/cm³', 1e3, 'g/cc g/ml gcc sg'],
    ['kg/m³', 1],
    ['kg/L', 1e3],
    ['lb/gal', pound / gallon, 'ppg'],
    ['lb/ft³', pound / foot ** 3, 'pcf'],
    ['lb/in³', pound / inch ** 3, 'pci'],
  ],
  volume: [
    ['mL', 1e-6, 'cc cm3'],
    ['L', 1e-3, 'liter litre'],
    ['fl oz', gallon / 128, 'oz'],
    ['qt', gallon / 4, 'quart'],
    ['gal', gallon, 'gallon'],
  ],
  temperature: [
    ['°C', 1, 'celsius', 273.15],
    ['°F', rankine, 'fahrenheit', 459.67 * rankine],
    ['K', 1, 'kelvin'],
  ],
  temperatureDifference: [
    ['°C', 1, 'k kelvin celsius'],
    ['°F', rankine, 'fahrenheit'],
  ],
  duration: [
    ['s', 1, 'sec second'],
    ['min', minute, 'm minute'],
    ['h', hour, 'hr hour'],
    ['d', 24 * hour, 'day'],
  ],
  rampRate: [
    ['°C/min', 1 / minute, 'k/min c/minute'],
    ['°C/h', 1 / hour, 'k/h c/hr c/hour'],
    ['°C/s', 1, 'k/s c/sec'],
    ['°F/min', rankine / minute, 'f/minute'],
    ['°F/h', rankine / hour, 'f/hr f/hour'],
  ],
  fraction: [['%', 1e-2, 'percent pct %rh']],
  massRate: [
    ['g/min', 1e-3 / minute, 'g/minute'],
    ['kg/h', 1 / hour, 'kg/hr kg/hour'],
    ['oz/min', ounce / minute, 'oz/minute'],
    ['lb/h', pound / hour, 'lb/hr lb/hour'],
  ],
  linearDensity: [
    ['g/m', 1e-3],
    ['kg/m', 1],
    ['oz/ft', ounce / foot],
    ['lb/ft', pound / foot],
  ],
  specificEnergy: [
    ['J/g', 1e3, 'kj/kg'],
    ['Btu/lb', 2326],
  ],
  specificHeat: [
    ['J/(g·K)', 1e3, 'j/gk j/g/k j/(gk) kj/kgk'],
    ['Btu/(lb·°F)', 4186.8, 'btu/lbf'],
  ],
  equivalentWeight: [['g/eq', 1e-3, 'g/mol']],
  activationEnergy: [
    ['kJ/mol', 1e3],
    ['kcal/mol', 4184],
  ],
  force: [
    ['N', 1, 'newton'],
    ['kN', 1e3],
    ['lbf', poundForce, 'lb pound'],
  ],
  pressure: [
    ['MPa', 1e6, 'n/mm2'],
    ['GPa', 1e9],
    ['kPa', 1e3],
    ['Pa', 1],
    ['psi', psi, 'lbf/in2 lb/in2'],
    ['ksi', psi * 1e3],
    ['Msi', psi * 1e6],
  ],
  lineForce: [
    ['N/mm', 1e3],
    ['N/m', 1],
    ['lbf/in', poundForce / inch, 'lb/in ppi'],
    ['lbf/ft', poundForce / foot, 'lb/ft plf'],
  ],
  stiffness: [
    ['N·m²', 1],
    ['lbf·in²', poundForce * inch ** 2, 'lbin2'],
    ['lbf·ft²', poundForce * foot ** 2, 'lbft2'],
  ],
  moment: [
    ['N·m', 1],
    ['lbf·in', poundForce * inch, 'lbin inlb inlbf'],
    ['lbf·ft', poundForce * foot, 'lbft ftlb ftlbf'],
  ],
  angle: [
    ['°', degree],
    ['rad', 1, 'radian'],
  ],
  phr: [['phr', 1, 'pph part php']],
  count: [['', 1, 'x pc ply plies cup coat layer wrap film']],
  number: [['', 1]],
} satisfies Record<string, readonly Row[]>;

export type Dimension = keyof typeof rows;

export interface Unit {
  label: string;
  factor: number;
  zero: number;
}

/** The one spelling that units are compared in: '°C' is 'c', 'oz per sq. yd' and 'oz/yd²' are 'oz/yd2'. */
export function unitKey(text: string): string {
  return text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/^deg(?:ree)?s?\.? ?/, '°')
    .replace(/\bper\b/g, '/')
    .replace(
      /\b(sq|cu(?=[. b]))(?:uare|bic)?[. ]*([a-z]+)/g,
      (_, power, of) => of + (power === 'sq' ? '2' : '3'),
    )
    .replace(/[\s.^·⋅*-]/g, '')
    .replace(/°(?=[a-z])/g, '');
}

const dimensions = new Map<Dimension, Map<string, Unit>>();

/** Made when something of the dimension is first typed: the first screen needs none of its spellings. */
function unitsOf(dimension: Dimension): Map<string, Unit> {
  const made = dimensions.get(dimension);
  if (made) return made;
  const units = new Map<string, Unit>();
  for (const [label, factor, spellings, zero = 0] of rows[dimension] as readonly Row[]) {
    for (const name of [label, ...(spellings?.split(' ') ?? [])]) {
      units.set(unitKey(name), { label, factor, zero });
    }
  }
  dimensions.set(dimension, units);
  return units;
}

/** Plurals too, but not of one letter: '5 ms' is no minutes. */
export function findUnit(dimension: Dimension, key: string): Unit | undefined {
  const units = unitsOf(dimension);
  return units.get(key) ?? (/..s$/.test(key) ? units.get(key.slice(0, -1)) : undefined);
}

export function isUnitOfAnything(key: string): boolean {
  return Object.keys(rows).some((dimension) => findUnit(dimension as Dimension, key) !== undefined);
}

export function unitLabels(dimension: Dimension): string[] {
  return rows[dimension].map(([label]) => label);
}
