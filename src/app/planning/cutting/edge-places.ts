import { rollOf } from '#app/planning/wall/wall-model.ts';
import { pieceName, wallProblem } from '#app/planning/wall/wall-words.ts';
import {
  diameterFromCircumference,
  pliesAround,
  plyThicknessFromDiameter,
  type Roll,
  seamCheck,
} from '#calc';
import type { BuildState } from '#shared/record/build-state.ts';
import type { EntryOf } from '#shared/record/entry.ts';
import { buildShelf, walledPlanOf } from './build-shelf.ts';

/** As well as an edge under wet cloth is commonly read with a rule (common practice, no source), m */
export const usualReading = 0.001;
const closestStation = 0.002;

/** A place along the tube at which a free edge can be compared with the plan. */
export interface EdgePlace {
  piece: string;
  name: string;
  /** Of the piece in wrap order, from 0. */
  index: number;
  /** Number of the place, for its address. */
  mark: number;
  /** m from end 0 */
  station: number;
  /** From the line on the mandrel round the outside to the mark, m */
  round: number;
  wraps: number;
  plyThickness: number;
}

function sampleOf({ at }: Roll, station: number): number {
  let best = 0;
  for (let i = 0; i < at.length; i += 1) {
    if (Math.abs((at[i] ?? 0) - station) < Math.abs((at[best] ?? 0) - station)) best = i;
  }
  return best;
}

/** Both ends of a piece and where it has the most wraps, just inside its ends. */
function stationsOf(roll: Roll, index: number): number[] {
  const rolled = roll.pieces[index];
  if (!rolled) return [];
  const { from, to, wraps } = rolled;
  const most = wraps.reduce((best, n, i) => (n > (wraps[best] ?? 0) ? i : best), 0);
  const inside = Math.min(0.01, (to - from) / 4);
  const widest = roll.at[most] ?? from;
  const isApart = widest - from > 2 * inside && to - widest > 2 * inside;
  return [from + inside, ...(isApart ? [widest] : []), to - inside];
}

function rolled(state: BuildState) {
  const plan = walledPlanOf(state.header);
  return plan && { plan, roll: rollOf(plan, buildShelf(state.header, plan)) };
}

function placesOf(state: BuildState): EdgePlace[] {
  const found = rolled(state);
  if (!found) return [];
  const { plan, roll } = found;
  return plan.wall.pieces.flatMap((piece, index) =>
    stationsOf(roll, index).flatMap((station, mark) => {
      const i = sampleOf(roll, station);
      const seam = pliesAround({ roll, at: station }).seams.find((s) => s.piece === index);
      const spec = roll.pieces[index]?.spec;
      if (!seam || !spec) return [];
      return {
        piece: piece.id,
        name: pieceName(piece, index),
        index,
        mark,
        station,
        round: (seam.outer * (roll.outsideDiameter[i] ?? 0)) / 2,
        wraps: roll.pieces[index]?.wraps[i] ?? 0,
        plyThickness: spec.thickness,
      };
    }),
  );
}

/** Where each piece's edge can be compared, outermost piece first; a sentence when the wall cannot be rolled. */
export function edgePlaces(state: BuildState): EdgePlace[] | string {
  try {
    return placesOf(state).sort((a, b) => b.index - a.index || a.station - b.station);
  } catch (error) {
    const plan = walledPlanOf(state.header);
    if (error instanceof RangeError && plan) return wallProblem(error, plan.wall).says;
    throw error;
  }
}

export const markAt = (state: BuildState, place: EdgePlace): EntryOf<'edgeMark'> | undefined =>
  state.edgeMarks
    .map((f) => f.entry)
    .filter((e) => e.piece === place.piece && Math.abs(e.station - place.station) < closestStation)
    .at(-1);

export interface EdgeVerdict {
  look: boolean;
  /** m; only when the reading tells it well enough. */
  plyThickness?: number;
  /** Of that, as a share */
  error: number;
}

/** A later piece lies on earlier ones, whose thickness moves its edge too: only the first tells of plies. */
export function edgeVerdict(
  place: EdgePlace,
  { off, reading = usualReading }: EntryOf<'edgeMark'>,
): EdgeVerdict {
  const { wraps, plyThickness, index } = place;
  const {
    look,
    error,
    plyThickness: read,
  } = seamCheck({
    edgeOff: off,
    wraps,
    plyThickness,
    readingError: reading,
  });
  return { look, error, ...(index === 0 && read !== undefined && { plyThickness: read }) };
}

/** Cured plies by the diameters that were measured, where the wall is nothing but cloth: m, by station. */
export function curedPlies(state: BuildState): { station: number; plyThickness: number }[] {
  const found = rolled(state);
  if (!found || found.plan.wall.pieces.some((p) => p.kind !== 'cloth')) return [];
  const { roll } = found;
  return state.measurements.flatMap(({ entry: { what, station, value } }) => {
    if (what === 'length' || station > roll.length) return [];
    const outsideDiameter =
      what === 'outsideDiameter' ? value : diameterFromCircumference({ circumference: value });
    const i = sampleOf(roll, station);
    const innerDiameter = roll.diameter[i] ?? 0;
    const wraps = roll.pieces.reduce((sum, p) => sum + (p.wraps[i] ?? 0), 0);
    if (outsideDiameter <= innerDiameter || wraps <= 0) return [];
    return { station, plyThickness: plyThicknessFromDiameter({ outsideDiameter, innerDiameter, wraps }) };
  });
}
