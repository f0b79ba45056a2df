import {
  type Nest,
  type NestPiece,
  type nestPieces,
  type Placement,
  splicePiece,
  type Unplaced,
} from '#calc';
import type { CutPiece } from './cut-pieces.ts';

/** Used where the builder sets nothing else: half of 25 mm masking tape, and a common selvage (common practice, no source), m */
export const usualMask = 0.0125;
export const usualSelvage = 0.01;
/** Where neither the shelf nor the builder says how wide the roll is, m */
export const usualRoll = 1;

export type NestInput = Parameters<typeof nestPieces>[0];

export interface RollSettings {
  /** m */
  rollWidth: number;
  mask: number;
  selvage: number;
  tubes: number;
  /** Pieces to be made of strips, by id. */
  spliced: ReadonlySet<string>;
}

/** One outline that is cut: a piece, or a strip of one. */
export interface Cut {
  id: string;
  of: CutPiece;
  /** '2', or '2a' for the first strip of it. */
  label: string;
  nest: NestPiece;
}

export interface LaidOut {
  nest: Nest;
  cuts: Cut[];
  /** Pieces that do not go on the roll whole. */
  tooWide: { piece: CutPiece; unplaced: Unplaced }[];
}

const asCut = (of: CutPiece, count: number): Cut => ({
  id: of.id,
  of,
  label: String(of.number),
  nest: { id: of.id, outline: of.flat.outline, count, warpAngle: of.warpAngle },
});

const letters = 'abcdefghijklmnopqrstuvwxyz';

function stripsOf(whole: Cut, { splice }: Unplaced): Cut[] {
  const { outline, warpAngle } = whole.nest;
  return splicePiece({ outline, warpAngle, ...splice }).map((strip, k) => ({
    ...whole,
    id: `${whole.id} ${k}`,
    label: `${whole.label}${letters[k] ?? k + 1}`,
    nest: { ...whole.nest, id: `${whole.id} ${k}`, outline: strip },
  }));
}

/**
 * The pieces of one cloth on its roll. What is wider than the roll is not laid out, but for what the builder
 * decided to splice.
 *
 * @throws RangeError naming `rollWidth`, `gap`, `selvage` or `pieces`
 */
export async function layOut(
  pieces: readonly CutPiece[],
  settings: RollSettings,
  nest: (input: NestInput) => Nest | Promise<Nest>,
): Promise<LaidOut> {
  const { rollWidth, mask: gap, selvage, tubes, spliced } = settings;
  const roll = { rollWidth, gap, selvage };
  const whole = pieces.map((p) => asCut(p, tubes));
  const first = await nest({ pieces: whole.map((c) => c.nest), ...roll });
  const wide = new Map(first.unplaced.map((u) => [u.id, u]));
  const tooWide = pieces.flatMap((piece) => {
    const unplaced = wide.get(piece.id);
    return unplaced ? { piece, unplaced } : [];
  });
  const cuts = whole.flatMap((cut) => {
    const unplaced = wide.get(cut.id);
    return unplaced && spliced.has(cut.id) ? stripsOf(cut, unplaced) : cut;
  });
  if (!tooWide.some(({ piece }) => spliced.has(piece.id))) return { nest: first, cuts, tooWide };
  return { nest: await nest({ pieces: cuts.map((c) => c.nest), ...roll }), cuts, tooWide };
}

/** What a placement places. */
export const cutOf = ({ cuts }: LaidOut, { id }: Placement): Cut | undefined => cuts.find((c) => c.id === id);
