import { diameterFromCircumference, fiberVolumeFromThickness, wallFromOutside } from '#calc';
import type { BuildState } from '#shared/record/build-state.ts';
import type { EntryOf } from '#shared/record/entry.ts';
import { laidAt } from './laid-at.ts';

export interface WallAt {
  /** m from the datum end */
  station: number;
  outsideDiameter: number;
  wall: number;
  plyThickness: number;
  /** Absent when the wall is too thin for that much fiber: a slip of the tape or the count. */
  fiberVolume?: number;
  root: string;
}

/** What the first ply lay on at a station: the mandrel and its release, m */
export const innerDiameter = ({ header }: BuildState, station: number): number | undefined =>
  laidAt(header, station)?.inner;

function outside({ what, value }: EntryOf<'measurement'>): number | undefined {
  if (what === 'outsideDiameter') return value;
  return what === 'circumference' ? diameterFromCircumference({ circumference: value }) : undefined;
}

/** Wall, ply thickness and fiber volume at every station that was measured, void-free; core and film left out. */
export function wallsMeasured(state: BuildState): WallAt[] {
  return state.measurements
    .flatMap(({ entry, root }): WallAt[] => {
      const { station } = entry;
      const outsideDiameter = outside(entry);
      const laid = laidAt(state.header, station);
      if (!laid || outsideDiameter === undefined || outsideDiameter <= laid.inner) return [];
      const { plies, arealWeight, fiberDensity, between } = laid;
      const wall = wallFromOutside({ outsideDiameter, innerDiameter: laid.inner });
      const cloth = Math.max(0, wall - between);
      const solid = (plies * arealWeight) / fiberDensity;
      return [
        {
          station,
          outsideDiameter,
          wall,
          plyThickness: cloth / plies,
          ...(cloth >= solid && {
            fiberVolume: fiberVolumeFromThickness({ plies, arealWeight, fiberDensity, wall: cloth }),
          }),
          root,
        },
      ];
    })
    .sort((a, b) => a.station - b.station);
}

/** The one figure by thickness: the mean over the stations. */
export function fiberVolumeByThickness(walls: readonly WallAt[]): number | undefined {
  const volumes = walls.flatMap((w) => (w.fiberVolume === undefined ? [] : [w.fiberVolume]));
  return volumes.length === 0 ? undefined : volumes.reduce((a, b) => a + b, 0) / volumes.length;
}
