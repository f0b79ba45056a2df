import { type Doc, findDoc } from '#app/state/documents.ts';
import type { LoadPlan } from '#shared/record/load-plan.ts';
import { noLoads } from './loads-edits.ts';

export interface LoadedPlan {
  found: Doc<'plan'>;
  loads: LoadPlan;
  /** m */
  length: number;
  /** Address of its loads. */
  home: string;
}

/** A plan and what it has to carry; undefined when it is not on this phone. */
export function loadedPlan(doc: string | undefined): LoadedPlan | undefined {
  const found = findDoc('plan', doc);
  if (!found) return undefined;
  const { loads = noLoads, tubeLength: length } = found.body;
  return { found, loads, length, home: `/plan/${found.doc}/loads` };
}

/** After the problems are drawn. */
export const focusWrong = (): void => {
  requestAnimationFrame(() => document.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus());
};
