import { numberIn, positive } from '../check.ts';
import type { Shape, Station } from './types.ts';

export type StartingKind = 'even' | 'taper' | 'fastThenSlow' | 'slowThenFast' | 'thickening' | 'sleeve';

type Given = { length: number; thick: number; thin: number; at: number };

const SHARE: Record<StartingKind, number> = {
  even: 0,
  taper: 0,
  fastThenSlow: 1 / 3,
  slowThenFast: 2 / 3,
  thickening: 1 / 2,
  sleeve: 1 / 5,
};

/**
 * A shape to start from: even, taper (thick to thin), fast then slow and slow then fast (two thirds of
 * the drop on the fast third), a thickening that fades both ways over a quarter of the length, or a
 * sleeve at end 0 that fades out over a twentieth.
 *
 * @param kind which of them
 * @param length m, greater than 0, at most 1000
 * @param thick value where it is thick, greater than 0: plies, or m of width or wall
 * @param thin value where it is thin, greater than 0; not used by an even one
 * @param at m, more than 0 and less than length: where it changes its pace, is thickest, or where the
 *   sleeve ends; not used by even and taper
 * @throws RangeError naming the field
 *
 * @example
 * // A mast of 3 m with 3 plies and 6 at the partners at 0.6 m. Where does it start to thicken?
 * startingShape({ kind: 'thickening', length: 3, thick: 6, thin: 3, at: 0.8 }).stations[1]
 * // => { at: 0.05, value: 3 }
 */
export function startingShape(input: {
  kind: StartingKind;
  length: number;
  thick: number;
  thin: number;
  at?: number | undefined;
}): Shape {
  const share = SHARE[input?.kind];
  if (share === undefined) {
    throw new RangeError(`kind must be one of ${Object.keys(SHARE).join(', ')}, got ${String(input?.kind)}`);
  }
  const length = numberIn(input, 'length', 'm', { from: 0.001, to: 1000 });
  const thick = positive(input, 'thick', '');
  const thin = positive(input, 'thin', '');
  const edge = length / 1000;
  const at =
    input.at === undefined ? share * length : numberIn(input, 'at', 'm', { from: edge, to: length - edge });
  const smooth = input.kind === 'fastThenSlow' || input.kind === 'slowThenFast';
  const stations = stationsOf(input.kind, { length, thick, thin, at });
  return { stations, between: smooth ? 'smooth' : 'straight' };
}

function stationsOf(kind: StartingKind, given: Given): Station[] {
  const { length, thick, thin, at } = given;
  const [first, last] = [
    { at: 0, value: thick },
    { at: length, value: thin },
  ];
  switch (kind) {
    case 'even':
      return [first, { at: length, value: thick }];
    case 'taper':
      return [first, last];
    case 'fastThenSlow':
      return [first, { at, value: thick + (2 / 3) * (thin - thick) }, last];
    case 'slowThenFast':
      return [first, { at, value: thick + (1 / 3) * (thin - thick) }, last];
    case 'thickening':
      return thickening(given);
    case 'sleeve':
      return sleeve(given);
  }
}

function thickening({ length, thick, thin, at }: Given): Station[] {
  const fade = length / 4;
  const near = length / 1e4;
  const inside = [
    { at: at - fade, value: thin },
    { at, value: thick },
    { at: at + fade, value: thin },
  ].filter((one) => one.at > near && one.at < length - near);
  return [{ at: 0, value: thin }, ...inside, { at: length, value: thin }];
}

function sleeve({ length, thick, thin, at }: Given): Station[] {
  const faded = at + length / 20;
  const start = [
    { at: 0, value: thick },
    { at, value: thick },
  ];
  const near = length / 1e4;
  const fade = faded < length - near ? [{ at: faded, value: thin }] : [];
  return [...start, ...fade, { at: length, value: thin }];
}
