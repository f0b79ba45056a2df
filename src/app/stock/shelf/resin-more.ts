import type { QuantityOptions } from '#app/parts/quantity-input.ts';
import { show } from '#app/state/show.ts';
import { celsius, hours, minutes } from '#shared/reference/quantities.ts';
import type { Field } from './fields.ts';

const heat: QuantityOptions = { quantity: 'temperature', min: celsius(-20), max: celsius(400) };
const span: QuantityOptions = { quantity: 'duration', min: minutes(1), max: hours(24 * 60) };
const equivalent: QuantityOptions = { quantity: 'equivalentWeight', min: 0.01, max: 5, optional: true };
const cup: QuantityOptions = { quantity: 'mass', min: 0.005, max: 5 };
const more = true;

export const lifeEndWords = [
  { value: 'gel', label: 'It gels' },
  { value: 'viscosityDoubled', label: 'It is twice as thick' },
  { value: 'peakExotherm', label: 'It is hottest' },
];

/** What a data sheet may give besides: none of it has to be known. */
export const moreOfResin: readonly Field[] = [
  {
    as: 'points',
    more,
    path: 'morePotLives',
    label: 'Further pot lives',
    add: 'Add a pot life',
    hint: () =>
      'The same mass at another temperature tells how it follows heat; another mass at the same temperature checks the heat of a cup.',
    ends: lifeEndWords,
    of: [
      { key: 'time', label: 'Pot life', options: { ...span, max: hours(48) } },
      { key: 'mass', label: 'On', options: cup },
      { key: 'temperature', label: 'At', options: heat },
    ],
  },
  {
    as: 'number',
    more,
    path: 'thinFilm.time',
    label: 'Working time in a thin film',
    options: { ...span, optional: true },
    hint: () => 'Left empty, twice the pot life',
  },
  {
    as: 'number',
    more,
    path: 'thinFilm.temperature',
    label: 'Thin film measured at',
    options: { ...heat, optional: true },
  },
  {
    as: 'points',
    more,
    path: 'gelTimes',
    label: 'Gel times',
    add: 'Add a gel time',
    of: [
      { key: 'time', label: 'Gels after', options: span },
      { key: 'temperature', label: 'At', options: heat },
      { key: 'mass', label: 'On (may stay empty)', options: { ...cup, optional: true } },
    ],
  },
  {
    as: 'points',
    more,
    path: 'glassAfter',
    label: 'Tg after a cure',
    add: 'Add a Tg',
    of: [
      { key: 'glassTransition', label: 'Tg', options: heat },
      { key: 'temperature', label: 'After a cure at', options: heat },
      { key: 'time', label: 'For', options: span },
    ],
  },
  ...(['weight', 'volume'] as const).flatMap((by): Field[] => [
    {
      as: 'number',
      more,
      path: 'epoxideEquivalent',
      label: 'Epoxide equivalent weight (EEW)',
      options: equivalent,
      only: ['ratio.by', by],
      hint: () => 'Usual resins 175 to 195 g/eq',
    },
    {
      as: 'number',
      more,
      path: 'amineEquivalent',
      label: 'Amine hydrogen equivalent weight (AHEW)',
      options: equivalent,
      only: ['ratio.by', by],
      hint: () => 'Usual hardeners 20 to 100 g/eq',
    },
  ]),
  {
    as: 'number',
    more,
    path: 'reactionHeat',
    label: 'Heat of reaction',
    options: { quantity: 'reactionHeat', min: 10_000, max: 800_000, optional: true },
    hint: () => `Of the mix; usual ${show(400_000, 'reactionHeat')}`,
  },
  {
    as: 'number',
    more,
    path: 'specificHeat',
    label: 'Specific heat',
    options: { quantity: 'specificHeat', min: 500, max: 5000, optional: true },
    hint: () => `Of the liquid; usual ${show(2000, 'specificHeat')}`,
  },
];
