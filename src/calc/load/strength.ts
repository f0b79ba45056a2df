import { positive } from '../check.ts';
import type { PlyStrength } from './types.ts';

/** The strengths of a ply, each checked. */
export function strengthIn(given: PlyStrength, path: string): PlyStrength {
  return {
    xt: positive(given, 'xt', 'Pa', path),
    xc: positive(given, 'xc', 'Pa', path),
    yt: positive(given, 'yt', 'Pa', path),
    yc: positive(given, 'yc', 'Pa', path),
    s: positive(given, 's', 'Pa', path),
  };
}
