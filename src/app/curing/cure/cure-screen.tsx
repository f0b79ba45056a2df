import { LimitList } from '#app/curing/oven/limit-check.tsx';
import { Absent } from '#app/parts/absent.tsx';
import { Action } from '#app/parts/action.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { planMaterials } from '#app/planning/plans/plan-estimate.ts';
import { planLimits } from '#app/planning/plans/plan-limits.ts';
import { go, type Params } from '#app/router.ts';
import { findDoc, saveDoc } from '#app/state/documents.ts';
import { cureIsGood, focusWrong } from './check-cure.ts';
import { type CureDraft, cureDraft, scheduleOf } from './cure-draft.ts';
import { ScheduleEditor } from './schedule-editor.tsx';
import { StarterPick } from './starter-pick.tsx';

/** What is typed here stays while the builder looks something up elsewhere. */
const drafts = new Map<string, CureDraft>();

/** How hot, how fast, how long, and what in the oven stands it? */
export function CureScreen({ params }: { params: Params }) {
  const found = findDoc('plan', params.doc);
  if (!found) return <Absent what="plan" />;
  const plan = found.body;
  const key = found.revision.id;
  const draft = drafts.get(key) ?? cureDraft(plan.schedule);
  drafts.set(key, draft);
  const materials = planMaterials(plan);
  const resin = materials?.resin;
  const limits = materials ? planLimits(plan, materials) : [];
  const save = async () => {
    const schedule = cureIsGood(draft, resin) ? scheduleOf(draft) : undefined;
    if (!schedule) {
      focusWrong();
      return;
    }
    const doc = await saveDoc('plan', { ...plan, schedule }, { doc: found.doc });
    if (doc === undefined) return;
    drafts.delete(key);
    go(`/plan/${doc}`);
  };
  return (
    <Screen
      kicker={plan.name}
      title="Cure"
      back={{ to: `/plan/${found.doc}`, label: plan.name }}
      actions={<Action onPress={save}>Save the cure</Action>}
    >
      <StarterPick draft={draft} />
      <ScheduleEditor draft={draft} limits={limits} resins={resin ? [resin] : []} tape={materials?.tape} />
      <LimitList limits={limits} />
    </Screen>
  );
}
