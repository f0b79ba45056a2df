import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { Row, Rows } from '#app/parts/rows.tsx';
import { Warning } from '#app/parts/warning.tsx';
import type { Plan } from '#shared/record/plan.ts';
import { type MarginsOfPlan, marginsOfPlan } from './margins-of-plan.ts';
import { leastOf, marginWords } from './ruling.ts';

/** Reckoned once the plan stands on the screen: the way to its start does not wait for its margins. */
function useMargins(doc: string, plan: Plan): MarginsOfPlan | undefined {
  const found = useSignal<{ of: Plan; margins: MarginsOfPlan } | undefined>(undefined);
  useEffect(() => {
    if (!plan.loads) return undefined;
    const later = setTimeout(() => {
      found.value = { of: plan, margins: marginsOfPlan(doc, plan) };
    }, 50);
    return () => clearTimeout(later);
  }, [doc, plan]);
  return found.value?.of === plan ? found.value.margins : undefined;
}

function aboutWords(plan: Plan, margins: MarginsOfPlan | undefined): string {
  if (!plan.loads) return 'How it is held, what pulls on it, what its wall bears';
  const missing = margins && !margins.ok ? margins.troubles[0] : undefined;
  return missing ? missing.says : 'Held, loaded, least margin';
}

/** The way to what a plan's tube carries, and whether its wall does. */
export function PlanLoads({ doc, plan }: { doc: string; plan: Plan }) {
  const margins = useMargins(doc, plan);
  const least = margins?.ok ? leastOf(margins.checked.checks)?.margin : undefined;
  return (
    <>
      <Rows label="What it carries">
        <Row
          to={`/plan/${doc}/loads`}
          title="Loads and margins"
          about={aboutWords(plan, margins)}
          value={least === undefined ? undefined : marginWords(least)}
        />
      </Rows>
      {least !== undefined && least < 0 && (
        <Warning kind="amber" title="By its loads the wall does not hold">
          See where under Loads and margins, before cloth is cut.
        </Warning>
      )}
    </>
  );
}
