import { notNegative, numberIn, positive } from '../check.ts';
import { rollIn } from './roll-at.ts';
import type { PieceMass, PieceSpec, Roll, RolledPiece, TubeMass } from './types.ts';

/** kg for each m2 of a piece as cut. */
type PerArea = { dry: number; resin: number };

type Resin = { density: number; fiberVolumeFraction: number; coreFace: number };

/**
 * Weight of a tube as cured, along it and in all; and of the same tube with its thickest wall throughout.
 *
 * @param roll what `rollPieces` gives. Cloth needs `arealWeight` and the `density` of its fiber, core and
 *   film one of the two
 * @param resinDensity cured, kg/m3, greater than 0
 * @param fiberVolumeFraction wanted in the cloth, greater than 0, at most 1
 * @param coreFaceResin that each face of a core drinks, kg/m2, at least 0; 0 when not given
 * @returns see `TubeMass`
 * @throws RangeError naming the field
 *
 * Formula: resin of cloth w/rf (1 - Vf)/Vf rr; the width of the cloth over the slant length of the tube.
 * Source: ASTM D3171, volume fractions by weight.
 *
 * @example
 * // 3 wraps of 193 g/m2 carbon on a 38 mm mandrel, 1 m, 35 % fiber. What does it weigh?
 * tubeMass({
 *   roll: rollPieces({
 *     mandrel: { stations: [{ at: 0, value: 0.038 }, { at: 1, value: 0.038 }], between: 'straight' },
 *     pieces: [
 *       {
 *         kind: 'cloth', thickness: 0.0003, start: 0, clock: 0, angle: 0, overlap: 0,
 *         arealWeight: 0.193, density: 1800,
 *         wraps: { stations: [{ at: 0, value: 3 }, { at: 1, value: 3 }], between: 'straight' },
 *       },
 *     ],
 *     length: 1,
 *     step: 0.1,
 *   }),
 *   resinDensity: 1180,
 *   fiberVolumeFraction: 0.35,
 * }).total
 * // => 0.1569
 */
export function tubeMass(input: {
  roll: Roll;
  resinDensity: number;
  fiberVolumeFraction: number;
  coreFaceResin?: number | undefined;
}): TubeMass {
  const roll = rollIn(input);
  const resin = {
    density: positive(input, 'resinDensity', 'kg/m3'),
    fiberVolumeFraction: numberIn(input, 'fiberVolumeFraction', '', { from: 1e-3, to: 1 }),
    coreFace: input.coreFaceResin === undefined ? 0 : notNegative(input, 'coreFaceResin', 'kg/m2'),
  };
  const perArea = roll.pieces.map(({ spec }, k) => perAreaOf(spec, resin, `pieces[${k}].`));
  const slant = slantOf(roll);
  const pieces = roll.pieces.map((piece, k) => massOf(roll.at, piece, slant, perArea[k]));
  const perMeter = perMeterOf(roll, slant, perArea);
  const total = sumOf(roll.at, perMeter);
  const moment = sumOf(
    roll.at,
    perMeter.map((mass, i) => mass * (roll.at[i] ?? 0)),
  );
  const thickest = sumOf(roll.at, thickestPerMeter(roll, slant, perArea));
  return {
    pieces,
    ...partsOf(roll, pieces),
    total,
    perMeter,
    balance: total > 0 ? moment / total : roll.length / 2,
    thickest,
    saved: thickest - total,
    savedShare: thickest > 0 ? 1 - total / thickest : 0,
  };
}

function perAreaOf(spec: PieceSpec, resin: Resin, path: string): PerArea {
  if (spec.kind === 'cloth') {
    const dry = positive(spec, 'arealWeight', 'kg/m2', path);
    const fiber = dry / positive(spec, 'density', 'kg/m3', path);
    const { fiberVolumeFraction: share } = resin;
    return { dry, resin: ((fiber * (1 - share)) / share) * resin.density };
  }
  const dry =
    spec.arealWeight !== undefined
      ? positive(spec, 'arealWeight', 'kg/m2', path)
      : spec.thickness * positive(spec, 'density', 'kg/m3', path);
  return { dry, resin: spec.kind === 'core' ? 2 * resin.coreFace : 0 };
}

