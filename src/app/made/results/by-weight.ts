import { partMasses } from '#app/state/masses.ts';
import { fiberVolumeFraction, resinMassFraction, wetResinFraction } from '#calc';
import type { BuildState } from '#shared/record/build-state.ts';

export interface LaminateByWeight {
  /** kg */
  cloth: number;
  resin: number;
  /** Tube without film left in it, kg */
  tube: number;
  filmLeft: number;
  /** Resin as a share of resin and cloth. */
  resinShare: number;
  fiberVolume: number;
}

export type ByWeight =
  | { ok: true; value: LaminateByWeight }
  /** Not weighed yet, or the weights contradict each other. */
  | { ok: false; why: 'notWeighed' | 'lighterThanCloth' };

interface Facts {
  cloth: number;
  cured: number | undefined;
  filmLeft?: number | undefined;
  /** Core sheet with the resin in its faces, kg */
  core?: number | undefined;
  fiberDensity: number;
  resinDensity: number;
}

/** What a cured tube's weight says of its wall, void-free. */
export function laminateByWeight({
  cloth,
  cured,
  filmLeft = 0,
  core = 0,
  fiberDensity,
  resinDensity,
}: Facts): ByWeight {
  if (cured === undefined) return { ok: false, why: 'notWeighed' };
  if (cured < cloth + core + filmLeft) return { ok: false, why: 'lighterThanCloth' };
  const resinShare = resinMassFraction({ clothMass: cloth, partMass: cured - core, filmLeft });
  const tube = cured - filmLeft;
  const resin = tube - core - cloth;
  const fiberVolume = fiberVolumeFraction({ fiberMass: cloth, resinMass: resin, fiberDensity, resinDensity });
  return { ok: true, value: { cloth, resin, tube, filmLeft, resinShare, fiberVolume } };
}

export function curedByWeight(state: BuildState): ByWeight {
  const masses = partMasses(state);
  return laminateByWeight({
    cloth: masses.cloth,
    cured: masses.cured,
    filmLeft: masses.filmLeft,
    core: masses.core,
    fiberDensity: state.header.cloth.fiberDensity,
    resinDensity: state.header.resin.curedDensity,
  });
}

/** Resin share of the wet cloth between its films: the one figure that can still be corrected. */
export function wetShare(state: BuildState): number | 'notWeighed' | 'lighterThanCloth' {
  const { cloth, wet, wetFilms = 0 } = partMasses(state);
  if (wet === undefined) return 'notWeighed';
  if (wet < cloth + wetFilms) return 'lighterThanCloth';
  return wetResinFraction({ clothMass: cloth, wetMass: wet, filmMass: wetFilms });
}
