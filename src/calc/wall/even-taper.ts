import { type Curve, readCurve, SAME_PLACE } from './curve.ts';

/** Cloth that would have to shear by more than this at its free edge does not lie flat, m. */
const SHEAR = 0.0005;
const JUMP = 1e-5;

/** A smooth mandrel is looked at in so many parts between two stations. */
const PARTS = 8;

/** Half-angle between two places, rad; above 0 when it widens. */
export function halfAngleOf(mandrel: Curve, from: number, to: number): number {
  return Math.atan((readCurve(mandrel, to, true) - readCurve(mandrel, from)) / (2 * (to - from)));
}

/**
 * Refuses a mandrel that bends under a piece: cloth lies flat on a cylinder or on a cone, not on two.
 * A bend is let be when it shears the cloth by less than half a millimeter.
 *
 * @param wraps the most the piece makes, and `width` its widest, m
 * @param name of the piece, for the message
 */
export function checkEven(
  mandrel: Curve,
  { from, to, wraps, width }: { from: number; to: number; wraps: number; width: number },
  name: string,
): void {
  const mean = Math.sin(halfAngleOf(mandrel, from, to));
  const places = [from, ...[...mandrel.at].filter((x) => x > from + SAME_PLACE && x < to - SAME_PLACE), to];
  for (const x of places.slice(1, -1)) {
    if (Math.abs(readCurve(mandrel, x) - readCurve(mandrel, x, true)) > JUMP) refuse(name, x, 'steps');
  }
  for (let k = 1; k < places.length; k += 1) {
    const [a = from, b = to] = [places[k - 1], places[k]];
    for (let part = 0; part < PARTS; part += 1) {
      const [start, end] = [a + (part / PARTS) * (b - a), a + ((part + 1) / PARTS) * (b - a)];
      const off = Math.abs(Math.sin(halfAngleOf(mandrel, start, end)) - mean);
      if (Math.PI * wraps * width * off > SHEAR) refuse(name, k > 1 ? a : b, 'bends');
    }
  }
}

function refuse(name: string, at: number, does: string): never {
  throw new RangeError(
    `mandrel must be a cylinder or one even taper under ${name}: it ${does} at ` +
      `${Number(at.toFixed(3))} m, where the cloth would not lie flat. Make one piece for each side of it`,
  );
}
