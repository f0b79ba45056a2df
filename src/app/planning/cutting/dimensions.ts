import { settings } from '#app/state/settings.ts';
import { formatQuantity } from '#shared/units/format.ts';

const inch = 0.0254;
const options = (digits?: number) => ({
  quantity: 'length' as const,
  system: settings.value.units,
  ...(digits !== undefined && { digits }),
});

/** Cloth is marked to a millimeter, or to a hundredth of an inch. */
const digits = () => (settings.value.units === 'metric' ? 0 : 2);

/** '948 mm', as it is set on a rule. */
export const dimension = (si: number): string => formatQuantity(si, options(digits()));

/** The same without its unit, where the unit stands beside it or over a column. */
export const bareDimension = (si: number): string => formatQuantity(si, { ...options(digits()), bare: true });

/** An even figure, as it is chosen from: '250', '6'. */
export const evenDimension = (si: number): string => formatQuantity(si, { ...options(), bare: true });

/** What the bare ones are in, for a sentence. */
export const unitWord = (): string => (settings.value.units === 'metric' ? 'millimeters' : 'inches');

/** Distances at which cloth is marked, m */
export const spacings = {
  metric: [0.05, 0.1, 0.25, 0.5, 1],
  inchPound: [2, 4, 6, 12, 24, 48].map((n) => n * inch),
};
