import { limitsBeside } from '#app/curing/oven/limits-beside.ts';
import { clothMassOf, type MakingDraft, materialsOf, resinGoalOf } from '#app/planning/making/draft.ts';
import { madeOf, wallArea } from '#app/planning/making/wall-cloth.ts';
import { findDoc } from '#app/state/documents.ts';
import { zoneAt } from '#app/state/now.ts';
import { theStore } from '#app/state/shop.ts';
import { type BuildHeader, buildVersion } from '#shared/record/build.ts';
import type { RevisionOf } from '#shared/record/revision.ts';

/**
 * A build's header: plan revision, materials and checklist copied in as they are now, so that no later change of
 * the shelf can alter what was made. Undefined while something is missing.
 */
export function freezeBuild(
  draft: MakingDraft,
  number: number,
  plan: RevisionOf<'plan'> | undefined,
  takes: BuildHeader['takes'],
): BuildHeader | undefined {
  const materials = materialsOf(draft);
  const made = madeOf(draft);
  const clothMass = clothMassOf(draft);
  const goal = resinGoalOf(draft);
  const checklist = findDoc('checklist', draft.checklist.value);
  if (!materials || !made || clothMass === undefined || !goal || !checklist) return undefined;
  const store = theStore();
  const startedAt = Date.now();
  const release = findDoc('release', draft.release.value);
  const tape = findDoc('tape', draft.tape.value);
  const limits = limitsBeside(draft.walled?.wall.pieces, draft.mandrel.value);
  const mandrel = findDoc('mandrel', draft.mandrel.value);
  const mandrelDiameter = draft.mandrelDiameter.si.value;
  const tubeLength = draft.tubeLength.si.value;
  const plies = draft.plies.si.value;
  const amount = draft.amountBy.value === 'mass' ? draft.clothMass : draft.clothArea;
  const area = draft.amountBy.value === 'area' ? draft.clothArea.si.value : wallArea(draft);
  return {
    record: 'build',
    v: buildVersion,
    id: store.newId(),
    name: draft.name.value.trim(),
    number,
    ...(plan && { plan }),
    ...made,
    clothMass,
    typed: amount.typed.value,
    ...(area !== undefined && { clothArea: area }),
    resin: materials.resin.body,
    ...(takes && { takes }),
    ...(release && { release: release.body }),
    ...(tape && { tape: tape.body }),
    ...(mandrel && { mandrel: mandrel.body }),
    goal,
    route: checklist.body.stages,
    ...(plan && { schedule: plan.body.schedule, serviceTemperature: plan.body.serviceTemperature }),
    ...(mandrelDiameter !== undefined && { mandrelDiameter }),
    ...(tubeLength !== undefined && { tubeLength }),
    ...(plies !== undefined && { plies }),
    ...(limits.length > 0 && { limits }),
    startedAt,
    zone: zoneAt(startedAt),
    device: store.device,
  };
}
