import { keptBy } from '#app/planning/wall/kept-by.ts';
import { openAt } from '#app/planning/wall/wall-cautions.ts';
import { firstWall } from '#app/planning/wall/wall-edits.ts';
import {
  clothOf,
  coreFaceResin,
  hasWall,
  rollOf,
  theShelf,
  type WalledPlan,
  type WallShelf,
} from '#app/planning/wall/wall-model.ts';
import { type Assumed, type PieceMaterial, pliesAt, type Roll, type TubePly } from '#calc';
import type { Piece, WallPlan } from '#shared/record/piece.ts';
import type { Plan, ShopStiffness } from '#shared/record/plan.ts';
import { compressionKept as usualKept } from '#shared/reference/strengths.ts';
import { type ClothMaterial, type ClothStop, clothMaterial } from './cloth-material.ts';

export interface ClothRef {
  id: string;
  name: string;
}

/** Why a plan's tube cannot be reckoned at all. */
export type TubeStop =
  /** As `wallProblem` says it in words. */
  | { why: 'wall'; error: RangeError; plan: WalledPlan }
  /** Less than a ply of cloth all round, m */
  | { why: 'open'; at: number }
  | { why: ClothStop; cloth: ClothRef };

/** A cloth of the wall at one ply thickness. */
export interface ClothInTube extends ClothRef, Omit<ClothMaterial, 'material'> {
  /** m */
  thickness: number;
  strengthsKnown: boolean;
}

export interface TubeAssumed {
  /** Each once. */
  what: readonly (Assumed | 'handbook values' | 'crimp' | 'shop stiffness' | 'even wall' | 'no density')[];
  /** The shop's own, where the plan takes it. */
  stiffness?: ShopStiffness | undefined;
  /** What a wet layup keeps of its strength in compression, and whose figure that is. */
  compressionKept: number;
  compressionKeptFrom: 'plan' | 'book';
}

/** The tube of a plan, ready to be cut across anywhere. */
export interface Tube {
  /** An even one of the plan's plies where none is drawn. */
  wall: WallPlan;
  drawn: boolean;
  roll: Roll;
  /** m */
  length: number;
  /** One for each piece of the roll, in wrap order. */
  materials: readonly PieceMaterial[];
  cloths: readonly ClothInTube[];
  assumed: TubeAssumed;
  /** Without strengths there is stiffness and buckling only. */
  withoutStrengths: readonly ClothRef[];
}

export type TubeOfPlan = { ok: true; tube: Tube } | { ok: false; stops: readonly TubeStop[] };

/** A plan as if its wall were drawn: one even piece, warp along, where it is not. */
function walled(plan: Plan): WalledPlan {
  if (hasWall(plan)) return plan;
  return keptBy(plan, 'even wall', [], () => ({
    ...plan,
    wall: firstWall(plan, 'even-wall', 'Even wall', 0).wall,
  }));
}

/** None typed or a share of nothing: the usual one. */
function keptInCompression({ loads }: Plan): Pick<TubeAssumed, 'compressionKept' | 'compressionKeptFrom'> {
  return loads?.compressionKept
    ? { compressionKept: loads.compressionKept, compressionKeptFrom: 'plan' }
    : { compressionKept: usualKept, compressionKeptFrom: 'book' };
}

/** As stiff along and across as tubes of this shop came out; what it bears stays. */
function stiffAs(
  material: ClothMaterial['material'],
  stiffness: ShopStiffness | undefined,
): ClothMaterial['material'] {
  if (!stiffness) return material;
  const { factor } = stiffness;
  return { ...material, e1: material.e1 * factor, e2: material.e2 * factor };
}

type OfPiece = { idle: PieceMaterial } | { cloth: ClothInTube; material: PieceMaterial } | { stop: TubeStop };

