/** A value at so many meters; what it stands for is said where a shape is asked for. */
export type Station = { readonly at: number; readonly value: number };

/**
 * Something that changes along the tube. `straight` between stations; `smooth` is a monotone curve that
 * never goes past its stations; in a `step` a value holds until the next station, so that the last
 * station only says where it ends.
 */
export type Shape = {
  readonly stations: readonly Station[];
  readonly between: 'straight' | 'smooth' | 'step';
};

/** Bare diameter with its release on, m, at m from end 0 of the tube; `at` below 0 is bare mandrel before it. */
export type MandrelShape = Shape;

export type PieceKind = 'cloth' | 'core' | 'film';

/** What every piece has, whatever its shape is given by. */
export type PieceBase = {
  readonly kind: PieceKind;
  /** Of one ply, cured; of a core or film sheet, as it lies in the wall, m */
  readonly thickness: number;
  /** Where the piece's own 0 lies on the tube, m from end 0. Its stations count from there. */
  readonly start: number;
  /** Where its datum edge lies round the tube, rad in the direction it is rolled. */
  readonly clock: number;
  /** Warp to tube axis, rad, toward the direction it is rolled. */
  readonly angle: number;
  /** More cloth than the plies wanted need, m, measured on the outside. */
  readonly overlap: number;
  /** Dry, kg/m2 */
  readonly arealWeight?: number | undefined;
  /** Of the fiber for cloth, of the sheet for core and film, kg/m3 */
  readonly density?: number | undefined;
};

/**
 * One cut piece: exactly one of plies wanted everywhere (`wraps`), cloth width in m, overlap and all
 * (`width`), or the wall it is to add, in m (`wall`).
 */
export type PieceSpec = PieceBase &
  (
    | { readonly wraps: Shape; readonly width?: undefined; readonly wall?: undefined }
    | { readonly width: Shape; readonly wraps?: undefined; readonly wall?: undefined }
    | { readonly wall: Shape; readonly wraps?: undefined; readonly width?: undefined }
  );

/** One piece as it lies on the tube; arrays run with `at` of the roll. 0 where the piece is not, but for `startDiameter`. */
export type RolledPiece = {
  readonly spec: PieceSpec;
  /** m from end 0 of the tube */
  readonly from: number;
  readonly to: number;
  /** What it is rolled on: mandrel and earlier pieces, m */
  readonly startDiameter: Float64Array;
  /** Plies it makes everywhere, with their fraction; without the overlap. */
  readonly plies: Float64Array;
  /** Turns it makes, overlap and all. */
  readonly wraps: Float64Array;
  /** Of the cloth round the tube, overlap and all, m */
  readonly width: Float64Array;
  /** What it adds to the wall, as a mean round the tube, m */
  readonly thickness: Float64Array;
};

/**
 * All pieces rolled. `at` goes up from 0 to the length in steps, with every station and every end of a
 * piece among them; where something jumps `at` comes twice, first as it is before and then as after.
 */
export type Roll = {
  readonly mandrel: MandrelShape;
  readonly length: number;
  readonly step: number;
  /** m from end 0 of the tube */
  readonly at: Float64Array;
  /** 1 where a sample is what comes before a jump at the same place. */
  readonly before: Uint8Array;
  /** Mandrel, m */
  readonly diameter: Float64Array;
  readonly pieces: readonly RolledPiece[];
  /** Thinnest, thickest and mean round the tube, m */
  readonly wallMin: Float64Array;
  readonly wallMax: Float64Array;
  readonly wallMean: Float64Array;
  /** Mandrel and mean wall twice, m */
  readonly outsideDiameter: Float64Array;
};

/** Round the tube from one angle to the next, rad, 0 to 2 pi: so many plies of cloth, so much wall in m. */
export type AroundStep = {
  readonly from: number;
  readonly to: number;
  readonly plies: number;
  readonly wall: number;
};

/** Where a piece's edges lie round the tube at a station, rad, 0 to 2 pi. */
export type AroundSeam = { readonly piece: number; readonly inner: number; readonly outer: number };