/** Length of the mandrel's side for each m along the tube, in the stretch after each sample. */
function slantOf({ at, diameter }: Roll): Float64Array {
  const slant = new Float64Array(at.length).fill(1);
  for (let i = 0; i < at.length - 1; i += 1) {
    const long = (at[i + 1] ?? 0) - (at[i] ?? 0);
    const rise = ((diameter[i + 1] ?? 0) - (diameter[i] ?? 0)) / 2;
    if (long > 0 && rise !== 0) slant[i] = Math.sqrt(1 + (rise / long) ** 2);
  }
  return slant;
}

/** Integral along the tube of something given at the samples. */
function sumOf(at: Float64Array, series: Float64Array): number {
  let sum = 0;
  for (let i = 1; i < at.length; i += 1) {
    sum += (((at[i] ?? 0) - (at[i - 1] ?? 0)) * ((series[i - 1] ?? 0) + (series[i] ?? 0))) / 2;
  }
  return sum;
}

function massOf(at: Float64Array, { width }: RolledPiece, slant: Float64Array, per?: PerArea): PieceMass {
  let area = 0;
  for (let i = 1; i < at.length; i += 1) {
    const long = (at[i] ?? 0) - (at[i - 1] ?? 0);
    area += (long * (slant[i - 1] ?? 1) * ((width[i - 1] ?? 0) + (width[i] ?? 0))) / 2;
  }
  return { area, dry: area * (per?.dry ?? 0), resin: area * (per?.resin ?? 0) };
}

function perMeterOf({ at, pieces }: Roll, slant: Float64Array, perArea: readonly PerArea[]): Float64Array {
  const perMeter = new Float64Array(at.length);
  pieces.forEach(({ width }, k) => {
    const { dry, resin } = perArea[k] ?? { dry: 0, resin: 0 };
    for (let i = 0; i < at.length; i += 1) {
      perMeter[i] = (perMeter[i] ?? 0) + (width[i] ?? 0) * (dry + resin) * slantAt(slant, i);
    }
  });
  return perMeter;
}

/** At the very end and before a jump there is no stretch after: it is as before it. */
function slantAt(slant: Float64Array, i: number): number {
  const after = slant[i] ?? 1;
  return after === 1 ? (slant[i - 1] ?? 1) : after;
}

/** kg/m of a tube that has, on the mandrel as it is, the wraps of its thickest place throughout. */
function thickestPerMeter(roll: Roll, slant: Float64Array, perArea: readonly PerArea[]): Float64Array {
  const { wallMean, diameter, pieces } = roll;
  let most = 0;
  for (let i = 1; i < wallMean.length; i += 1) if ((wallMean[i] ?? 0) > (wallMean[most] ?? 0)) most = i;
  const perMeter = new Float64Array(diameter.length);
  let built = 0;
  pieces.forEach(({ spec, wraps }, k) => {
    const turns = wraps[most] ?? 0;
    const { dry, resin } = perArea[k] ?? { dry: 0, resin: 0 };
    const perWidth = Math.PI * turns * (dry + resin);
    const rings = built + turns * spec.thickness;
    for (let i = 0; i < perMeter.length; i += 1) {
      perMeter[i] = (perMeter[i] ?? 0) + perWidth * ((diameter[i] ?? 0) + rings) * slantAt(slant, i);
    }
    built += 2 * turns * spec.thickness;
  });
  return perMeter;
}

function partsOf({ pieces }: Roll, masses: readonly PieceMass[]) {
  const parts = { cloth: 0, resin: 0, core: 0, film: 0 };
  pieces.forEach(({ spec }, k) => {
    parts[spec.kind] += masses[k]?.dry ?? 0;
    parts.resin += masses[k]?.resin ?? 0;
  });
  return parts;
}
