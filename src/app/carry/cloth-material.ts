import {
  type Assumed,
  compositeDensity,
  fiberVolumeFromThickness,
  type PieceMaterial,
  type PlyStrength,
  rescaleLamina,
} from '#calc';
import type { Cloth } from '#shared/record/cloth.ts';
import type { LaminaRecord, LaminaStrengths } from '#shared/record/lamina.ts';
import { epoxy, handbookLaminas, plainWeaveCrimp } from '#shared/reference/strengths.ts';

/** Why a cloth's ply cannot be reckoned. */
export type ClothStop = 'no stiffness' | 'fiber volume' | 'lamina' | 'crimp';

export interface ClothMaterial {
  material: Exclude<PieceMaterial, { carries: false }>;
  /** Whose figures they are. */
  from: 'own' | 'handbook';
  /** That they were found at, and that of the ply. */
  statedFiberVolume: number;
  fiberVolume: number;
  /** What the weave leaves along the fibers; of woven cloth only. */
  crimp: number | undefined;
  assumed: readonly Assumed[];
}

/** A ply as it lies in the wall. */
export interface PlyOfCloth {
  cloth: Cloth;
  /** m */
  thickness: number;
  /** kg/m3; without it there is no density */
  resinDensity: number | undefined;
  /** Above 0 to 1 */
  compressionKept: number;
}

export const isWoven = ({ weave }: Cloth): boolean => weave !== 'unidirectional';

/** The figures a cloth is reckoned with, and whose they are; nothing for other fibers without their own. */
export function laminaOf(cloth: Cloth): { lamina: LaminaRecord; from: ClothMaterial['from'] } | undefined {
  if (cloth.lamina) return { lamina: cloth.lamina, from: 'own' };
  const typical: LaminaRecord | undefined = handbookLaminas[cloth.fiber];
  if (!typical) return undefined;
  return {
    lamina: isWoven(cloth) ? { ...typical, crimp: plainWeaveCrimp } : typical,
    from: 'handbook',
  };
}

export const plyStrength = (s: LaminaStrengths): PlyStrength => ({
  xt: s.alongTension,
  xc: s.alongCompression,
  yt: s.acrossTension,
  yc: s.acrossCompression,
  s: s.shear,
});

/** A ply thinner than its own fiber has no fiber volume. */
function fiberVolumeOf({ cloth, thickness }: PlyOfCloth): number | undefined {
  try {
    const { arealWeight, fiberDensity } = cloth;
    return fiberVolumeFromThickness({ plies: 1, arealWeight, fiberDensity, wall: thickness });
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

function whyNot({ message }: RangeError): ClothStop {
  return /^fiberVolumeFraction/.test(message) ? 'fiber volume' : 'lamina';
}

/**
 * One ply of a cloth at the thickness it has in the wall. Its fiber volume follows from that thickness, since a
 * thinner ply of the same cloth is a stiffer one and not less fiber.
 */
export function clothMaterial(ply: PlyOfCloth): ClothMaterial | ClothStop {
  const { cloth, thickness, resinDensity, compressionKept } = ply;
  const known = laminaOf(cloth);
  if (!known) return 'no stiffness';
  const fiberVolumeFraction = fiberVolumeOf(ply);
  if (fiberVolumeFraction === undefined) return 'fiber volume';
  const { fiberVolumeFraction: stated, strengths, crimp = 1, e1, e2, g12, nu12 } = known.lamina;
  try {
    const {
      assumed,
      thickness: _,
      ...lamina
    } = rescaleLamina({
      lamina: { e1, e2, g12, nu12 },
      resin: epoxy,
      statedFiberVolume: stated,
      fiberVolumeFraction,
      thickness: (thickness * fiberVolumeFraction) / stated,
      strength: strengths && plyStrength(strengths),
      compressionKnockdown: compressionKept,
    });
    const woven = isWoven(cloth);
    // What the waves take along may leave too little for Poisson's ratio.
    if (woven && Math.abs(lamina.nu12) >= Math.sqrt((lamina.e1 * crimp) / lamina.e2)) return 'crimp';
    const density =
      resinDensity === undefined
        ? undefined
        : compositeDensity({ fiberVolumeFraction, fiberDensity: cloth.fiberDensity, resinDensity });
    return {
      material: { ...lamina, density, crimpFactor: woven ? crimp : undefined },
      from: known.from,
      statedFiberVolume: stated,
      fiberVolume: fiberVolumeFraction,
      crimp: woven ? crimp : undefined,
      assumed,
    };
  } catch (error) {
    if (error instanceof RangeError) return whyNot(error);
    throw error;
  }
}