/** Flat, m. `x` along the datum edge from its end 0, `y` from it in the direction the piece is rolled. */
export type Point = { readonly x: number; readonly y: number };

/** A piece as it is cut. The outline starts along the datum edge, (0, 0) to (length, 0), and is closed. */
export type FlatPiece = {
  readonly outline: readonly Point[];
  /** Of the datum edge, m: the slant length on a tapered mandrel. */
  readonly length: number;
  /** Of the mandrel under it, rad; above 0 when it widens along the tube. */
  readonly halfAngle: number;
  /** Every station of the piece: m from end 0 of the tube, on the datum edge, and on the free edge. */
  readonly marks: readonly { readonly at: number; readonly x: number; readonly edge: Point }[];
};

/** On the perpendicular at `x` of the datum edge there is cloth from `from` to `to`, m. */
export type Offset = { readonly x: number; readonly from: number; readonly to: number };

export type FlatBounds = {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
};

/** The datum edge, or the free edge that ends up outside. */
export type EdgeName = { readonly piece: number; readonly edge: 'datum' | 'free' };

/** Two edges that run too near each other from one place to another along the tube, m. */
export type EdgePair = {
  readonly first: EdgeName;
  readonly second: EdgeName;
  readonly from: number;
  readonly to: number;
  /** Nearest they come, m of arc on the outside */
  readonly nearest: number;
};

/** A wall that changes too suddenly. */
export type PlyDrop = {
  readonly from: number;
  readonly to: number;
  /** Less wall at the thin side, m */
  readonly drop: number;
  /** Length for each unit of thickness: 20 is 20:1, 0 a sheer step. */
  readonly ratio: number;
  /** Length for each ply, m */
  readonly perPly: number;
};

/** kg, and m2 for the area; `resin` is what stays in the part with this piece. */
export type PieceMass = { readonly area: number; readonly dry: number; readonly resin: number };

export type TubeMass = {
  readonly pieces: readonly PieceMass[];
  /** kg */
  readonly cloth: number;
  readonly resin: number;
  readonly core: number;
  readonly film: number;
  readonly total: number;
  /** kg/m along the tube, with `at` of the roll */
  readonly perMeter: Float64Array;
  /** Balance point, m from end 0 */
  readonly balance: number;
  /** The same tube with its thickest wall throughout, kg; what this one saves, kg and share of that. */
  readonly thickest: number;
  readonly saved: number;
  readonly savedShare: number;
};

/** A piece to cut: `warpAngle` is the `angle` of the piece, rad, warp to datum edge. */
export type NestPiece = {
  readonly id: string;
  readonly outline: readonly Point[];
  readonly count: number;
  readonly warpAngle: number;
};

/**
 * One copy on the roll. Its outline is turned by -warpAngle, half a turn more when `flipped`, and then moved
 * so that its lowest x and y lie at `x` along the roll and `y` across it from its edge, selvage and all, m.
 */
export type Placement = {
  readonly id: string;
  readonly copy: number;
  readonly x: number;
  readonly y: number;
  readonly flipped: boolean;
};

/**
 * A piece that does not go on the roll. Cut it along the warp at the heights `at` above its lowest point
 * as it lies on the roll, each next strip starting `overlap` lower.
 */
export type Unplaced = {
  readonly id: string;
  readonly reason: 'wider than the roll';
  /** As it lies on the roll, and what there is between the selvages less the allowance, m */
  readonly across: number;
  readonly room: number;
  readonly splice: { readonly at: readonly number[]; readonly overlap: number };
};

export type Nest = {
  readonly placements: readonly Placement[];
  /** Of cloth off the roll, allowance and all, m */
  readonly length: number;
  /** Area of the pieces over area of the cloth, 0 to 1 */
  readonly share: number;
  readonly unplaced: readonly Unplaced[];
};

/** One sheet: the part of the drawing it shows, lower left corner and size, m */
export type Tile = {
  readonly row: number;
  readonly column: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
};

export type Tiling = {
  /** Of the paper as it lies, m */
  readonly sheet: { readonly width: number; readonly height: number };
  readonly columns: number;
  readonly rows: number;
  readonly tiles: readonly Tile[];
};
