import type { ComponentType } from 'preact';
import type { Params } from '#app/router.ts';

export type ScreenType = ComponentType<{ params: Params }>;

/** An address and the screen that answers it. Of two that fit, the earlier one does. */
export interface Route {
  pattern: string;
  load: () => Promise<ScreenType>;
}
