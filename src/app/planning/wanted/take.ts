import { tubeMassOf } from '#app/planning/carry/sections-along.ts';
import { tubeOfPlan } from '#app/planning/carry/tube-of-plan.ts';
import { marginsOfPlan } from '#app/planning/loads/margins-of-plan.ts';
import { givenBy, shapeOf } from '#app/planning/wall/shape-edits.ts';
import type { WallState } from '#app/planning/wall/wall-edits.ts';
import type { Piece } from '#shared/record/piece.ts';
import type { Plan } from '#shared/record/plan.ts';
import { laterAt, spreadOut } from './stretches.ts';
import type { Asking } from './wanted-input.ts';
import type { Wanted } from './wanted-worker.ts';

export interface Station {
  at: number;
  value: number;
}

/** Without the stations that lie on the line between their neighbors. */
function needed(stations: readonly Station[]): Station[] {
  return stations.filter(({ at, value }, i) => {
    const [a, b] = [stations[i - 1], stations[i + 1]];
    if (!a || !b) return true;
    const between = a.value + ((b.value - a.value) * (at - a.at)) / (b.at - a.at);
    return Math.abs(between - value) > 1e-9;
  });
}

/** The wall with these plies in its piece; what gave way is gone. */
export function withPlies(
  state: WallState,
  { piece: index, instead }: Asking,
  stations: readonly Station[],
): WallState {
  const pieces = state.wall.pieces.flatMap((piece, i): Piece[] => {
    if (instead.includes(i)) return [];
    if (i !== index) return [piece];
    const shape = { ...shapeOf(piece), between: 'straight' as const, stations: needed(stations) };
    return [{ ...piece, start: 0, shape: givenBy('plies', shape) }];
  });
  return { ...state, wall: { ...state.wall, pieces } };
}

const walled = (plan: Plan, { wall }: WallState): Plan => ({ ...plan, wall });

interface Rolled {
  /** How far it goes aside, and as a column, it holds. */
  whole: boolean;
  /** Where its wall gives out, m */
  short: number[];
}

/** The wall as it would be rolled, checked between the stations too; undefined where it cannot be. */
function rolled(doc: string, plan: Plan): Rolled | undefined {
  const margins = marginsOfPlan(doc, plan);
  if (!margins.ok) return undefined;
  const { checks, loads } = margins.checked;
  const far = Math.max(...checks.cases.flatMap(({ solution }) => [...solution.deflection].map(Math.abs)));
  return {
    whole: far <= (loads.mostDeflection ?? far) && checks.cases.every(({ column }) => column.margin >= 0),
    short: checks.stations.flatMap(({ at, least }) => (least.margin < 0 ? [at] : [])),
  };
}

export interface Taking {
  doc: string;
  plan: Plan;
  state: WallState;
  asking: Asking;
  wanted: Wanted;
}

/** How often plies are let end later where that is too little, before they are let end later everywhere. */
const tries = 2;

/**
 * The plies to cut at each station. A free edge that runs straight from one station to the next has less than the
 * thicker of both between them: where that is too little, a ply ends one station later.
 */
export function pliesToCut({ doc, plan, state, asking, wanted }: Taking): number[] {
  const at = wanted.stations.map((s) => s.at);
  const asked = wanted.stations.map((s) => s.plies);
  if (!wanted.met) return asked;
  let plies = asked;
  for (let k = 0; k <= tries; k += 1) {
    const stations = at.map((place, i) => ({ at: place, value: plies[i] ?? 0 }));
    const found = rolled(doc, walled(plan, withPlies(state, asking, stations)));
    if (!found?.whole) break;
    if (found.short.length === 0) return plies;
    plies = laterAt(at, plies, found.short);
  }
  return spreadOut(asked);
}

/** What the tube weighs with another wall, kg; undefined where it cannot be rolled or a density is missing. */
export function massWith(plan: Plan, state: WallState): number | undefined {
  const found = tubeOfPlan(walled(plan, state));
  return found.ok ? tubeMassOf(found.tube) : undefined;
}
