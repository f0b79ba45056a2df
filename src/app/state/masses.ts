import type { BuildState } from '#shared/record/build-state.ts';

export interface PartMasses {
  /** Dry cloth in the tube: as weighed after cutting, else as the build was started with, kg */
  cloth: number;
  /** Cured tube before end trim, or tube and offcuts together; film still in it, kg */
  cured?: number;
  /** What goes into a structure: without its offcuts, film still in it, kg */
  trimmed?: number;
  /** Film that went in less film that came out, kg */
  filmLeft?: number;
  /** Wet cloth between its films, kg */
  wet?: number;
  wetFilms?: number;
  /** Core sheet in the wall with the resin its faces drink; it says nothing of the cloth's resin, kg */
  core?: number;
}

/** The weights that results are computed from. A tube trimmed before it was weighed counts with its offcuts. */
export function partMasses(state: BuildState): PartMasses {
  const mass = (what: Parameters<BuildState['weights']['get']>[0]) => state.weights.get(what)?.entry.mass;
  const offcut = mass('offcut');
  const asTrimmed = mass('trimmed');
  // Without its offcuts their cloth would count as no resin: no result is better than a lean one that is none.
  const together = asTrimmed === undefined || offcut === undefined ? undefined : asTrimmed + offcut;
  const cured = mass('cured') ?? together;
  const trimmed = asTrimmed ?? (cured === undefined ? undefined : Math.max(0, cured - (offcut ?? 0)));
  const filmIn = mass('filmIn');
  const { coreMass, coreResin = 0 } = state.header;
  const wet = mass('wetCloth');
  const wetFilms = mass('wetFilms');
  return {
    cloth: mass('cutCloth') ?? state.header.clothMass,
    ...(cured !== undefined && { cured }),
    ...(trimmed !== undefined && { trimmed }),
    ...(filmIn !== undefined && { filmLeft: Math.max(0, filmIn - (mass('filmOut') ?? 0)) }),
    ...(wet !== undefined && { wet }),
    ...(wetFilms !== undefined && { wetFilms }),
    ...(coreMass !== undefined && { core: coreMass + coreResin }),
  };
}
