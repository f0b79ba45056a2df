import type { QuantityOptions } from '#app/parts/quantity-input.ts';
import { show } from '#app/state/show.ts';
import { celsius, hours, minutes } from '#shared/reference/quantities.ts';
import type { Field } from './fields.ts';
import { lifeEndWords } from './resin-more.ts';

const liquid: QuantityOptions = { quantity: 'density', min: 500, max: 3000 };
const parts: QuantityOptions = { quantity: 'number', positive: true, max: 1000 };
const equivalent: QuantityOptions = { quantity: 'equivalentWeight', min: 0.01, max: 5 };
const heat: QuantityOptions = { quantity: 'temperature', min: celsius(-20), max: celsius(400) };

const byWeight = ['ratio.by', 'weight'] as const;
const byVolume = ['ratio.by', 'volume'] as const;
const byEquivalents = ['ratio.by', 'equivalents'] as const;

/** A resin system in the order in which a data sheet is read. */
export const resinFields: readonly Field[] = [
  {
    as: 'text',
    path: 'hardener',
    label: 'Hardener',
    example: 'SLOW',
    hint: () => 'As it stands on the can: SLOW, FAST. Shown wherever it is poured',
  },
  { as: 'text', path: 'lot', label: 'Lot', optional: true, hint: () => 'Of the cans in use; may stay empty' },
  {
    as: 'word',
    path: 'ratio.by',
    label: 'The data sheet gives the ratio',
    words: [
      { value: 'weight', label: 'By weight' },
      { value: 'volume', label: 'By volume' },
      { value: 'equivalents', label: 'By equivalents' },
    ],
  },
  {
    as: 'number',
    path: 'ratio.phr',
    label: 'Hardener to 100 of resin',
    options: { quantity: 'phr', positive: true, max: 500 },
    only: byWeight,
    hint: () => 'By weight; laminating epoxies 20 to 45',
  },
  { as: 'number', path: 'ratio.resinParts', label: 'Parts of resin', options: parts, only: byVolume },
  {
    as: 'number',
    path: 'ratio.hardenerParts',
    label: 'Parts of hardener',
    options: parts,
    only: byVolume,
    hint: () => 'By volume: 3 to 1, 2 to 1',
  },
  {
    as: 'number',
    path: 'ratio.epoxide',
    label: 'Epoxide equivalent weight (EEW)',
    options: equivalent,
    only: byEquivalents,
    hint: () => 'Usual resins 175 to 195 g/eq',
  },
  {
    as: 'number',
    path: 'ratio.amineHydrogen',
    label: 'Amine hydrogen equivalent weight (AHEW)',
    options: equivalent,
    only: byEquivalents,
    hint: () => 'Usual hardeners 20 to 100 g/eq',
  },
  {
    as: 'number',
    path: 'resinDensity',
    label: 'Density of the resin',
    options: liquid,
    hint: () => `Usual ${show(1150, 'density')}`,
  },
  {
    as: 'number',
    path: 'hardenerDensity',
    label: 'Density of the hardener',
    options: liquid,
    hint: () => `Usual ${show(970, 'density')}`,
  },
  {
    as: 'number',
    path: 'curedDensity',
    label: 'Density when cured',
    options: liquid,
    hint: () => `Usual ${show(1180, 'density')}; fiber volume is reckoned with it`,
  },
  {
    as: 'number',
    path: 'tolerance',
    label: 'A cup may be off by',
    options: { quantity: 'fraction', min: 0.001, max: 0.25 },
    hint: () => 'Of the hardener; usual 2 to 5 %',
  },
  {
    as: 'number',
    path: 'largestCup',
    label: 'Largest cup',
    options: { quantity: 'mass', min: 0.005, max: 5 },
    hint: () => 'A deep cup heats itself and kicks early: not more than its pot life was measured on',
  },
  {
    as: 'number',
    path: 'potLife.time',
    label: 'Pot life',
    options: { quantity: 'duration', min: minutes(1), max: hours(48) },
    hint: () => '20 min, 1 h 15',
  },
  {
    as: 'word',
    path: 'potLife.ends',
    label: 'It ends when',
    words: lifeEndWords,
    hint: () => 'Of a time to gel or to the hottest, 0.65 can be worked',
  },
  {
    as: 'number',
    path: 'potLife.mass',
    label: 'Measured on',
    options: { quantity: 'mass', min: 0.005, max: 5 },
    hint: () => `The data sheet’s cup, usual ${show(0.1, 'mass', 0)} to ${show(0.15, 'mass', 0)}`,
  },
  {
    as: 'number',
    path: 'potLife.temperature',
    label: 'Measured at',
    options: heat,
    hint: () => `Usual ${show(celsius(25), 'temperature', 0)}`,
  },
  { as: 'curePoints', path: 'curePoints', label: 'Times for full cure' },
  {
    as: 'number',
    path: 'highestTemperature',
    label: 'Stands up to',
    options: { ...heat, optional: true },
    hint: () => 'May stay empty',
  },
  {
    as: 'number',
    path: 'glassTransition',
    label: 'Softens at, at best (Tg)',
    options: { ...heat, optional: true },
    hint: () => 'Its highest glass transition; may stay empty',
  },
];
