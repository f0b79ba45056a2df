import { findDoc } from '#app/state/documents.ts';
import {
  curedPlyThickness,
  developPiece,
  type FlatPiece,
  type PieceBase,
  type PieceSpec,
  type Roll,
  rollPieces,
  type Shape,
  type TubeMass,
  tubeMass,
} from '#calc';
import type { Cloth } from '#shared/record/cloth.ts';
import type { Core } from '#shared/record/core.ts';
import type { Piece, WallPlan } from '#shared/record/piece.ts';
import type { Plan } from '#shared/record/plan.ts';
import type { ReleaseSystem } from '#shared/record/release-system.ts';
import type { ResinSystem } from '#shared/record/resin-system.ts';
import { keptBy } from './kept-by.ts';

/** Where materials are looked up: the shelf as it is, or as a build froze it. */
export interface WallShelf {
  cloth: (id: string | undefined) => Cloth | undefined;
  core: (id: string | undefined) => Core | undefined;
  release: (id: string | undefined) => ReleaseSystem | undefined;
  resin: (id: string | undefined) => ResinSystem | undefined;
}

export const theShelf: WallShelf = {
  cloth: (id) => findDoc('cloth', id)?.body,
  core: (id) => findDoc('core', id)?.body,
  release: (id) => findDoc('release', id)?.body,
  resin: (id) => findDoc('resin', id)?.body,
};

/** Samples of the tube, m; a long tube takes coarser ones, so that a redraw stays within a frame. */
const sampleStep = 0.001;
const mostSamples = 12_000;

/** Polyester release or bagging film where the builder says nothing (common practice, no source). */
export const filmThickness = 0.00005;
export const filmDensity = 1390;

/** A plan whose wall is drawn piece by piece. */
export type WalledPlan = Plan & { wall: WallPlan };

export const hasWall = (plan: Plan): plan is WalledPlan => plan.wall !== undefined;

/** The cloth of a piece: its own, else the plan's. */
export function clothOf(plan: Plan, piece: Piece, shelf = theShelf): Cloth | undefined {
  return piece.kind === 'cloth' ? shelf.cloth(piece.material ?? plan.cloth) : undefined;
}

function sheetOf(plan: Plan, piece: Piece, shelf: WallShelf) {
  if (piece.kind === 'cloth') {
    const cloth = clothOf(plan, piece, shelf);
    return (
      cloth && {
        thickness:
          piece.thickness ?? shopsPly(plan, piece) ?? plyThickness(cloth, plan.goal.fiberVolumeFraction),
        arealWeight: cloth.arealWeight,
        density: cloth.fiberDensity,
      }
    );
  }
  const core = piece.kind === 'core' ? shelf.core(piece.material) : undefined;
  const thickness = piece.thickness ?? core?.thickness ?? (piece.kind === 'film' ? filmThickness : undefined);
  const density = piece.density ?? core?.density ?? (piece.kind === 'film' ? filmDensity : undefined);
  return thickness === undefined || density === undefined ? undefined : { thickness, density };
}

/** The plan's own ply is one of its own cloth. */
function shopsPly(plan: Plan, { material }: Piece): number | undefined {
  return material === undefined || material === plan.cloth ? plan.plyThickness : undefined;
}

/** Of a cured ply, m, as it follows from the cloth and the fiber volume wanted. */
export function plyThickness(cloth: Cloth, fiberVolumeFraction: number): number {
  const { arealWeight, fiberDensity } = cloth;
  return curedPlyThickness({ arealWeight, fiberDensity, fiberVolumeFraction });
}

function specOf(plan: Plan, piece: Piece, index: number, shelf: WallShelf): PieceSpec {
  const sheet = sheetOf(plan, piece, shelf);
  if (!sheet) throw new RangeError(`pieces[${index}].material must be on the shelf, got ${piece.material}`);
  const { kind, start, clock, angle, overlap, shape } = piece;
  const base: PieceBase = { kind, start, clock, angle, overlap, ...sheet };
  switch (shape.by) {
    case 'plies':
      return { ...base, wraps: shape.plies };
    case 'width':
      return { ...base, width: shape.width };
    case 'wall':
      return { ...base, wall: shape.wall };
  }
}

/** The pieces as they are rolled: thickness from cloth and fiber volume, or the shop's own. */
export function pieceSpecs(plan: WalledPlan, shelf = theShelf): PieceSpec[] {
  return plan.wall.pieces.map((piece, index) => specOf(plan, piece, index, shelf));
}

/** Bare mandrel and what the release adds to its diameter. */
export function mandrelOf(plan: WalledPlan, shelf = theShelf): Shape {
  const { stations, between } = plan.wall.mandrel;
  const buildUp = shelf.release(plan.release)?.buildUp ?? 0;
  return { between, stations: stations.map(({ at, value }) => ({ at, value: value + buildUp })) };
}

/**
 * The wall rolled, kept until the wall or one of its materials changes. A tube that is still open somewhere is
 * rolled too, so that a wall can be drawn piece by piece.
 *
 * @param finest step of its samples, m; stations and jumps are among them whatever it is
 * @throws RangeError naming the field, as `rollPieces` does; a material that is gone is 'pieces[0].material'
 */
export function rollOf(plan: WalledPlan, shelf = theShelf, finest = sampleStep): Roll {
  const { wall, tubeLength, goal } = plan;
  const materials = wall.pieces.map((p) =>
    p.kind === 'core' ? shelf.core(p.material) : clothOf(plan, p, shelf),
  );
  const release = shelf.release(plan.release);
  const inputs = [
    finest,
    tubeLength,
    goal.fiberVolumeFraction,
    plan.plyThickness,
    plan.cloth,
    release,
    ...materials,
  ];
  return keptBy(wall, 'roll', inputs, () =>
    rollPieces({
      mandrel: mandrelOf(plan, shelf),
      pieces: pieceSpecs(plan, shelf),
      length: tubeLength,
      step: Math.max(finest, tubeLength / mostSamples),
      mayBeOpen: true,
    }),
  );
}

/** A piece as it is cut, kept as long as its roll. */
export function flatPiece(roll: Roll, piece: number): FlatPiece {
  return keptBy(roll, `flat${piece}`, [], () => developPiece({ roll, piece }));
}

/** All of them, in wrap order. */
export function flatPieces(roll: Roll): FlatPiece[] {
  return roll.pieces.map((_, piece) => flatPiece(roll, piece));
}

/** Resin that a cut core face drinks, kg/m2; the thirstiest core of the wall counts for all. */
export function coreFaceResin({ wall }: WalledPlan, shelf: WallShelf): number {
  const cores = wall.pieces
    .filter((p) => p.kind === 'core')
    .map((p) => shelf.core(p.material)?.faceResin ?? 0);
  return Math.max(0, ...cores);
}

/** What everything weighs; undefined when the plan's resin is gone. */
export function masses(plan: WalledPlan, roll: Roll, shelf = theShelf): TubeMass | undefined {
  const resin = shelf.resin(plan.resin);
  if (!resin) return undefined;
  const input = {
    resinDensity: resin.curedDensity,
    fiberVolumeFraction: plan.goal.fiberVolumeFraction,
    coreFaceResin: coreFaceResin(plan, shelf),
  };
  return keptBy(roll, 'mass', Object.values(input), () => tubeMass({ roll, ...input }));
}
