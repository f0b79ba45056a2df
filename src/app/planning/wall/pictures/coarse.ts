import type { Roll } from '#calc';
import { keptBy } from '../kept-by.ts';

/** Samples closer than this on the screen show nothing more, px */
const apart = 0.5;
const same = 1e-9;

/** Where pieces have their stations, in order: their corners are drawn as they are. */
function corners({ pieces }: Roll): number[] {
  const all = pieces.flatMap(({ spec }) =>
    ((spec.wraps ?? spec.width ?? spec.wall)?.stations ?? []).map((s) => spec.start + s.at),
  );
  return all.sort((a, b) => a - b);
}

/** Places to be drawn at so many px: every half one, stations, both sides of a jump, and the end. */
function placesFor(roll: Roll, width: number): Int32Array {
  const { at, before, length } = roll;
  const stations = corners(roll);
  let next = 0;
  const places = new Int32Array(at.length);
  const step = (length * apart) / width;
  let count = 0;
  let last = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < at.length; i += 1) {
    const place = at[i] ?? 0;
    while ((stations[next] ?? length) < place - same) next += 1;
    const kept = before[i] === 1 || before[i - 1] === 1 || (stations[next] ?? length) < place + same;
    if (!kept && place - last < step && i < at.length - 1) continue;
    places[count] = i;
    count += 1;
    last = place;
  }
  return places.slice(0, count);
}

function make(roll: Roll, width: number): Roll {
  const places = placesFor(roll, width);
  if (places.length === roll.at.length) return roll;
  const pick = (values: Float64Array): Float64Array => {
    const picked = new Float64Array(places.length);
    for (let k = 0; k < picked.length; k += 1) picked[k] = values[places[k] ?? 0] ?? 0;
    return picked;
  };
  return {
    ...roll,
    at: pick(roll.at),
    before: Uint8Array.from(places, (i) => roll.before[i] ?? 0),
    diameter: pick(roll.diameter),
    wallMin: pick(roll.wallMin),
    wallMax: pick(roll.wallMax),
    wallMean: pick(roll.wallMean),
    outsideDiameter: pick(roll.outsideDiameter),
    pieces: roll.pieces.map((piece) => ({
      ...piece,
      startDiameter: pick(piece.startDiameter),
      plies: pick(piece.plies),
      wraps: pick(piece.wraps),
      width: pick(piece.width),
      thickness: pick(piece.thickness),
    })),
  };
}

/** The same roll as finely as a picture of so many px can show it: a thumb that drags must not wait for more. */
export const coarse = (roll: Roll, width: number): Roll =>
  keptBy(roll, `coarse ${width}`, [], () => make(roll, width));
