import { mirrorShape, type Shape, scaleShape, shapeAt, stationValues } from '#calc';
import type { Piece, PieceShape, ShapeRecord } from '#shared/record/piece.ts';

export type GivenBy = PieceShape['by'];

/** Stations closer than this cannot be marked on cloth, m */
export const closest = 0.001;

export function shapeOf({ shape }: Piece): ShapeRecord {
  switch (shape.by) {
    case 'plies':
      return shape.plies;
    case 'width':
      return shape.width;
    case 'wall':
      return shape.wall;
  }
}

export function givenBy(by: GivenBy, shape: ShapeRecord): PieceShape {
  switch (by) {
    case 'plies':
      return { by, plies: shape };
    case 'width':
      return { by, width: shape };
    case 'wall':
      return { by, wall: shape };
  }
}

/** Stations as they lie on the tube, m from its end 0. */
export function stationsOnTube(piece: Piece): { at: number; value: number }[] {
  return shapeOf(piece).stations.map(({ at, value }) => ({ at: piece.start + at, value }));
}

/** Puts stations of the tube into a piece: it starts at the first, and its own stations count from there. */
export function withStations(piece: Piece, stations: readonly { at: number; value: number }[]): Piece {
  const start = stations[0]?.at ?? piece.start;
  const own = stations.map(({ at, value }) => ({ at: at - start, value }));
  return { ...piece, start, shape: givenBy(piece.shape.by, { ...shapeOf(piece), stations: own }) };
}

/** How far a station can be moved before it lies on a neighbor or off the tube, m from end 0. */
export function roomOf(piece: Piece, index: number, length: number): { min: number; max: number } {
  const stations = stationsOnTube(piece);
  const [before, after] = [stations[index - 1], stations[index + 1]];
  return { min: before ? before.at + closest : 0, max: after ? after.at - closest : length };
}

export function moveStation(piece: Piece, index: number, to: { at?: number; value?: number }): Piece {
  const stations = stationsOnTube(piece);
  return withStations(
    piece,
    stations.map((station, i) => (i === index ? { ...station, ...to } : station)),
  );
}

/** A new station halfway to the next one, or before the last, on the line that is there. */
export function addStation(piece: Piece, after: number): { piece: Piece; index: number } {
  const shape = shapeOf(piece);
  const from = Math.min(Math.max(0, after), shape.stations.length - 2);
  const [a, b] = [shape.stations[from], shape.stations[from + 1]];
  if (!a || !b || b.at - a.at < 2 * closest) return { piece, index: after };
  const at = (a.at + b.at) / 2;
  const value = shapeAt({ shape, at });
  const stations = [...shape.stations];
  stations.splice(from + 1, 0, { at, value });
  return {
    piece: { ...piece, shape: givenBy(piece.shape.by, { ...shape, stations }) },
    index: from + 1,
  };
}

/** A piece keeps its two ends. */
export function removeStation(piece: Piece, index: number): Piece {
  const stations = stationsOnTube(piece);
  if (stations.length <= 2) return piece;
  return withStations(
    piece,
    stations.filter((_, i) => i !== index),
  );
}

export function setBetween(piece: Piece, between: ShapeRecord['between']): Piece {
  return { ...piece, shape: givenBy(piece.shape.by, { ...shapeOf(piece), between }) };
}

/** What lies under a piece at a station, and what it is made of. */
export interface Under {
  /** m */
  startDiameter: number;
  thickness: number;
  overlap: number;
}

export type Given = { [by in GivenBy]?: number };

/** The value that a piece given by plies, width or wall takes, when another of the three is written. */
export function convert(given: Given, to: GivenBy, under: Under): number {
  return stationValues({ ...under, ...given })[to];
}

/** The same piece, from now on given by another of the three. */
export function giveBy(piece: Piece, by: GivenBy, underAt: (at: number) => Under | undefined): Piece {
  const from = piece.shape.by;
  if (from === by) return piece;
  const shape = shapeOf(piece);
  const stations = shape.stations.map(({ at, value }) => {
    const under = underAt(piece.start + at);
    if (!under) throw new RangeError(`nothing is known of what lies under ${piece.name}`);
    return { at, value: convert({ [from]: value }, by, under) };
  });
  return { ...piece, shape: givenBy(by, { ...shape, stations }) };
}

const asRecord = ({ between, stations }: Shape): ShapeRecord => ({ between, stations: [...stations] });

/** Turned end for end, where it lies. */
export function mirrored(piece: Piece): Piece {
  return { ...piece, shape: givenBy(piece.shape.by, asRecord(mirrorShape({ shape: shapeOf(piece) }))) };
}

/** Drawn out or pushed together to another length; where it starts it stays. */
export function scaledTo(piece: Piece, length: number): Piece {
  return {
    ...piece,
    shape: givenBy(piece.shape.by, asRecord(scaleShape({ shape: shapeOf(piece), length }))),
  };
}

/** The shape of another piece in the place of this one's. */
export function shapedLike(piece: Piece, other: Piece): Piece {
  return { ...piece, start: other.start, shape: other.shape };
}
