import type { CheckName, LoadCase, TubeChecks } from './tube-checks.ts';
import type { Support, TubePly } from './types.ts';

/** What asks for the plies at a station: a check, how far it may bend, the drop-off, or the least that was set. */
export type Ruling = CheckName | 'deflection' | 'drop-off' | 'least';

export type WantedPlies = {
  readonly stations: readonly {
    readonly at: number;
    readonly plies: number;
    readonly rules: Ruling;
    /** Least margin of all checks and cases, and which check that is. */
    readonly margin: number;
    readonly check: CheckName;
  }[];
  /** False where even `most` plies do not do. */
  readonly met: boolean;
  /** kg; with the thickest throughout; undefined where a density is missing */
  readonly mass: number | undefined;
  readonly constantMass: number | undefined;
  /** Farthest it goes aside in any case, m */
  readonly deflection: number;
  readonly checks: TubeChecks;
};

export type WantedInput = {
  readonly stations: readonly {
    readonly at: number;
    readonly innerDiameter: number;
    /** What lies there besides, under and over the plies that are asked for. */
    readonly inside?: readonly TubePly[] | undefined;
    readonly outside?: readonly TubePly[] | undefined;
  }[];
  readonly always: readonly TubePly[];
  readonly ply: readonly TubePly[];
  readonly least: number;
  readonly most: number;
  readonly supports: readonly Support[];
  readonly cases: readonly LoadCase[];
  readonly safetyFactor: number;
  readonly freeLength: number;
  readonly deflectionLimit?: number | undefined;
  readonly dropLength: number;
  readonly onePeak: boolean;
};
