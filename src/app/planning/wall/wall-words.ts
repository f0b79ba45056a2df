import { show } from '#app/state/show.ts';
import type { Piece, WallPlan } from '#shared/record/piece.ts';

/** What stops a wall from being rolled, and where. */
export interface WallProblem {
  says: string;
  /** The piece it is about, and its station. */
  piece?: number;
  station?: number;
  /** It is about the mandrel or the length of the tube. */
  mandrel?: boolean;
}

const meters = (text: string) => Number(text.replace(',', '.'));
const place = (m: number) => show(m, 'length', 0);

/** A piece as it is spoken of: its name, or its place in the wrap. */
export function pieceName(piece: Piece | undefined, index: number): string {
  return piece?.name.trim() || `Piece ${index + 1}`;
}

type Rule = readonly [RegExp, (found: RegExpExecArray, name: string) => string];

const aboutMandrel: readonly Rule[] = [
  [
    /^length must be at most ([\d.e-]+) m/,
    ([, end = '']) =>
      `The mandrel ends at ${place(meters(end))}, before the tube does: shorten the tube or take a longer mandrel.`,
  ],
  [/^length /, () => 'This is no length for a tube: write one like 2400 mm.'],
  [
    /^mandrel\.stations\[0\]\.at must be at most 0/,
    () => 'The mandrel begins after end 0 of the tube: its first diameter belongs at 0 or before.',
  ],
  [
    /^mandrel\.stations\[\d+\]\.at and .*on top/,
    () => 'Two diameters of the mandrel lie on top of each other: take one of them out.',
  ],
  [
    /^mandrel\.stations\[\d+\]\.at must come before/,
    () => 'The diameters of the mandrel are out of order: write them from end 0 to the far end.',
  ],
  [/^mandrel\.between/, () => 'No smooth curve goes through a step of the mandrel: make it straight there.'],
  [/^mandrel\.stations/, () => 'A diameter of the mandrel is missing or cannot be: write one like 38.1 mm.'],
];

const aboutPiece: readonly Rule[] = [
  [
    /must be a cylinder or one even taper under .*at ([\d.]+) m/,
    ([, at = ''], name) =>
      `${name} lies over a bend of the mandrel at ${place(meters(at))}, where cloth does not lie flat: make one piece for each side of it.`,
  ],
  [
    /run into itself|must taper less/,
    (_, name) =>
      `${name} does not fit the taper of the mandrel: its flat cloth would run into itself. Give it fewer plies, or make it of two pieces.`,
  ],
  [
    /it reaches ([\d.]+) m and the tube ends at ([\d.]+)/,
    ([, to = '', end = ''], name) =>
      `${name} reaches ${place(meters(to))} and the tube ends at ${place(meters(end))}: move its last station or start it earlier.`,
  ],
  [/it begins .* before end 0/, (_, name) => `${name} begins before end 0: start it at 0 or later.`],
  [
    /no smooth curve goes through a step/,
    (_, name) => `${name} steps where it should be smooth: move the two stations apart, or choose Step.`,
  ],
  [
    /on top of each other/,
    (_, name) => `Two stations of ${name} lie on top of each other: move or delete one.`,
  ],
  [
    /must come before/,
    (_, name) => `The stations of ${name} are out of order: each comes after the one before it.`,
  ],
  [/width\.stations\[\d+\]\.value/, (_, name) => `${name} is no wider than its lap there: make it wider.`],
  [
    /stations\[\d+\]\.value/,
    (_, name) => `${name} has a station with nothing there: end the piece there, or give it more than 0.`,
  ],
  [/\.overlap/, (_, name) => `The lap of ${name} cannot be: write one like 15 mm.`],
  [/\.thickness/, (_, name) => `The thickness of ${name} cannot be: write one like 0.3 mm.`],
  [/\.material/, (_, name) => `The material of ${name} is not on the shelf any more: choose another.`],
];

/** One sentence for what the computation refuses: what is wrong, and what would be right. */
export function wallProblem(error: RangeError, wall: WallPlan): WallProblem {
  const { message } = error;
  const [, found] = /pieces\[(\d+)\]/.exec(message) ?? [];
  const [, station] = /pieces\[\d+\].*?stations\[(\d+)\]/.exec(message) ?? [];
  const piece = found === undefined ? undefined : Number(found);
  const rules = piece === undefined ? aboutMandrel : aboutPiece;
  const name = piece === undefined ? '' : pieceName(wall.pieces[piece], piece);
  for (const [pattern, words] of rules) {
    const match = pattern.exec(message);
    if (!match) continue;
    return {
      says: words(match, name),
      ...(piece === undefined ? { mandrel: true } : { piece }),
      ...(station !== undefined && { station: Number(station) }),
    };
  }
  return {
    says: 'These figures cannot be rolled together: check stations, laps and the mandrel.',
    ...(piece === undefined ? { mandrel: true } : { piece }),
  };
}
