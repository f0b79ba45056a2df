import type { QuantityOptions } from '#app/parts/quantity-input.ts';
import { show } from '#app/state/show.ts';
import { fibers, weaves } from '#shared/record/cloth.ts';
import { mandrelMaterials } from '#shared/record/mandrel.ts';
import { releaseKinds } from '#shared/record/release-system.ts';
import { fiberDensities } from '#shared/reference/fiber-densities.ts';
import { celsius } from '#shared/reference/quantities.ts';
import type { ItemType } from './kinds.ts';
import { resinFields } from './resin-fields.ts';
import { moreOfResin } from './resin-more.ts';

interface Base {
  /** Where it stands in the body: 'arealWeight', 'potLife.time'. */
  path: string;
  label: string;
  /** Made when shown, so that typical values stand in the builder's units. */
  hint?: () => string;
  /** Asked only while another field says this: ['ratio.by', 'weight']. */
  only?: readonly [path: string, value: string];
  /** Stands in the part that is opened for it. */
  more?: boolean;
}
export interface NumberField extends Base {
  as: 'number';
  options: QuantityOptions;
}
export interface WordField extends Base {
  as: 'word';
  words: readonly { value: string; label: string }[];
}
export interface TextLine extends Base {
  as: 'text';
  optional?: boolean;
  long?: boolean;
  /** What to write when it is missing. */
  example?: string;
}
/** Times at temperature, as many as the data sheet gives. */
export interface CurePointsField extends Base {
  as: 'curePoints';
}
/** What a tape pulls at a temperature, as often as it was measured. */
export interface PullPointsField extends Base {
  as: 'pullPoints';
}
/** Points of a data sheet, as many as it gives. */
export interface PointsField extends Base {
  as: 'points';
  add: string;
  of: readonly { key: string; label: string; options: QuantityOptions }[];
  /** What each is measured to. */
  ends?: readonly { value: string; label: string }[];
}
export type Field = PointsField | NumberField | WordField | TextLine | CurePointsField | PullPointsField;

const capital = (word: string) => word.charAt(0).toUpperCase() + word.slice(1);
export const wordsOf = (values: readonly string[], labels: Record<string, string> = {}) =>
  values.map((value) => ({ value, label: labels[value] ?? capital(value) }));

const name = (example: string): TextLine => ({ as: 'text', path: 'name', label: 'Name', example });
const note: TextLine = { as: 'text', path: 'note', label: 'Note', optional: true, long: true };

/** Anything a shop's oven or iron reaches, K */
export const heat: QuantityOptions = { quantity: 'temperature', min: celsius(0), max: celsius(500) };

