import { numberIn, positive } from '../check.ts';
import { type Lamina, laminaIn } from '../lamina.ts';
import { type Resin, raised, resinIn, volumeIn } from './halpin-tsai.ts';
import { strengthIn } from './strength.ts';
import type { Assumed, PlyStrength } from './types.ts';

/** A fiber as stiff as can be, and as soft. */
const STIFFEST = 1;

export type RescaledLamina = Lamina & {
  readonly thickness: number;
  readonly strength: PlyStrength | undefined;
  readonly assumed: readonly Assumed[];
};

/**
 * A ply whose figures are known at one fiber volume, at another: stiffness, thickness and strength together, since
 * one without the other would make fiber from nothing.
 *
 * @param lamina known at the stated volume, Pa and Poisson's ratio
 * @param resin `e`, Pa; `nu`
 * @param statedFiberVolume that the figures are for, 0.01 to 0.9069
 * @param fiberVolumeFraction wanted or measured, 0.01 to 0.9069
 * @param thickness at the stated volume, m, greater than 0
 * @param strength at the stated volume, Pa; without it stiffness only
 * @param compressionKnockdown share of the pressed strength that a hand layup reaches, above 0 to 1; 0.6 to 0.7 is
 *   common practice for wet layup. Needed where there is a strength
 * @returns the ply at the volume wanted, and what was assumed
 * @throws RangeError naming the field; `e1` where the resin alone would be stiffer than the ply
 *
 * Formula: the fiber is found from the ply (mixtures along, Halpin-Tsai across, xi 2 and 1) and mixed again; thickness
 * times stated over wanted volume; xt and xc with E1, at the same strain; yt, yc and s as they were.
 * Source: Halpin and Kardos 1976; strength along by the fiber's strain, Kaw, section 3.4.
 *
 * @example
 * // Carbon/epoxy known at 60 %, 0.2 mm thick, laid by hand to 40 %. How thick is it then?
 * rescaleLamina({
 *   lamina: { e1: 140e9, e2: 9e9, g12: 4.5e9, nu12: 0.3 },
 *   resin: { e: 3e9, nu: 0.35 },
 *   statedFiberVolume: 0.6,
 *   fiberVolumeFraction: 0.4,
 *   thickness: 0.0002,
 * }).thickness
 * // => 0.0003
 */
export function rescaleLamina(input: {
  lamina: Lamina;
  resin: Resin;
  statedFiberVolume: number;
  fiberVolumeFraction: number;
  thickness: number;
  strength?: PlyStrength | undefined;
  compressionKnockdown?: number | undefined;
}): RescaledLamina {
  const { lamina } = input;
  laminaIn(lamina, 'lamina.');
  const resin = resinIn(input);
  const stated = volumeIn(input, 'statedFiberVolume');
  const wanted = volumeIn(input, 'fiberVolumeFraction');
  const thickness = (positive(input, 'thickness', 'm') * stated) / wanted;
  const fiber = (lamina.e1 - (1 - stated) * resin.e) / stated;
  if (fiber <= 0)
    throw new RangeError(`lamina.e1 must be more than the resin's share of it, got ${lamina.e1}`);
  const e1 = wanted * fiber + (1 - wanted) * resin.e;
  const e2 = acrossAt(lamina.e2, resin.e, 2, stated, wanted);
  const g12 = acrossAt(lamina.g12, resin.g, 1, stated, wanted);
  const nu12 = resin.nu + ((lamina.nu12 - resin.nu) * wanted) / stated;
  const scaled = { e1, e2: e2.value, g12: g12.value, nu12 };
  laminaIn(scaled, '');
  const strength = strengthAt(input, e1 / lamina.e1);
  const assumed: Assumed[] = ['along by mixtures', 'across by Halpin-Tsai'];
  if (e2.clipped || g12.clipped) assumed.push('fiber stiffer than any across');
  if (strength === undefined) assumed.push('stiffness only');
  else
    assumed.push(
      'strength along with stiffness',
      'strength across unchanged',
      'pressed strength knocked down',
    );
  return { ...scaled, thickness, strength, assumed };
}

/** A modulus across the fibers at another volume; `clipped` when no fiber is stiff enough for what is stated. */
function acrossAt(known: number, bare: number, xi: number, stated: number, wanted: number) {
  const ratio = known / bare;
  const eta = (ratio - 1) / (stated * (ratio + xi));
  const softest = -1 / xi;
  const kept = Math.min(STIFFEST, Math.max(softest, eta));
  return {
    value: (known * raised(kept, xi, wanted)) / raised(kept, xi, stated),
    clipped: kept !== eta,
  };
}

function strengthAt(
  input: { strength?: PlyStrength | undefined; compressionKnockdown?: number | undefined },
  stiffer: number,
): PlyStrength | undefined {
  if (input.strength === undefined) return undefined;
  const strength = strengthIn(input.strength, 'strength.');
  const knockdown = numberIn(input, 'compressionKnockdown', '', { above: 0, to: 1 });
  return { ...strength, xt: strength.xt * stiffer, xc: strength.xc * stiffer * knockdown };
}
