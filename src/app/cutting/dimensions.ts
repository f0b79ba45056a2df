import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import { formatQuantity } from '#shared/units/format.ts';

/** Cloth is marked to a millimeter, or to a hundredth of an inch. */
const digits = () => (settings.value.units === 'metric' ? 0 : 2);

/** '948 mm', as it is set on a rule. */
export const dimension = (si: number): string => show(si, 'length', digits());

/** The same without its unit, where the unit stands beside it or over a column. */
export const bareDimension = (si: number): string =>
  formatQuantity(si, { quantity: 'length', system: settings.value.units, digits: digits(), bare: true });
