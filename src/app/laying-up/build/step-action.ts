import { allMeasured } from '#app/laying-up/measure/stations.ts';
import { wallOfBuild } from '#app/planning/cutting/plan-of-build.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { EntryOf } from '#shared/record/entry.ts';
import type { StepState } from '#shared/record/route-state.ts';
import { mixAddress, nextCup } from './cups-left.ts';
import { filmCount } from './films.ts';
import { allHard, samplesOf } from './samples.ts';

export type SheetName = 'surroundings' | 'films' | 'samples' | 'judge';

/** What a step opens besides being ticked: another screen, or a sheet of this one. */
export type Opens =
  | { kind: 'screen'; to: string; label: string }
  | { kind: 'sheet'; sheet: SheetName; label: string };

export interface StepAction {
  opens?: Opens;
  /** What the step asks for is there: it only wants its tick. */
  met: boolean;
}

/** The oven load that this build joined in this round, the last of them. */
export function joinedLoad(state: BuildState, round: number): EntryOf<'joinedOvenLoad'> | undefined {
  return state.ovenLoads.filter((f) => f.entry.round === round).at(-1)?.entry;
}

const screen = (to: string, label: string, met: boolean): StepAction => ({
  opens: { kind: 'screen', to, label },
  met,
});
const sheet = (name: SheetName, label: string, met: boolean): StepAction => ({
  opens: { kind: 'sheet', sheet: name, label },
  met,
});

export function cupLabel(state: BuildState, round: number): string | undefined {
  const next = nextCup(state, round);
  if (!next) return undefined;
  return next.begun ? `Back to cup ${next.number}` : `Mix cup ${next.number}`;
}

/** An oven load that is not closed: it may still heat, or it is off. */
export type OpenOven = 'notOff' | 'off';
type OpenOvens = (ovenLoad: string) => OpenOven | undefined;

/** The first step of the oven puts the tube in; a later one of the same stage says that its hold is done. */
function comesAfterGoingIn(state: BuildState, { key, stage, round }: StepState): boolean {
  const ofOven = state.stages
    .filter((s) => s.stage === stage && s.round === round)
    .flatMap((s) => s.steps.filter(({ step }) => step.role === 'oven'));
  return ofOven.findIndex((s) => s.key === key) > 0;
}

function ovenAction(state: BuildState, step: StepState, openOven: OpenOvens): StepAction {
  const joined = joinedLoad(state, step.round);
  const oven = joined && openOven(joined.ovenLoad);
  if (!joined || !oven) return screen('/oven/new', 'Set up an oven load', joined !== undefined);
  // A hold ticked while the oven is at it would be taken for one that the readings bear out.
  const met = oven === 'off' || !comesAfterGoingIn(state, step);
  return screen(`/oven/${joined.ovenLoad}`, 'To its oven load', met);
}

/** `openOven` tells whether an oven load still runs. */
export function stepAction(state: BuildState, stepState: StepState, openOven: OpenOvens): StepAction {
  const { step, round } = stepState;
  const { id } = state.header;
  const has = (what: EntryOf<'weight'>['what']) => state.weights.has(what);
  switch (step.role) {
    case 'surroundings':
      return sheet(
        'surroundings',
        state.surroundings ? 'Read again' : 'Read the surroundings',
        state.surroundings !== undefined,
      );
    case 'mix': {
      const label = cupLabel(state, round);
      return screen(mixAddress(state), label ?? 'To the cups', label === undefined);
    }
    case 'filmsIn':
      return sheet('films', 'Count the films in', filmCount(state, round).in !== undefined);
    case 'filmsOut':
      return sheet('films', 'Count the films out', filmCount(state, round).even);
    case 'weighCloth':
      return wallOfBuild(state.header)
        ? screen(`/cut/${id}`, 'Cut list', has('cutCloth'))
        : screen(`/weigh/${id}/cutCloth`, 'Weigh the cloth', has('cutCloth'));
    case 'weighFilmIn':
      return screen(`/weigh/${id}/filmIn`, 'Weigh the film', has('filmIn'));
    case 'weighFilmOut':
      return screen(`/weigh/${id}/filmOut`, 'Weigh the film', has('filmOut'));
    case 'weighWet':
      return screen(`/weigh/${id}/wetCloth`, 'Weigh cloth and films', has('wetCloth'));
    case 'weighCured':
      return screen(`/weigh/${id}`, 'Weigh the tube', has('cured') || has('trimmed'));
    case 'measure':
      return screen(`/measure/${id}`, 'Measure the stations', allMeasured(state));
    case 'oven':
      return ovenAction(state, stepState, openOven);
    case 'samples':
      return sheet('samples', 'Feel the cup samples', allHard(samplesOf(state, round)));
    case 'judge':
      return sheet('judge', 'Judge the tube', state.disposition !== undefined);
    default:
      return { met: true };
  }
}

const longest = 64;

/** A step's own words on the main action: they say what will have happened. */
export function actionLabel(text: string): string {
  if (text.length <= longest) return text;
  const cut = text.slice(0, longest - 8);
  return `Done: ${cut.slice(0, cut.lastIndexOf(' ') > 20 ? cut.lastIndexOf(' ') : cut.length)}…`;
}
