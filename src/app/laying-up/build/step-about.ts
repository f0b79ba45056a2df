import { cupPhase, mixingOf } from '#app/laying-up/mix/cup-phase.ts';
import { show } from '#app/state/show.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { WeightOf } from '#shared/record/entry.ts';
import type { StepState } from '#shared/record/route-state.ts';
import { formatClockTime } from '#shared/units/time.ts';
import { cupsOf } from './cups-left.ts';
import { filmCount } from './films.ts';
import { samplesOf } from './samples.ts';
import { outcomeWords } from './stage-words.ts';
import { surroundingsLine } from './surroundings-words.ts';

const times = (n: number, word: string) => `${n} ${n === 1 ? word : `${word}s`}`;

function weighed(state: BuildState, what: WeightOf): string | undefined {
  const fact = state.weights.get(what);
  return fact && show(fact.entry.mass, 'mass');
}

function cupsMixed(state: BuildState, round: number): string | undefined {
  const mixing = mixingOf(state.header.resin);
  const mixed = cupsOf(state, round).filter((c) => ['mixed', 'empty'].includes(cupPhase(c, mixing))).length;
  return mixed > 0 ? `${times(mixed, 'cup')} mixed` : undefined;
}

function gelLooks(state: BuildState): string | undefined {
  const last = state.checks.filter((f) => f.entry.what === 'gel').at(-1)?.entry;
  if (last?.outcome !== 'notYet') return undefined;
  return `Not gelled at ${formatClockTime(last.happenedAt, last.zone)}`;
}

/** What the record knows of a step, said small under it. */
export function aboutStep(state: BuildState, { step, round }: StepState): string | undefined {
  const films = filmCount(state, round);
  switch (step.role) {
    case 'surroundings':
      return state.surroundings && surroundingsLine(state.surroundings.entry);
    case 'filmsIn':
      return films.in === undefined ? undefined : times(films.in, 'film');
    case 'filmsOut':
      if (films.out === undefined) return undefined;
      return films.in === undefined ? times(films.out, 'film') : `${films.out} of ${times(films.in, 'film')}`;
    case 'mix':
      return cupsMixed(state, round);
    case 'weighCloth':
      return weighed(state, 'cutCloth');
    case 'weighFilmIn':
      return weighed(state, 'filmIn');
    case 'weighFilmOut':
      return weighed(state, 'filmOut');
    case 'weighWet':
      return weighed(state, 'wetCloth');
    case 'weighCured':
      return weighed(state, 'cured') ?? weighed(state, 'trimmed');
    case 'rotationOff':
      return gelLooks(state);
    case 'samples': {
      const felt = samplesOf(state, round).filter((s) => s.feel);
      return felt.length > 0 ? felt.map((s) => `${s.name} ${s.feel}`).join(' · ') : undefined;
    }
    case 'judge':
      return state.disposition && outcomeWords[state.disposition.entry.outcome];
    default:
      return undefined;
  }
}
