import type { BuildState } from '#shared/record/build-state.ts';

/** What every sheet of the route is given. */
export interface SheetProps {
  state: BuildState;
  round: number;
  newId: () => string;
  onClose: () => void;
}
