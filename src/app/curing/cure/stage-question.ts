import type { ResinSystem } from '#shared/record/resin-system.ts';
import { celsius } from '#shared/reference/quantities.ts';
import type { CureDraft, StageDraft } from './cure-draft.ts';
import { askUnit, expectedFor, type UnitQuestion } from './unit-question.ts';

/** A cooling goes to a shop's or a hand's temperature, K; what it is to be demolded or opened at */
const coolest = celsius(-5);
const warmest = celsius(75);

/** What its temperature is asked about; nothing while it makes sense as typed. */
export function stageQuestion(
  draft: CureDraft,
  stage: StageDraft,
  resin: ResinSystem | undefined,
): UnitQuestion | undefined {
  if (stage.kind === 'hold') return undefined;
  const expected = expectedFor(resin);
  if (stage.kind === 'ramp') return askUnit(stage.to, expected);
  const before = draft.stages.value.slice(0, draft.stages.value.indexOf(stage));
  const from = before.reduce((at, s) => (s.kind === 'hold' ? at : (s.to.si.value ?? at)), warmest);
  return askUnit(stage.to, { low: coolest, high: Math.max(warmest, from) });
}

/** The first stage whose temperature is still asked about. */
export const firstAsked = (draft: CureDraft, resin: ResinSystem | undefined): StageDraft | undefined =>
  draft.stages.value.find((stage) => stageQuestion(draft, stage, resin) !== undefined);
