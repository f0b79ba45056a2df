import { diameterFromCircumference, fiberVolumeFromThickness, wallFromOutside } from '#calc';
import type { BuildState } from '#shared/record/build-state.ts';
import type { EntryOf } from '#shared/record/entry.ts';

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

/** What the first ply lay on: the mandrel and its release. */
export function innerDiameter({ header }: BuildState): number | undefined {
  return header.mandrelDiameter === undefined
    ? undefined
    : header.mandrelDiameter + (header.release?.buildUp ?? 0);
}

function outside({ what, value }: EntryOf<'measurement'>): number | undefined {
  if (what === 'outsideDiameter') return value;
  return what === 'circumference' ? diameterFromCircumference({ circumference: value }) : undefined;
}

/** Wall, ply thickness and fiber volume at every station that was measured, void-free. */
export function wallsMeasured(state: BuildState): WallAt[] {
  const inner = innerDiameter(state);
  const { plies, cloth } = state.header;
  if (inner === undefined || plies === undefined) return [];
  return state.measurements
    .flatMap(({ entry, root }): WallAt[] => {
      const outsideDiameter = outside(entry);
      if (outsideDiameter === undefined || outsideDiameter <= inner) return [];
      const wall = wallFromOutside({ outsideDiameter, innerDiameter: inner });
      const solid = (plies * cloth.arealWeight) / cloth.fiberDensity;
      return [
        {
          station: entry.station,
          outsideDiameter,
          wall,
          plyThickness: wall / plies,
          ...(wall >= solid && {
            fiberVolume: fiberVolumeFromThickness({
              plies,
              arealWeight: cloth.arealWeight,
              fiberDensity: cloth.fiberDensity,
              wall,
            }),
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
