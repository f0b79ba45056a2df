import type { Guard } from '#shared/record/entry.ts';
import type { StepState } from '#shared/record/route-state.ts';
import type { SheetName } from './step-action.ts';

/** What stands in front of the route. */
export type Asked =
  | { kind: 'stages' }
  | { kind: 'note' }
  | { kind: 'close' }
  | { kind: 'rate' }
  | { kind: 'step'; step: StepState }
  /** The step goes on being ticked once the guard has its reason. */
  | { kind: 'guard'; guard: Guard; step: StepState }
  | { kind: 'sheet'; sheet: SheetName; round: number; films: 'in' | 'out' };
