import type { Recipe } from '#app/laying-up/mix/recipe.ts';
import { wound } from '#app/laying-up/tape/tape-figures.ts';
import { jobOfPlan } from '#app/laying-up/tape/tape-job.ts';
import type { MakingDraft } from '#app/planning/making/draft.ts';
import { clothMassOf, materialsOf } from '#app/planning/making/draft.ts';
import { clothMasses } from '#app/planning/wall/plan-with-wall.ts';
import { hasWall, masses, plyThickness, rollOf, type WalledPlan } from '#app/planning/wall/wall-model.ts';
import { findDoc } from '#app/state/documents.ts';
import type { OutsideAt } from '#calc';
import type { Cloth } from '#shared/record/cloth.ts';
import type { Plan } from '#shared/record/plan.ts';
import type { Need } from './choose-lot.ts';

/** What lots are drawn for: a plan, or a tube about to be started. */
export interface Making {
  cloth: string;
  /** kg */
  clothMass: number;
  resin: string;
  recipe: Recipe | undefined;
  tape: string | undefined;
  /** What the tape is wound on, where it is known. */
  outside: readonly OutsideAt[] | undefined;
  walled: WalledPlan | undefined;
}

/** As tape is wound by hand where nothing else is said: half over, there and back (common practice, no source). */
const winding = { overlapFraction: 0.5, passes: 2 };

/** m2 of each cloth: of a drawn wall by its pieces, else all of it one cloth. */
function clothsOf({ cloth, clothMass, walled }: Making): { item: string; area: number }[] {
  const share = new Map<string, number>();
  if (walled && walled.cloth === cloth) {
    try {
      const mass = masses(walled, rollOf(walled));
      for (const [item, dry] of mass ? clothMasses(walled, mass) : [])
        share.set(item, dry / (mass?.cloth || 1));
    } catch (error) {
      // A wall that cannot be rolled is told where it is drawn; here its weight counts as one cloth.
      if (!(error instanceof RangeError)) throw error;
    }
  }
  if (share.size === 0) share.set(cloth, 1);
  return [...share].flatMap(([item, part]) => {
    const weight = findDoc('cloth', item)?.body.arealWeight;
    return weight === undefined || part <= 0 ? [] : [{ item, area: (part * clothMass) / weight }];
  });
}

function tapeLength({ tape, outside }: Making): number | undefined {
  const body = findDoc('tape', tape)?.body;
  return body && outside && wound(outside, body, winding).ready;
}

const evenOutside = (diameter: number, length: number): OutsideAt[] =>
  [0, length].map((at) => ({ at, diameter }));

function outsideOf(plan: Plan): readonly OutsideAt[] | undefined {
  const job = jobOfPlan(plan);
  return 'says' in job ? undefined : job.outside;
}

/** What it takes of each thing on the shelf, in the order of the work. */
export function needsOf(making: Making): Need[] {
  const { resin: item, recipe, tape } = making;
  const length = tapeLength(making);
  const mixed = (of: 'resin' | 'hardener'): Need => ({
    of,
    item,
    ...(recipe && { amount: recipe.each[of] * recipe.cups }),
  });
  return [
    ...clothsOf(making).map((c): Need => ({ of: 'cloth', item: c.item, amount: c.area })),
    mixed('resin'),
    mixed('hardener'),
    ...(tape ? [{ of: 'tape', item: tape, ...(length !== undefined && { amount: length }) } as const] : []),
  ];
}

export function planNeeds(plan: Plan, clothMass: number, recipe: Recipe | undefined): Need[] {
  const { cloth, resin, tape } = plan;
  const walled = hasWall(plan) ? plan : undefined;
  return needsOf({ cloth, clothMass, resin, recipe, tape, outside: outsideOf(plan), walled });
}

function outsideOfDraft(draft: MakingDraft, cloth: Cloth): readonly OutsideAt[] | undefined {
  if (draft.walled) return outsideOf(draft.walled);
  const diameter = draft.mandrelDiameter.si.value;
  const length = draft.tubeLength.si.value;
  const plies = draft.plies.si.value;
  const fiberVolume = draft.goal.fiberVolume.si.value;
  if (diameter === undefined || length === undefined || plies === undefined) return undefined;
  if (fiberVolume === undefined) return undefined;
  const buildUp = findDoc('release', draft.release.value)?.body.buildUp ?? 0;
  return evenOutside(diameter + buildUp + 2 * plies * plyThickness(cloth, fiberVolume), length);
}

/** Of a tube about to be started; nothing while its cloth is not weighed. */
export function draftNeeds(draft: MakingDraft, recipe: Recipe | undefined): Need[] {
  const cloth = materialsOf(draft)?.cloth.body;
  const clothMass = clothMassOf(draft);
  if (!cloth || clothMass === undefined) return [];
  return needsOf({
    cloth: draft.cloth.value,
    clothMass,
    resin: draft.resin.value,
    recipe,
    tape: draft.tape.value || undefined,
    outside: outsideOfDraft(draft, cloth),
    walled: draft.walled,
  });
}
