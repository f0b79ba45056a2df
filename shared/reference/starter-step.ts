import type { Step, StepRole } from '#shared/record/checklist.ts';

interface More {
  hint?: string;
  role?: StepRole;
  /** s */
  waits?: number;
}

/** One line of a checklist. The id stays when the wording changes: ticks name it. */
export function step(id: string, text: string, more: More = {}): Step {
  return { id, text, ...more };
}
