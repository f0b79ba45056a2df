import type { LoadCase, LoadPlan, LoadRecord, Support } from '#shared/record/load-plan.ts';

export const foot: Support = { id: 'foot', holds: 'builtIn', at: 0 };
export const rest = (at: number, more: object = {}): Support => ({
  id: `rest-${at}`,
  holds: 'rests',
  at,
  ...more,
});
export const sleeve = (at: number, length: number, more: object = {}): Support => ({
  id: 'sleeve',
  holds: 'sleeve',
  at,
  length,
  ...more,
});

export const force = (at: number, newtons: number, more: Partial<LoadRecord> = {}): LoadRecord =>
  ({ id: `force-${at}`, kind: 'point', at, force: newtons, ...more }) as LoadRecord;

export const caseOfLoads = (loads: LoadRecord[], more: Partial<LoadCase> = {}): LoadCase => ({
  id: 'gust',
  name: 'Gust',
  loads,
  loadFactor: 1,
  ...more,
});

/** A tube built in at its foot with 50 N at its tip, ready to be checked. */
export const tipPulled = (tip: number, change: Partial<LoadPlan> = {}): LoadPlan => ({
  supports: [foot],
  cases: [caseOfLoads([force(tip, 50)])],
  safetyFactor: 2,
  ...change,
});