export const itemFields: Record<ItemType, readonly Field[]> = {
  cloth: [
    name('Carbon twill, 200 g'),
    { as: 'word', path: 'fiber', label: 'Fiber', words: wordsOf(fibers) },
    {
      as: 'number',
      path: 'arealWeight',
      label: 'Weight of the cloth',
      options: { quantity: 'arealWeight', min: 0.01, max: 5 },
      hint: () =>
        `Weigh a square of it; usual for tubes ${show(0.1, 'arealWeight')} to ${show(0.3, 'arealWeight')}`,
    },
    {
      as: 'number',
      path: 'fiberDensity',
      label: 'Density of the fiber',
      options: { quantity: 'fiberDensity', min: 500, max: 10_000 },
      hint: () =>
        `Carbon ${show(fiberDensities.carbon, 'fiberDensity')}, glass ${show(fiberDensities.glass, 'fiberDensity')}, aramid ${show(fiberDensities.aramid, 'fiberDensity')}`,
    },
    {
      as: 'word',
      path: 'weave',
      label: 'Fibers run',
      words: wordsOf(weaves, { woven: 'Both ways', unidirectional: 'One way' }),
    },
    {
      as: 'number',
      path: 'rollWidth',
      label: 'Width of the roll',
      options: { quantity: 'length', min: 0.01, max: 5, optional: true },
      hint: () => 'May stay empty',
    },
    {
      as: 'number',
      path: 'price',
      label: 'Price of a square meter',
      options: { quantity: 'number', positive: true, max: 100_000, optional: true },
      hint: () => 'In your own money; may stay empty',
    },
    note,
  ],
  resin: [name('Laminating epoxy with SLOW'), ...resinFields, ...moreOfResin, note],
  release: [
    name('Film sleeve and spray'),
    {
      as: 'word',
      path: 'kind',
      label: 'Kind',
      words: wordsOf(releaseKinds, {
        filmSleeve: 'Film sleeve',
        waxAndPva: 'Wax and PVA',
        semiPermanent: 'Semi-permanent',
      }),
    },
    {
      as: 'number',
      path: 'highestTemperature',
      label: 'Stands up to',
      options: heat,
      hint: () =>
        `On the part: polyester film ${show(celsius(82), 'temperature', 0)}, wax and PVA ${show(celsius(80), 'temperature', 0)}`,
    },
    {
      as: 'number',
      path: 'buildUp',
      label: 'Adds to the diameter',
      options: { quantity: 'thickness', min: 0, max: 0.01 },
      hint: () =>
        `One wrap of film adds it twice, about ${show(0.0001, 'thickness')}; 0 when it adds nothing`,
    },
    note,
  ],
  tape: [
    name('Polyester shrink tape, 25 mm'),
    {
      as: 'number',
      path: 'width',
      label: 'Width',
      options: { quantity: 'length', min: 0.003, max: 0.2 },
      hint: () => `Usual ${show(0.0127, 'length')} to ${show(0.0254, 'length')}`,
    },
    {
      as: 'number',
      path: 'thickness',
      label: 'Thickness',
      options: { quantity: 'thickness', min: 5e-6, max: 1e-3 },
      hint: () => `Usual ${show(5e-5, 'thickness')}`,
    },
    { as: 'number', path: 'shrinksFrom', label: 'Begins to shrink at', options: heat },
    {
      as: 'number',
      path: 'pullsFrom',
      label: 'Pulls hardest from',
      options: heat,
      hint: () => `Polyester: from about ${show(celsius(100), 'temperature', 0)}`,
    },
    {
      as: 'number',
      path: 'highestTemperature',
      label: 'Stands up to',
      options: heat,
      hint: () => 'In the air of the oven',
    },
    {
      as: 'number',
      path: 'rollLength',
      label: 'Length of a roll',
      options: { quantity: 'reelLength', min: 1, max: 5000, optional: true },
      hint: () => 'May stay empty',
    },
    { as: 'pullPoints', path: 'shrinkForce', label: 'Pull when hot' },
    note,
  ],
  mandrel: [
    name('Aluminum tube, 38 mm'),
    {
      as: 'word',
      path: 'material',
      label: 'Made of',
      words: wordsOf(mandrelMaterials, { stainless: 'Stainless steel' }),
    },
    {
      as: 'number',
      path: 'diameter',
      label: 'Diameter',
      options: { quantity: 'diameter', min: 0.003, max: 1 },
      hint: () => 'Bare, where the first ply will lie',
    },
    { as: 'number', path: 'length', label: 'Length', options: { quantity: 'length', min: 0.05, max: 15 } },
    {
      as: 'number',
      path: 'plugsTo',
      label: 'Its plugs stand up to',
      options: { ...heat, optional: true },
      hint: () =>
        `In the air: nylon or acetal about ${show(celsius(100), 'temperature', 0)}, PVC ${show(celsius(60), 'temperature', 0)}; empty without plugs`,
    },
    {
      as: 'number',
      path: 'maskingTo',
      label: 'Its masking stands up to',
      options: { ...heat, optional: true },
      hint: () =>
        `In the air: paper masking about ${show(celsius(80), 'temperature', 0)}, silicone tape ${show(celsius(200), 'temperature', 0)}; empty without masking`,
    },
    {
      as: 'number',
      path: 'wall',
      label: 'Wall of the mandrel',
      options: { quantity: 'thickness', min: 1e-4, max: 0.1, optional: true },
      hint: () => 'Empty for a solid bar. It says how long the mandrel takes to follow the oven’s air',
    },
    note,
  ],
  core: [
    name('Foam sheet, 5 mm'),
    {
      as: 'number',
      path: 'density',
      label: 'Density',
      options: { quantity: 'density', min: 5, max: 1500 },
      hint: () => `Foams ${show(32, 'density')} to ${show(130, 'density')}`,
    },
    {
      as: 'number',
      path: 'thickness',
      label: 'Thickness',
      options: { quantity: 'length', min: 2e-4, max: 0.1 },
    },
    {
      as: 'number',
      path: 'faceResin',
      label: 'Resin that a face drinks',
      options: { quantity: 'arealWeight', min: 0, max: 2 },
      hint: () => `Each side; cut foam ${show(0.1, 'arealWeight')} to ${show(0.3, 'arealWeight')}`,
    },
    {
      as: 'number',
      path: 'highestTemperature',
      label: 'Softens at',
      options: heat,
      hint: () => 'On the part',
    },
    note,
  ],
};
