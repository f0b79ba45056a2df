import { show } from '#app/state/show.ts';
import { curedPlyThickness, widthForWraps } from '#calc';
import { clothMassOf, type MakingDraft, materialsOf } from './draft.ts';

/** A wall is rarely even, so only a slip of the unit or the point is asked about. */
const timesOff = 2;
/** More cups than this for one tube are a slip, or a boat. */
const mostCups = 8;

/** Cloth for so many plies the whole length of the tube, kg; undefined while a size is missing. */
export function clothForPlies(draft: MakingDraft): number | undefined {
  const cloth = materialsOf(draft)?.cloth.body;
  const plies = draft.plies.si.value;
  const diameter = draft.mandrelDiameter.si.value;
  const length = draft.tubeLength.si.value;
  const fiberVolumeFraction = draft.goal.fiberVolume.si.value;
  if (!cloth || plies === undefined || diameter === undefined || length === undefined) return undefined;
  if (fiberVolumeFraction === undefined) return undefined;
  const { arealWeight, fiberDensity } = cloth;
  const plyThickness = curedPlyThickness({ arealWeight, fiberDensity, fiberVolumeFraction });
  return widthForWraps({ wraps: plies, startDiameter: diameter, plyThickness }) * length * arealWeight;
}

/** Why the cloth on the scale is hardly this tube's; undefined when it may be. */
export function clothDoubt(draft: MakingDraft, cups: number | undefined): string | undefined {
  const mass = clothMassOf(draft);
  if (mass === undefined) return undefined;
  const wanted = clothForPlies(draft);
  if (wanted !== undefined && (mass > timesOff * wanted || mass < wanted / timesOff)) {
    return `Its plies the whole length take about ${show(wanted, 'mass', 0)}, not ${show(mass, 'mass')}. Check the figure, the plies and the mandrel.`;
  }
  if (wanted === undefined && cups !== undefined && cups > mostCups) {
    return `${show(mass, 'mass')} of cloth is ${cups} cups of resin. Is the point where it belongs?`;
  }
  return undefined;
}
