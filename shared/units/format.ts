import { definitionOf, type Quantity, type UnitSystem } from './quantity.ts';
import { formatDuration, noFigure } from './time.ts';
import { findUnit, type Unit, unitKey } from './unit-table.ts';

export interface FormatOptions {
  quantity: Quantity;
  system: UnitSystem;
  /** Decimals, kept even when they are zeros. Without it: the quantity's own, zeros dropped where none were measured. */
  digits?: number | undefined;
  /** Another unit than the quantity's own, by its label: 'kg', 'ft', 's'. */
  unit?: string | undefined;
  /** The figure without its unit, for a field that shows the unit beside it. Always in the field's unit. */
  bare?: boolean | undefined;
}

export interface SplitQuantity {
  figure: string;
  unit: string;
}

const space = '\u00a0';
/** From 10 kg on, grams and ounces grow too long to read: kilograms and pounds. */
const largeMass = 10;
const mostShown = 1e21;

/** Decimal figure with a true minus and no '−0'. Twelve digits first, so that 116.04999999999998 rounds as 116.05. */
export function formatNumber(value: number, digits: number, dropZeros = false): string {
  if (!(Math.abs(value) < mostShown)) return noFigure;
  const scale = 10 ** digits;
  const size = Math.round(Number((Math.abs(value) * scale).toPrecision(12))) / scale;
  const fixed = size.toFixed(digits);
  const short = dropZeros && fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed;
  return value < 0 && size > 0 ? `−${short}` : short;
}

interface Choice {
  unit: Unit;
  decimals: number;
}

function choose(si: number, { quantity, system, unit: wanted, bare }: FormatOptions): Choice {
  const definition = definitionOf(quantity);
  const { unit: usual, decimals } = definition[system];
  const find = (label: string): Unit => {
    const unit = findUnit(definition.dimension, unitKey(label));
    if (!unit) throw new RangeError(`unit must be one for ${quantity}, got ${label}`);
    return unit;
  };
  if (wanted !== undefined) {
    const unit = find(wanted);
    const shift = Math.round(Math.log10(unit.factor / find(usual).factor));
    return { unit, decimals: Math.min(Math.max(decimals + shift, 0), 9) };
  }
  const large = quantity === 'mass' && !bare && Math.abs(si) >= largeMass;
  return large
    ? { unit: find(system === 'metric' ? 'kg' : 'lb'), decimals: 2 }
    : { unit: find(usual), decimals };
}

/** The value in the unit it is shown in, and that unit: for steps and rules, not for text. */
export function inUnits(
  si: number,
  options: FormatOptions,
): { value: number; unit: string; decimals: number } {
  const { unit, decimals } = choose(si, options);
  return { value: (si - unit.zero) / unit.factor, unit: unit.label, decimals: options.digits ?? decimals };
}

/** Figure and unit apart, for a big figure with a small unit. `1 h 08` is a figure with no unit. */
export function splitQuantity(si: number, options: FormatOptions): SplitQuantity {
  const { quantity, digits, unit: wanted, bare } = options;
  if (quantity === 'duration' && wanted === undefined && digits === undefined && !bare) {
    const text = formatDuration(si);
    const [, figure = text, unit = ''] = /^(\S+)\s([a-z]+)$/.exec(text) ?? [];
    return { figure, unit };
  }
  const { value, unit, decimals } = inUnits(si, options);
  const dropZeros = digits === undefined && !definitionOf(quantity).keepsZeros;
  return { figure: formatNumber(value, decimals, dropZeros), unit };
}

/** `116.1 g`, `0.31 mm`, `66 °C`, `1 h 08`, `54.2 %`, with a no-break space. Always reads back through parseQuantity. */
export function formatQuantity(si: number, options: FormatOptions): string {
  const { figure, unit } = splitQuantity(si, options);
  if (figure === noFigure || unit === '') return figure;
  // A bare 0.5 in a share would be read as 50 %: small shares keep their sign.
  const isSmallShare =
    unit === '%' && Math.abs(Number(figure.replace('−', '-'))) <= 1 && Number(figure) !== 0;
  if (options.bare && !isSmallShare) return figure;
  return unit === '°' ? figure + unit : figure + space + unit;
}

/** Decimals that show every step of a scale: a step of 0.1 g needs one in grams and three in ounces. */
export function decimalsForScaleStep(stepKg: number, system: UnitSystem): number {
  if (!(stepKg > 0)) return definitionOf('mass')[system].decimals;
  const { value } = inUnits(stepKg, { quantity: 'mass', system, bare: true });
  return Math.min(Math.max(Math.ceil(-Math.log10(value) - 1e-9), 0), 4);
}
