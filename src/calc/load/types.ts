import type { Lamina } from '../lamina.ts';
import type { Matrix3 } from '../laminate.ts';

/** What one ply bears in its own directions, Pa, each greater than 0. */
export type PlyStrength = {
  /** Along the fibers, pulled and pressed */
  readonly xt: number;
  readonly xc: number;
  /** Across them, pulled and pressed */
  readonly yt: number;
  readonly yc: number;
  /** Shear in the plane */
  readonly s: number;
};

/** What was taken for true that nobody measured; the app says it in words. */
export type Assumed =
  | 'along by mixtures'
  | 'across by Halpin-Tsai'
  | 'fiber stiffer than any across'
  | 'strength along with stiffness'
  | 'strength across unchanged'
  | 'pressed strength knocked down'
  | 'stiffness only';

/** A material that may lie in the wall: strengths and density are optional, and what needs them is then left out. */
export type LoadMaterial = Lamina & {
  readonly strength?: PlyStrength | undefined;
  /** As cured, fiber and resin, kg/m3 */
  readonly density?: number | undefined;
};

/** Part of the turn that a ply covers, rad, `to` above `from` by no more than a turn; without it all round. */
export type Arc = { readonly from: number; readonly to: number };

/** One ply of a tube's wall: `angle` of its fibers to the axis, rad; `thickness`, m. */
export type CarryingPly = LoadMaterial & {
  readonly carries?: true | undefined;
  readonly angle: number;
  readonly thickness: number;
  readonly arc?: Arc | undefined;
};

/** What lies in the wall and takes up room, but bears nothing: a core, a film. */
export type IdlePly = {
  readonly carries: false;
  readonly thickness: number;
  readonly arc?: Arc | undefined;
  readonly density?: number | undefined;
};

export type TubePly = CarryingPly | IdlePly;

/** A ply of the thinnest place, ready for stresses: stiffness in the tube's directions, middle from the wall's middle. */
export type WallPly = {
  /** Its number in the list that was given. */
  readonly ply: number;
  readonly stiffness: Matrix3;
  readonly angle: number;
  readonly thickness: number;
  /** m from the middle of the wall, outward */
  readonly middle: number;
  readonly strength: PlyStrength | undefined;
};

/** The wall where it is thinnest, as a laminate; x along the tube, y round it. N/m and N m. */
export type WallLaminate = {
  readonly a: Matrix3;
  /** Coupling about the middle of the wall, N */
  readonly b: Matrix3;
  /** Inverse of `a`, m/N */
  readonly flexibility: Matrix3;
  /** Bending about the wall's own neutral surface: D - B A^-1 B */
  readonly d: Matrix3;
  readonly thickness: number;
  readonly plies: readonly WallPly[];
};

/** A tube at one station. */
export type WallSection = {
  /** m; `radius` to the middle of the mean wall */
  readonly innerDiameter: number;
  readonly outsideDiameter: number;
  readonly radius: number;
  readonly wallMin: number;
  readonly wallMax: number;
  readonly wallMean: number;
  /** Of all that lies in the wall, m2 */
  readonly area: number;
  /** kg/m; nothing where a density is missing */
  readonly massPerLength: number | undefined;
  /** N */
  readonly ea: number;
  /** N m2, about the two principal axes */
  readonly eiLeast: number;
  readonly eiMost: number;
  /** Direction round the tube toward which it bends most easily, rad, 0 to less than pi */
  readonly softToward: number;
  /** Of the stiffness' center from the middle of the bore, m, and toward where, rad */
  readonly shift: number;
  readonly shiftToward: number;
  /** N m2 */
  readonly gj: number;
  /** Force for each m of length that squeezes it by so many m: N/m2 */
  readonly ringStiffness: number;
  readonly laminate: WallLaminate;
  /** True when every ply that carries has its strengths. */
  readonly strengthsKnown: boolean;
};

/** Flexibility of a beam at a place: see `beamLine` for what is taken between two stations. */
export type BeamStation = {
  /** m */
  readonly at: number;
  /** N m2 */
  readonly ei: number;
  readonly gj: number;
};

/** What a `clamp` holds is all; a `rest` and the two contacts of a `sleeve` hold it from going aside, and more if told. */
export type Support =
  | { readonly kind: 'clamp'; readonly at: number }
  | {
      readonly kind: 'rest';
      readonly at: number;
      readonly holdsTwist?: boolean | undefined;
      readonly holdsAxial?: boolean | undefined;
    }
  | {
      readonly kind: 'sleeve';
      readonly from: number;
      readonly to: number;
      readonly holdsTwist?: boolean | undefined;
      readonly holdsAxial?: boolean | undefined;
    };

export type LoadStation = { readonly at: number; readonly value: number };

/**
 * Forces aside are positive where deflection is; a moment where it raises the slope; a torque where it raises the
 * twist; an axial force where it points to the far end. `spread` is N/m, `spreadTorque` N m/m, straight between
 * stations.
 */
export type BeamLoad =
  | { readonly kind: 'point'; readonly at: number; readonly force: number }
  | { readonly kind: 'moment'; readonly at: number; readonly moment: number }
  | { readonly kind: 'spread'; readonly stations: readonly LoadStation[] }
  | { readonly kind: 'torque'; readonly at: number; readonly torque: number }
  | { readonly kind: 'spreadTorque'; readonly stations: readonly LoadStation[] }
  | { readonly kind: 'axial'; readonly at: number; readonly force: number };

export type Beam = {
  readonly stations: readonly BeamStation[];
  readonly supports: readonly Support[];
  readonly loads: readonly BeamLoad[];
  /** All loads times this. */
  readonly loadFactor: number;
};

/** What a support gives back: N, N m. */
export type Reaction = {
  readonly at: number;
  readonly force: number;
  readonly moment: number;
  readonly torque: number;
  readonly axial: number;
};

/**
 * Along the tube. `at` holds every station, load and support; where a diagram jumps it comes twice, first as it is
 * before and then as after.
 */
export type BeamSolution = {
  readonly at: Float64Array;
  /** N */
  readonly shear: Float64Array;
  /** N m */
  readonly moment: Float64Array;
  readonly torque: Float64Array;
  /** N, pulled is positive */
  readonly axial: Float64Array;
  /** m, rad, rad */
  readonly deflection: Float64Array;
  readonly slope: Float64Array;
  readonly twist: Float64Array;
  readonly reactions: readonly Reaction[];
};

/** What acts on the tube at a station: N, N m. Signs are of no matter but for `axial`, where pulled is positive. */
export type StationForces = {
  readonly moment: number;
  readonly shear: number;
  readonly torque: number;
  readonly axial: number;
};
