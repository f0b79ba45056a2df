import { presentStage } from '#app/laying-up/build/position.ts';
import { roleTick } from '#app/laying-up/build/ticks.ts';
import { partMasses } from '#app/state/masses.ts';
import { theStore } from '#app/state/shop.ts';
import { show } from '#app/state/show.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { StepRole } from '#shared/record/checklist.ts';
import type { EntryDraft, WeightOf } from '#shared/record/entry.ts';

export interface Weighing {
  what: WeightOf;
  /** What lies on the scale. */
  title: string;
  /** On the main action, before the figure. */
  done: string;
  hint: string;
  /** The step of the route that this weight ticks. */
  ticks?: StepRole;
}

export const weighings: readonly Weighing[] = [
  {
    what: 'cutCloth',
    title: 'Cut cloth, dry',
    done: 'Cloth weighs',
    hint: 'Trimmed to shape, masking off. Everything is reckoned from it.',
    ticks: 'weighCloth',
  },
  {
    what: 'wetCloth',
    title: 'Wet cloth with its films',
    done: 'Wet cloth weighs',
    hint: 'Before it is wrapped: the one resin figure that can still be put right.',
    ticks: 'weighWet',
  },
  {
    what: 'wetFilms',
    title: 'Those films alone, dry',
    done: 'Films weigh',
    hint: 'The same size of film, dry. Without it the films count as resin.',
  },
  {
    what: 'cured',
    title: 'Cured tube, ends not cut',
    done: 'Tube weighs',
    hint: 'Off the mandrel, dry, tape off, before its ends are cut.',
    ticks: 'weighCured',
  },
  {
    what: 'trimmed',
    title: 'Tube, ends cut',
    done: 'Trimmed tube weighs',
    hint: 'If it was cut before it was weighed: its offcuts are weighed next.',
    ticks: 'weighCured',
  },
  {
    what: 'offcut',
    title: 'Offcuts',
    done: 'Offcuts weigh',
    hint: 'Both ends together; 0 when nothing was cut off.',
  },
  {
    what: 'filmIn',
    title: 'Release film put in',
    done: 'Film put in weighs',
    hint: 'Dry, before it went on the mandrel.',
    ticks: 'weighFilmIn',
  },
  {
    what: 'filmOut',
    title: 'Release film got out',
    done: 'Film got out weighs',
    hint: 'All of it, dry. What is missing is still in the tube.',
    ticks: 'weighFilmOut',
  },
  {
    what: 'leftover',
    title: 'Left in the cups',
    done: 'Left over',
    hint: 'Resin that never reached the cloth.',
  },
  {
    what: 'wipings',
    title: 'Wiped and squeezed off',
    done: 'Wipings weigh',
    hint: 'Resin on rags, films and tape.',
  },
];

export function weighingOf(what: string | undefined): Weighing | undefined {
  return weighings.find((w) => w.what === what);
}

/** It was cut before it was weighed, and nobody knows how much cloth went with the ends. */
export const offcutsMissing = ({ weights }: BuildState): boolean =>
  weights.has('trimmed') && !weights.has('cured') && !weights.has('offcut');

/** What is to be weighed next, by where the route is: nothing that is not on the bench yet. */
export function nextWeighing(state: BuildState): WeightOf | undefined {
  const lacks = (what: WeightOf) => !state.weights.has(what);
  const stage = presentStage(state)?.stage;
  switch (stage) {
    case 'mandrelPrep':
    case 'release':
    case 'setUp':
    case 'cure':
      return undefined;
    case 'cut':
      return lacks('cutCloth') ? 'cutCloth' : undefined;
    case 'mix':
      return lacks('wetFilms') ? 'wetFilms' : undefined;
    case 'wetOut':
    case 'wrap':
    case 'shrinkTape':
      return (['wetCloth', 'wetFilms'] as const).find(lacks);
    default:
      if (lacks('cured') && lacks('trimmed')) return 'cured';
      if (offcutsMissing(state)) return 'offcut';
      return !lacks('filmIn') && lacks('filmOut') ? 'filmOut' : undefined;
  }
}

/** A figure that can be read but is hardly meant: why, so that the builder looks once more. */
export function doubtAbout(state: BuildState, what: WeightOf, mass: number): string | undefined {
  const { cloth, filmLeft } = partMasses(state);
  const begun = state.header.clothMass;
  if (what === 'cutCloth' && (mass < begun / 2 || mass > 2 * begun)) {
    return `Started with ${show(begun, 'mass')}: is every piece on the scale, and nothing else?`;
  }
  const wet = what === 'wetCloth';
  if ((what === 'cured' || wet) && mass < cloth) {
    return `Lighter than its dry cloth, ${show(cloth, 'mass')}. Is the scale zeroed, is this the right tube?`;
  }
  if ((what === 'cured' || what === 'trimmed') && filmLeft !== undefined && mass < filmLeft) {
    return `Lighter than the film that was put in, ${show(filmLeft, 'mass')}. Check both figures.`;
  }
  const filmIn = state.weights.get('filmIn')?.entry.mass;
  if (what === 'filmOut' && filmIn !== undefined && mass > filmIn) {
    return `More than was put in, ${show(filmIn, 'mass')}: resin or tape is on it, or it is wet.`;
  }
  if (what === 'trimmed' && mass < cloth / 2) {
    return `Less than half its dry cloth, ${show(cloth, 'mass')}. Is the scale zeroed, is this the right tube?`;
  }
  if ((what === 'cured' || what === 'trimmed' || wet) && mass > 6 * cloth) {
    return `Six times its cloth, ${show(cloth, 'mass')}. Is the mandrel still in it?`;
  }
  return undefined;
}

/** The weight, and the tick of the step that asked for it, as one thing that happened. */
export function weightDrafts(
  state: BuildState,
  weighing: Weighing,
  mass: number,
  typed: string,
): EntryDraft[] {
  const subject = state.header.id;
  const ticks = weighing.ticks ? roleTick(state, weighing.ticks, { newId: () => theStore().newId() }) : [];
  return [{ kind: 'weight', subject, what: weighing.what, mass, typed }, ...ticks];
}
