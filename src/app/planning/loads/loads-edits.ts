import type { Fitting, LoadCase, LoadPlan, LoadRecord, Support } from '#shared/record/load-plan.ts';

export const noLoads: LoadPlan = { supports: [], cases: [] };

/** The list with this one in the place of the old one, or at its end. */
function put<T extends { id: string }>(list: readonly T[], one: T): T[] {
  return list.some((o) => o.id === one.id) ? list.map((o) => (o.id === one.id ? one : o)) : [...list, one];
}

const without = <T extends { id: string }>(list: readonly T[], id: string): T[] =>
  list.filter((o) => o.id !== id);

const byPlace = (a: { at: number }, b: { at: number }) => a.at - b.at;

export const withSupport = (plan: LoadPlan, support: Support): LoadPlan => ({
  ...plan,
  supports: put(plan.supports, support).sort(byPlace),
});

export const withoutSupport = (plan: LoadPlan, id: string): LoadPlan => ({
  ...plan,
  supports: without(plan.supports, id),
});

export const withCase = (plan: LoadPlan, one: LoadCase): LoadPlan => ({
  ...plan,
  cases: put(plan.cases, one),
});

export const withoutCase = (plan: LoadPlan, id: string): LoadPlan => ({
  ...plan,
  cases: without(plan.cases, id),
});

/** Into its case as the plan has it now, so that what was changed there meanwhile stays. */
export function withLoad(plan: LoadPlan, of: LoadCase, load: LoadRecord): LoadPlan {
  const now = plan.cases.find((c) => c.id === of.id) ?? of;
  return withCase(plan, { ...now, loads: put(now.loads, load) });
}

export function withoutLoad(plan: LoadPlan, of: string, id: string): LoadPlan {
  const now = plan.cases.find((c) => c.id === of);
  return now ? withCase(plan, { ...now, loads: without(now.loads, id) }) : plan;
}

export const withFitting = (plan: LoadPlan, fitting: Fitting): LoadPlan => ({
  ...plan,
  fittings: put(plan.fittings ?? [], fitting).sort(byPlace),
});

export const withoutFitting = (plan: LoadPlan, id: string): LoadPlan => ({
  ...plan,
  fittings: without(plan.fittings ?? [], id),
});
