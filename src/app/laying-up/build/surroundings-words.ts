import { show } from '#app/state/show.ts';
import type { Quantity } from '#shared/units/quantity.ts';
import { type Concern, coldUnder, dampFrom, judgeSurroundings, type Surroundings } from './surroundings.ts';

const degrees = (kelvin: number) => show(kelvin, 'temperatureDifference', 1);

function nearDew(thing: string, { above, least }: { above: number; least: number }): string {
  const stands = above < 0 ? `${degrees(-above)} below` : `${degrees(above)} above`;
  const settles = above < 0 ? 'settles' : 'may settle';
  return `${thing} is ${stands} the dew point: water ${settles} on it. Warm it to ${show(least, 'temperature', 1)} or more, or wait.`;
}

export function concernSentence(concern: Concern): string {
  switch (concern.what) {
    case 'mandrelNearDew':
      return nearDew('Mandrel', concern);
    case 'resinNearDew':
      return nearDew('Resin', concern);
    case 'damp':
      return `Air holds ${show(concern.humidity, 'humidity', 0)} of the water it can, over ${show(dampFrom, 'humidity', 0)}: hardener takes it up and the surface turns greasy. Dry the air, or wait.`;
    case 'cold':
      return `Shop is ${show(concern.air, 'temperature', 1)}, under ${show(coldUnder, 'temperature')}: resin stays thick and wets badly. Warm the shop, or wait.`;
  }
}

export const surroundingsFields = ['air', 'resin', 'mandrel', 'humidity'] as const;
export type SurroundingsField = (typeof surroundingsFields)[number];

export const fieldWords: Record<SurroundingsField, string> = {
  air: 'Air',
  resin: 'Resin',
  mandrel: 'Mandrel',
  humidity: 'Humidity',
};

export const quantityOf = (field: SurroundingsField): Quantity =>
  field === 'humidity' ? 'humidity' : 'temperature';

/** 'Air 20 °C · humidity 65 % · dew point 13.2 °C' */
export function surroundingsLine(read: Surroundings): string {
  const parts = surroundingsFields.flatMap((field) => {
    const value = read[field];
    return value === undefined
      ? []
      : [`${fieldWords[field].toLowerCase()} ${show(value, quantityOf(field))}`];
  });
  const { dewPoint } = judgeSurroundings(read);
  if (dewPoint !== undefined) parts.push(`dew point ${show(dewPoint, 'temperature', 1)}`);
  const line = parts.join(' · ');
  return line.charAt(0).toUpperCase() + line.slice(1);
}

/** A plain figure is kept with the unit it was read in. */
export const typedWithUnit = (text: string, unit: string): string =>
  /[^\d.,\s+−-]/.test(text) ? text : `${text} ${unit}`;
