import { canWords } from '#app/laying-up/mix/mix-words.ts';
import { hardenerPerResin } from '#app/laying-up/mix/recipe.ts';
import { show } from '#app/state/show.ts';
import type { Body } from '#shared/record/revision.ts';
import { formatDuration } from '#shared/units/time.ts';
import { itemFields } from './fields.ts';
import type { ShelfType } from './kinds.ts';
import { gramsWords } from './ratio-line.tsx';

/** The word that a choice field shows for what is kept. */
function wordFor(type: 'cloth' | 'release' | 'mandrel', path: string, value: string): string {
  const field = itemFields[type].find((f) => f.path === path);
  return (field?.as === 'word' && field.words.find((w) => w.value === value)?.label) || value;
}

export interface ItemWords {
  about: string;
  /** The number that matters most. */
  value: string;
}

const count = (n: number, one: string) => `${n} ${n === 1 ? one : `${one}s`}`;

/** What a line of the shelf says of a thing, by its kind. */
const say: { [T in ShelfType]: (body: Body<T>) => ItemWords } = {
  cloth: (c) => ({
    about: `${wordFor('cloth', 'fiber', c.fiber)}, ${show(c.fiberDensity, 'fiberDensity')}`,
    value: show(c.arealWeight, 'arealWeight'),
  }),
  resin: (r) => ({
    about: `${canWords(r)}. ${gramsWords(hardenerPerResin(r))}. Cups up to ${show(r.largestCup, 'mass', 0)}`,
    value: formatDuration(r.potLife.time),
  }),
  release: (r) => ({
    about: `${wordFor('release', 'kind', r.kind)}, adds ${show(r.buildUp, 'thickness')}`,
    value: `to ${show(r.highestTemperature, 'temperature', 0)}`,
  }),
  tape: (t) => ({
    about: `Pulls from ${show(t.pullsFrom, 'temperature', 0)}, stands ${show(t.highestTemperature, 'temperature', 0)}`,
    value: show(t.width, 'length'),
  }),
  mandrel: (m) => ({
    about: `${wordFor('mandrel', 'material', m.material)}, ${show(m.length, 'length', 0)} long`,
    value: show(m.diameter, 'diameter'),
  }),
  core: (c) => ({
    about: `${show(c.density, 'density')}, stands ${show(c.highestTemperature, 'temperature', 0)}`,
    value: show(c.thickness, 'length'),
  }),
  checklist: (c) => ({
    about: count(c.stages.length, 'stage'),
    value: count(
      c.stages.reduce((sum, s) => sum + s.steps.length, 0),
      'step',
    ),
  }),
};

export function itemWords<T extends ShelfType>(type: T, body: Body<T>): ItemWords {
  return say[type](body);
}