function ofPiece(plan: WalledPlan, roll: Roll, index: number, piece: Piece, shelf: WallShelf): OfPiece {
  const spec = roll.pieces[index]?.spec;
  const thickness = spec?.thickness ?? 0;
  const cloth = clothOf(plan, piece, shelf);
  if (!cloth) {
    // A core weighs with the resin its faces drink, as it does in the weights of the wall.
    const drinks = piece.kind === 'core' ? (2 * coreFaceResin(plan, shelf)) / thickness : 0;
    const density = spec?.density === undefined ? undefined : spec.density + drinks;
    return { idle: { carries: false, density } };
  }
  const ref: ClothRef = { id: piece.material ?? plan.cloth, name: cloth.name };
  const found = clothMaterial({
    cloth,
    thickness,
    resinDensity: shelf.resin(plan.resin)?.curedDensity,
    weighedAt: plan.goal.fiberVolumeFraction,
    compressionKept: keptInCompression(plan).compressionKept,
  });
  if (typeof found === 'string') return { stop: { why: found, cloth: ref } };
  const { material, ...about } = found;
  return {
    material: stiffAs(material, plan.stiffness),
    cloth: { ...ref, ...about, thickness, strengthsKnown: material.strength !== undefined },
  };
}

const once = <T>(list: readonly T[], key: (one: T) => string): T[] => [
  ...new Map(list.map((one) => [key(one), one])).values(),
];

function assumedOf(plan: Plan, tube: Pick<Tube, 'drawn' | 'cloths' | 'materials'>): TubeAssumed {
  const { drawn, cloths, materials } = tube;
  const what: TubeAssumed['what'][number][] = [
    ...(cloths.some(({ from }) => from === 'handbook') ? (['handbook values'] as const) : []),
    ...cloths.flatMap(({ assumed }) => assumed),
    ...(cloths.some(({ crimp }) => crimp !== undefined) ? (['crimp'] as const) : []),
    ...(plan.stiffness ? (['shop stiffness'] as const) : []),
    ...(drawn ? [] : (['even wall'] as const)),
    ...(materials.some(({ density }) => density === undefined) ? (['no density'] as const) : []),
  ];
  return { what: [...new Set(what)], stiffness: plan.stiffness, ...keptInCompression(plan) };
}

function made(plan: WalledPlan, drawn: boolean, roll: Roll, shelf: WallShelf): TubeOfPlan {
  const pieces = plan.wall.pieces.map((piece, i) => ofPiece(plan, roll, i, piece, shelf));
  const open = openAt(roll);
  const stops = [
    ...once(
      pieces.flatMap((p) => ('stop' in p ? [p.stop] : [])),
      (s) => ('cloth' in s ? `${s.why} ${s.cloth.id}` : s.why),
    ),
    ...(open === undefined ? [] : [{ why: 'open', at: open } as const]),
  ];
  if (stops.length > 0) return { ok: false, stops };
  const materials = pieces.flatMap((p) => ('stop' in p ? [] : 'idle' in p ? [p.idle] : [p.material]));
  const cloths = once(
    pieces.flatMap((p) => ('cloth' in p ? [p.cloth] : [])),
    (c) => `${c.id} ${c.thickness}`,
  );
  const withoutStrengths = once(
    cloths.filter((c) => !c.strengthsKnown),
    (c) => c.id,
  ).map(({ id, name }) => ({ id, name }));
  const tube = { wall: plan.wall, drawn, roll, length: roll.length, materials, cloths, withoutStrengths };
  return { ok: true, tube: { ...tube, assumed: assumedOf(plan, tube) } };
}

/** The tube of a plan with what its wall is made of, or why it cannot be reckoned. */
export function tubeOfPlan(given: Plan, shelf = theShelf): TubeOfPlan {
  const plan = walled(given);
  try {
    const roll = rollOf(plan, shelf);
    const inputs = [
      shelf.resin(plan.resin),
      plan.resin,
      plan.goal.fiberVolumeFraction,
      plan.loads?.compressionKept,
      plan.stiffness,
    ];
    return keptBy(roll, 'tube', inputs, () => made(plan, hasWall(given), roll, shelf));
  } catch (error) {
    if (error instanceof RangeError) return { ok: false, stops: [{ why: 'wall', error, plan }] };
    throw error;
  }
}

/** What lies on the mandrel at a place, m from end 0, ready for `wallSection`. */
export function pliesIn({ roll, materials }: Tube, at: number): { innerDiameter: number; plies: TubePly[] } {
  return pliesAt({ roll, at, materials });
}
