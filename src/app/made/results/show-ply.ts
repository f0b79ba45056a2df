import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';

/** A ply's thickness as it is compared: a hundredth of a millimeter is too coarse, a thou is not. */
export const showPly = (meters: number): string =>
  show(meters, 'thickness', settings.value.units === 'metric' ? 3 : 1);
