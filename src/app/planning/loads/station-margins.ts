import type { CheckName, Margin, StationForces, TubeChecks, WallSection } from '#calc';

/** A station as the plot draws it: its least margin, and whose case that is. */
export interface PlottedStation {
  at: number;
  of: number;
  least: Margin;
}

/** Of one case alone, or the least of all where none is picked. */
export function plotted(checks: TubeChecks, of: number | undefined): PlottedStation[] {
  if (of === undefined) return [...checks.stations];
  return (checks.cases[of]?.stations ?? []).map(({ at, least }) => ({ at, of, least }));
}

/** Shear flow at the neutral axis, N/m: V/(pi R) there, and T/(2 pi R^2) all round. */
export function shearFlow({ radius }: WallSection, { shear, torque }: StationForces): number {
  return Math.abs(shear) / (Math.PI * radius) + Math.abs(torque) / (2 * Math.PI * radius * radius);
}

export interface StationLines {
  margins: readonly { check: CheckName; margin: number; reserve: number }[];
  forces: StationForces;
}

/** Every check of a station under a case. */
export function stationLines(checks: TubeChecks, station: number, of: number): StationLines | undefined {
  const found = checks.cases[of]?.stations[station];
  return found && { margins: found.margins, forces: found.forces };
}

/** Farthest aside of a case, m, and where. */
export function farthest({ at, deflection }: { at: ArrayLike<number>; deflection: ArrayLike<number> }): {
  at: number;
  far: number;
} {
  let best = 0;
  for (let i = 1; i < deflection.length; i += 1) {
    if (Math.abs(deflection[i] ?? 0) > Math.abs(deflection[best] ?? 0)) best = i;
  }
  return { at: at[best] ?? 0, far: Math.abs(deflection[best] ?? 0) };
}
