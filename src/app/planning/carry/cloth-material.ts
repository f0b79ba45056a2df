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
  /** Fiber volume whose resin it is weighed with; that of its own thickness when absent. */
  weighedAt?: number | undefined;
  /** Above 0 to 1 */
  compressionKept: number;
}

export const strengthKeys = [
  'alongTension',
  'alongCompression',
  'acrossTension',
  'acrossCompression',
  'shear',
] as const satisfies (keyof LaminaStrengths)[];

export const isWoven = ({ weave }: Cloth): boolean => weave !== 'unidirectional';

/** What the handbook has for a cloth of this fiber and weave; of other fibers nothing is known. */
export function handbookLamina(cloth: Cloth): LaminaRecord | undefined {
  const typical: LaminaRecord | undefined = handbookLaminas[cloth.fiber];
  return typical && isWoven(cloth) ? { ...typical, crimp: plainWeaveCrimp } : typical;
}

/** Figures that were only taken over are the handbook's still. */
const isSame = (a: LaminaRecord, b: LaminaRecord | undefined): boolean =>
  b !== undefined &&
  (['fiberVolumeFraction', 'e1', 'e2', 'g12', 'nu12', 'crimp'] as const).every((key) => a[key] === b[key]) &&
  strengthKeys.every((key) => a.strengths?.[key] === b.strengths?.[key]);

/** The figures a cloth is reckoned with, and whose they are; nothing for other fibers without their own. */
export function laminaOf(cloth: Cloth): { lamina: LaminaRecord; from: ClothMaterial['from'] } | undefined {
  const typical = handbookLamina(cloth);
  if (!cloth.lamina) return typical && { lamina: typical, from: 'handbook' };
  return { lamina: cloth.lamina, from: isSame(cloth.lamina, typical) ? 'handbook' : 'own' };
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

/** A shop's ply is thicker or thinner than its fiber volume says, and yet weighs cloth and resin as planned. */
function densityOf({ cloth, resinDensity, weighedAt }: PlyOfCloth, own: number): number | undefined {
  if (resinDensity === undefined) return undefined;
  const fiberVolumeFraction = weighedAt ?? own;
  const { fiberDensity } = cloth;
  return (compositeDensity({ fiberVolumeFraction, fiberDensity, resinDensity }) * own) / fiberVolumeFraction;
}

function whyNot({ message }: RangeError): ClothStop {
  return /^fiberVolumeFraction/.test(message) ? 'fiber volume' : 'lamina';
}

/**
 * One ply of a cloth at the thickness it has in the wall. Its fiber volume follows from that thickness, since a
 * thinner ply of the same cloth is a stiffer one and not less fiber.
 */
export function clothMaterial(ply: PlyOfCloth): ClothMaterial | ClothStop {
  const { cloth, thickness, compressionKept } = ply;
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
    const density = densityOf(ply, fiberVolumeFraction);
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
