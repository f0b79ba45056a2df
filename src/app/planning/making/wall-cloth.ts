import { wallCloth } from '#app/planning/wall/wall-mix.ts';
import { findDoc } from '#app/state/documents.ts';
import type { Cloth } from '#shared/record/cloth.ts';
import { type MakingDraft, materialsOf } from './draft.ts';

export interface MadeOf {
  /** The chosen cloth, or several of a wall blended into one. */
  cloth: Cloth;
  /** Sheet of a wall's core, and the resin its faces drink, kg */
  coreMass?: number;
  coreResin?: number;
}

/** What the recipe counts with. As soon as another cloth than the plan's is chosen, the wall no longer tells. */
export function madeOf(draft: MakingDraft): MadeOf | undefined {
  const materials = materialsOf(draft);
  if (!materials) return undefined;
  const { walled, goal } = draft;
  const fiberVolumeFraction = goal.fiberVolume.si.value;
  const asPlanned = walled && draft.cloth.value === walled.cloth && draft.resin.value === walled.resin;
  if (!asPlanned || fiberVolumeFraction === undefined) return { cloth: materials.cloth.body };
  const plan = { ...walled, goal: { ...walled.goal, fiberVolumeFraction } };
  return wallCloth(plan) ?? { cloth: materials.cloth.body };
}

/** Area of the cloth in a drawn wall of one cloth, m2; of several no one area tells anything. */
export function wallArea({ walled }: MakingDraft): number | undefined {
  if (walled?.clothAmount.by !== 'mass') return undefined;
  const cloths = walled.wall.pieces.filter((p) => p.kind === 'cloth').map((p) => p.material ?? walled.cloth);
  const weight = findDoc('cloth', walled.cloth)?.body.arealWeight;
  const one = weight !== undefined && new Set(cloths).size === 1;
  return one ? walled.clothAmount.mass / weight : undefined;
}
