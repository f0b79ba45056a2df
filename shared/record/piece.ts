import * as z from 'zod/mini';
import { id, name, nonNegative, positive, text } from './common.ts';
import type { Known } from './known.ts';

export const between = ['straight', 'smooth', 'step'] as const;
export const pieceKinds = ['cloth', 'core', 'film'] as const;

const finite = z.number().check(z.gt(-1e12), z.lt(1e12));

/** Something that changes along the tube; what its values are is said by the field it stands in. */
export const shape = z.lazy(() =>
  z.looseObject({
    stations: z.array(z.looseObject({ /** m */ at: finite, value: positive })).check(z.minLength(2)),
    between: z.enum(between),
  }),
);
export type ShapeRecord = Known<z.infer<typeof shape>>;

/** What the builder set at the stations; the other two follow from it. */
export const pieceShape = z.lazy(() =>
  z.discriminatedUnion('by', [
    z.looseObject({ by: z.literal('plies'), plies: shape }),
    z.looseObject({ by: z.literal('width'), /** m */ width: shape }),
    z.looseObject({ by: z.literal('wall'), /** m */ wall: shape }),
  ]),
);
export type PieceShape = Known<z.infer<typeof pieceShape>>;

/** One piece of cloth, core or film of a plan, in wrap order. */
export const piece = z.lazy(() =>
  z.looseObject({
    id,
    name,
    kind: z.enum(pieceKinds),
    /** Cloth or core of the shelf. */
    material: z.optional(id),
    shape: pieceShape,
    /** The shop's own cured ply thickness, or the sheet's, m; without it it follows from the cloth. */
    thickness: z.optional(positive),
    /** Of a core or film sheet, kg/m3 */
    density: z.optional(positive),
    /** m from end 0 of the tube */
    start: nonNegative,
    /** Where its datum edge lies round the tube, rad */
    clock: finite,
    /** Warp to tube axis, rad */
    angle: finite,
    /** m, measured on the outside */
    overlap: nonNegative,
    note: z.optional(text),
  }),
);
export type Piece = Known<z.infer<typeof piece>>;

/** The wall of a plan: what lies on which mandrel. Cloth amount, plies and length of the plan follow from it. */
export const wallPlan = z.lazy(() =>
  z.looseObject({
    /** Bare diameter of the mandrel, m, at m from end 0 of the tube */
    mandrel: shape,
    pieces: z.array(piece).check(z.minLength(1)),
    /** Where the main load presses: the compression side, rad round the tube */
    pressedAt: z.optional(finite),
  }),
);
export type WallPlan = Known<z.infer<typeof wallPlan>>;
