import { numberIn } from '../check.ts';
import type { StationForces, WallSection } from './types.ts';

/** The section of an input, as `wallSection` gave it. */
export function sectionIn(input: { section: WallSection }): WallSection {
  if (input?.section?.laminate?.plies) return input.section;
  throw new RangeError('section must be what wallSection gives');
}

export function forcesIn(input: StationForces): StationForces {
  return {
    moment: numberIn(input, 'moment', 'N m'),
    shear: numberIn(input, 'shear', 'N'),
    torque: numberIn(input, 'torque', 'N m'),
    axial: numberIn(input, 'axial', 'N'),
  };
}
