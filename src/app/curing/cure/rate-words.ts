import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import { formatQuantity } from '#shared/units/format.ts';

/** Slower than this, degrees an hour say more than hundredths of a degree a minute, K/s */
const slow = 0.7 / 60;

/** The unit an hour's worth of degrees is told in. */
export const hourlyUnit = (): string => (settings.value.units === 'metric' ? '°C/h' : '°F/h');

/** '2 °C/min', '15 °C/h' */
export function showRate(rate: number): string {
  if (rate >= slow) return show(rate, 'rampRate');
  return formatQuantity(rate, {
    quantity: 'rampRate',
    system: settings.value.units,
    unit: hourlyUnit(),
  }).replace(/(\.\d*?)0+(?=\D)/, (_, decimals: string) => (decimals === '.' ? '' : decimals));
}
