import { shapeAt } from '#calc';
import type { Piece, ShapeRecord, WallPlan } from '#shared/record/piece.ts';
import type { Plan } from '#shared/record/plan.ts';
import { scaledTo, shapeOf, stationsOnTube, withStations } from './shape-edits.ts';

/** A wall being drawn, and the tube it is drawn for. It may have no piece yet. */
export interface WallState {
  wall: WallPlan;
  /** Of the tube, m */
  length: number;
  /** Mandrel of the shelf it is rolled on. */
  mandrelId?: string;
}

/** One wrap alone would only butt: so much lap is asked for to start with (common practice, no source), m */
export const firstOverlap = 0.015;

/** A tube is this long at least and at most, m */
export const shortest = 0.05;
export const longest = 15;

const same = 1e-9;

const even = (length: number, value: number): ShapeRecord => ({
  stations: [
    { at: 0, value },
    { at: length, value },
  ],
  between: 'straight',
});

/** One even piece of the plan's cloth, on a straight mandrel: what a plan without a wall says already. */
export function firstWall(plan: Plan, id: string, name: string, mandrelLength: number): WallState {
  const length = plan.tubeLength;
  const piece = newPiece({ id, name, kind: 'cloth', material: plan.cloth, length, plies: plan.plies });
  return {
    length,
    ...(plan.mandrel !== undefined && { mandrelId: plan.mandrel }),
    wall: { mandrel: even(Math.max(length, mandrelLength), plan.mandrelDiameter), pieces: [piece] },
  };
}

interface NewPiece {
  id: string;
  name: string;
  kind: Piece['kind'];
  material?: string;
  length: number;
  plies: number;
}

/** Along the whole tube, evenly. Core and film go round once and meet. */
export function newPiece({ id, name, kind, material, length, plies }: NewPiece): Piece {
  return {
    id,
    name,
    kind,
    ...(material !== undefined && { material }),
    shape: { by: 'plies', plies: even(length, plies) },
    start: 0,
    clock: 0,
    angle: 0,
    overlap: kind === 'cloth' ? firstOverlap : 0,
  };
}

const withPieces = (state: WallState, pieces: readonly Piece[]): WallState => ({
  ...state,
  wall: { ...state.wall, pieces: [...pieces] },
});

export const addPiece = (state: WallState, piece: Piece): WallState =>
  withPieces(state, [...state.wall.pieces, piece]);

export const setPiece = (state: WallState, piece: Piece): WallState =>
  withPieces(
    state,
    state.wall.pieces.map((p) => (p.id === piece.id ? piece : p)),
  );

export const removePiece = (state: WallState, id: string): WallState =>
  withPieces(
    state,
    state.wall.pieces.filter((p) => p.id !== id),
  );

/** One place earlier (-1) or later (1) in the wrap. */
export function shiftPiece(state: WallState, id: string, by: -1 | 1): WallState {
  const pieces = [...state.wall.pieces];
  const from = pieces.findIndex((p) => p.id === id);
  const [moved, other] = [pieces[from], pieces[from + by]];
  if (!moved || !other) return state;
  pieces[from] = other;
  pieces[from + by] = moved;
  return withPieces(state, pieces);
}

/** The same piece once more, right after it, with its datum edge across the tube. */
export function copyPiece(state: WallState, id: string, newId: string): WallState {
  const pieces = state.wall.pieces.flatMap((p) =>
    p.id === id ? [p, { ...p, id: newId, clock: (p.clock + Math.PI) % (2 * Math.PI) }] : [p],
  );
  return withPieces(state, pieces);
}

export function setMandrelId(state: WallState, mandrelId: string | undefined): WallState {
  const { mandrelId: _, ...rest } = state;
  return mandrelId === undefined ? rest : { ...rest, mandrelId };
}

/** Bare mandrel. */
export const setMandrel = (state: WallState, mandrel: ShapeRecord): WallState => ({
  ...state,
  wall: { ...state.wall, mandrel },
});

export const setPressedAt = (state: WallState, pressedAt: number | undefined): WallState => {
  const { pressedAt: _, ...wall } = state.wall;
  return { ...state, wall: pressedAt === undefined ? wall : { ...wall, pressedAt } };
};

/** A piece that reached the old end reaches the new one; nothing else moves. */
function refitted(piece: Piece, old: number, length: number): Piece | undefined {
  const stations = stationsOnTube(piece);
  const last = stations.at(-1);
  if (!last || piece.start >= length - same) return undefined;
  const reached = Math.abs(last.at - old) < same;
  if (last.at <= length && !reached) return piece;
  const shape: ShapeRecord = { ...shapeOf(piece), stations };
  const inside = stations.slice(0, -1).filter((s) => s.at < length - same);
  const value = length >= last.at ? last.value : shapeAt({ shape, at: length });
  return withStations(piece, [...inside, { at: length, value }]);
}

/** Another tube length: what reached the end follows it, what lies beyond it is cut off. */
export function setLength(state: WallState, length: number): WallState {
  const pieces = state.wall.pieces.flatMap((p) => refitted(p, state.length, length) ?? []);
  const { mandrel } = state.wall;
  const last = mandrel.stations.at(-1);
  const straight = mandrel.stations.every((s) => s.value === last?.value);
  const grown: ShapeRecord =
    last && straight && last.at < length
      ? { ...mandrel, stations: [...mandrel.stations.slice(0, -1), { ...last, at: length }] }
      : mandrel;
  return { ...withPieces(setMandrel(state, grown), pieces), length };
}

/** Everything drawn out or pushed together along the tube, the mandrel left as it is. */
export function stretchTo(state: WallState, length: number): WallState {
  const by = length / state.length;
  const pieces = state.wall.pieces.map((piece) => {
    const reaches = (stationsOnTube(piece).at(-1)?.at ?? 0) - piece.start;
    return { ...scaledTo(piece, reaches * by), start: piece.start * by };
  });
  return withPieces(setLength(withPieces(state, []), length), pieces);
}
