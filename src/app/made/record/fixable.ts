import { gaveWayWords } from '#app/laying-up/proof/words.ts';
import type { QuantityOptions } from '#app/parts/quantity-input.ts';
import type { Entry } from '#shared/record/entry.ts';
import { gaveWays } from '#shared/record/proof.ts';
import { outcomeWords } from './say-entry.ts';

/** A number of an entry that can be put right. */
export interface NumberField {
  key: string;
  label: string;
  options: QuantityOptions;
}

/** A word of an entry that can be put right. */
export interface WordField {
  key: string;
  label: string;
  words: readonly { value: string; label: string }[];
}

export interface Fixable {
  numbers: readonly NumberField[];
  words: readonly WordField[];
  text?: { key: string; label: string };
}

const mass: QuantityOptions = { quantity: 'mass', min: 0, max: 20 };
const temperature: QuantityOptions = { quantity: 'temperature', min: 173.15, max: 773.15 };
const optional = (o: QuantityOptions): QuantityOptions => ({ ...o, optional: true });
const asWords = (values: readonly (keyof typeof outcomeWords)[]) =>
  values.map((value) => ({ value, label: outcomeWords[value] }));

const nothing: Fixable = { numbers: [], words: [] };

const down: QuantityOptions = { quantity: 'dial', min: -10, max: 10 };

const proofNumbers: readonly NumberField[] = [
  { key: 'mass', label: 'Weight hung', options: { quantity: 'hungMass', positive: true, max: 1000 } },
  { key: 'deflection', label: 'Went down by', options: down },
  { key: 'set', label: 'Stayed down by, weight off', options: optional(down) },
];

const squeezeNumbers: readonly NumberField[] = [
  { key: 'force', label: 'Squeezed with', options: { quantity: 'force', positive: true, max: 1e4 } },
  {
    key: 'length',
    label: 'Over so much of its length',
    options: { quantity: 'length', positive: true, max: 15 },
  },
  { key: 'narrower', label: 'Narrower by', options: { quantity: 'dial', positive: true, max: 1 } },
];

const gaveWayNumbers: readonly NumberField[] = [
  { key: 'mass', label: 'Weight that hung', options: { quantity: 'hungMass', positive: true, max: 1000 } },
  {
    key: 'place',
    label: 'Where it gave way, from end 0',
    options: optional({ quantity: 'length', min: 0, max: 15 }),
  },
];
const asGaveWay = gaveWays.map((value) => ({ value, label: gaveWayWords[value] }));

/** What of an entry can be put right besides its time. What is not here is struck out and entered anew. */
export function fixable(entry: Entry): Fixable {
  switch (entry.kind) {
    case 'weight':
      return { ...nothing, numbers: [{ key: 'mass', label: 'The scale showed', options: mass }] };
    case 'pour':
      return {
        ...nothing,
        numbers: [{ key: 'mass', label: 'Poured', options: { ...mass, positive: true } }],
      };
    case 'reading':
      return { ...nothing, numbers: [{ key: 'temperature', label: 'Temperature', options: temperature }] };
    case 'filmCount':
      return {
        ...nothing,
        numbers: [{ key: 'count', label: 'Films', options: { quantity: 'count', min: 0, max: 99 } }],
      };
    case 'clockStarted':
      return {
        ...nothing,
        numbers: [
          {
            key: 'lasts',
            label: 'Lasts',
            options: { quantity: 'duration', positive: true, max: 30 * 86400 },
          },
        ],
      };
    case 'measurement':
      return {
        ...nothing,
        numbers: [
          { key: 'station', label: 'From end 0', options: { quantity: 'length', min: 0, max: 15 } },
          { key: 'value', label: 'Measured', options: { quantity: 'diameter', positive: true, max: 15 } },
        ],
      };
    case 'proofLoad':
      return { ...nothing, numbers: proofNumbers };
    case 'squeezeTest':
      return { ...nothing, numbers: squeezeNumbers };
    case 'gaveWay':
      return { numbers: gaveWayNumbers, words: [{ key: 'how', label: 'What it did', words: asGaveWay }] };
    case 'edgeMark':
      return {
        ...nothing,
        numbers: [
          { key: 'station', label: 'From end 0', options: { quantity: 'length', min: 0, max: 15 } },
          {
            key: 'off',
            label: 'Further round than the mark',
            options: { quantity: 'length', min: -1, max: 1 },
          },
        ],
      };
    case 'surroundings':
      return {
        ...nothing,
        numbers: [
          { key: 'air', label: 'Air', options: optional(temperature) },
          { key: 'resin', label: 'Resin', options: optional(temperature) },
          { key: 'mandrel', label: 'Mandrel', options: optional(temperature) },
          { key: 'humidity', label: 'Humidity', options: optional({ quantity: 'humidity', min: 0, max: 1 }) },
        ],
      };
    case 'check':
      return {
        ...nothing,
        words: [
          {
            key: 'outcome',
            label: 'It was',
            words: asWords(['gelled', 'notYet', 'tacky', 'dry', 'soft', 'hard']),
          },
        ],
      };
    case 'disposition':
      return {
        numbers: [],
        words: [{ key: 'outcome', label: 'Judged', words: asWords(['good', 'rework', 'scrap']) }],
        text: { key: 'text', label: 'Why' },
      };
    case 'photo':
      return { ...nothing, text: { key: 'caption', label: 'Words to it' } };
    case 'note':
      return { ...nothing, text: { key: 'text', label: 'Note' } };
    default:
      return nothing;
  }
}
