import { signal } from '@preact/signals';
import type { LoadCase, LoadPlan } from '#shared/record/load-plan.ts';

/** The case that was looked at last, of each plan. */
const chosen = signal<ReadonlyMap<string, string>>(new Map());

export function chosenCase(doc: string, { cases }: LoadPlan): LoadCase | undefined {
  const id = chosen.value.get(doc);
  return cases.find((c) => c.id === id) ?? cases[0];
}

export function chooseCase(doc: string, id: string): void {
  chosen.value = new Map(chosen.peek()).set(doc, id);
}
