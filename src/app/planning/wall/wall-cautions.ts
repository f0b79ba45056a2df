import { show } from '#app/state/show.ts';
import {
  type EdgeName,
  type EdgePair,
  edgesStack,
  fiberDrift,
  type PlyDrop,
  pliesAround,
  plyDrops,
  type Roll,
} from '#calc';
import type { Piece } from '#shared/record/piece.ts';
import { keptBy } from './kept-by.ts';
import { flatPiece, type WalledPlan } from './wall-model.ts';
import { pieceName } from './wall-words.ts';

export interface WallCaution {
  title: string;
  /** Why, and what would be right. */
  says: string;
  /** The pieces it is about. */
  pieces: readonly number[];
  /** The wall is no tube as long as this holds. */
  stops?: boolean;
}

/** Laps shorter than this peel (common practice, no source), m */
const shortestLap = 0.012;
/** Of several alike only the first few are told. */
const mostAlike = 3;
/** A turn of the fiber that nobody would notice, rad */
const noDrift = 0.0175;

const place = (m: number) => show(m, 'length', 0);
const stretch = (from: number, to: number) =>
  to - from < 0.0005 ? `at ${place(from)}` : `from ${place(from)} to ${place(to)}`;

/** The first place where no whole ply of cloth goes round. */
export function openAt(roll: Roll): number | undefined {
  const cloth = roll.pieces.filter((p) => p.spec.kind === 'cloth');
  for (let i = 0; i < roll.at.length; i += 1) {
    if (cloth.some((p) => (p.wraps[i] ?? 0) >= 1)) continue;
    const at = roll.at[i] ?? 0;
    // Two samples stand where something jumps: what comes before it was looked at with the one before.
    if (roll.before[i] === 1 && at < roll.length) continue;
    if (pliesAround({ roll, at }).steps.some((s) => s.plies < 1)) return at;
  }
  return undefined;
}

function open(roll: Roll): WallCaution[] {
  const at = openAt(roll);
  if (at === undefined) return [];
  return [
    {
      title: `The tube is open at ${place(at)}`,
      says: 'Less than one ply of cloth goes all round there. Give a piece at least one ply, or let another piece reach over it.',
      pieces: [],
      stops: true,
    },
  ];
}

/** Edges that only meet: one turn, and hardly more. */
function butts(roll: Roll, pieces: readonly Piece[]): WallCaution[] {
  return pieces.flatMap((piece, index) => {
    const rolled = roll.pieces[index];
    if (piece.kind !== 'cloth' || !rolled || piece.overlap >= shortestLap) return [];
    const once = rolled.wraps.findIndex((n, i) => {
      const around = Math.PI * (rolled.startDiameter[i] ?? 0);
      return n > 0.97 && n < 1 + shortestLap / around;
    });
    if (once < 0) return [];
    return [
      {
        title: `${pieceName(piece, index)} only butts at ${place(roll.at[once] ?? 0)}`,
        says: `One wrap with ${piece.overlap > 0 ? 'so little' : 'no'} lap does not hold. Give it a lap of ${show(0.012, 'length', 0)} to ${show(0.025, 'length', 0)}.`,
        pieces: [index],
      },
    ];
  });
}

function edgeWords({ piece, edge }: EdgeName, pieces: readonly Piece[]): string {
  const words = edge === 'datum' ? 'starting edge' : 'seam';
  return `the ${words} of ${pieceName(pieces[piece], piece)}`;
}

/** Of two pieces only the longest stretch is told: turning one of them moves all. */
function longestOfEach(pairs: readonly EdgePair[]): EdgePair[] {
  const longest = new Map<string, EdgePair>();
  for (const pair of pairs) {
    const key = `${pair.first.piece} ${pair.second.piece}`;
    const known = longest.get(key);
    if (!known || pair.to - pair.from > known.to - known.from) longest.set(key, pair);
  }
  return [...longest.values()];
}

function stacked(pairs: readonly EdgePair[], pieces: readonly Piece[]): WallCaution[] {
  return longestOfEach(pairs)
    .slice(0, mostAlike)
    .map(({ first, second, from, to }) => ({
      title: `Edges lie on each other ${stretch(from, to)}`,
      says: `There ${edgeWords(first, pieces)} and ${edgeWords(second, pieces)} come within ${show(0.025, 'length', 0)}, which makes a ridge. Turn the starting edge of one of them.`,
      pieces: [first.piece, second.piece],
    }));
}

function steep(drops: readonly PlyDrop[]): WallCaution[] {
  return drops.slice(0, mostAlike).map((d) => ({
    title: `The wall drops fast ${stretch(d.from, d.to)}`,
    says: `It loses ${show(d.drop, 'thickness')} ${d.ratio < 0.5 ? 'all at once' : `at ${Math.round(d.ratio)}:1`}. Spread it over 20 times that, and ${show(0.006, 'length', 0)} or more for each ply, so that the load can follow.`,
    pieces: [],
  }));
}

export interface Drift {
  /** From starting edge to seam, rad */
  total: number;
  eachWay: number;
  /** Half-angle under the piece, with its sign, rad */
  halfAngle: number;
}

/** How far the fiber turns round the wraps of a tapered mandrel; undefined where it does not. */
export function driftOf(roll: Roll, index: number): Drift | undefined {
  const rolled = roll.pieces[index];
  if (rolled?.spec.kind !== 'cloth') return undefined;
  const { halfAngle } = flatPiece(roll, index);
  const wraps = rolled.wraps.reduce((a, b) => Math.max(a, b), 0);
  const drift = fiberDrift({ wraps, halfAngle: Math.abs(halfAngle) });
  return drift.total < noDrift ? undefined : { ...drift, halfAngle };
}

/** The warp angle at the datum edge that gives the wanted one halfway round, rad */
export const splitAngle = (wanted: number, { eachWay, halfAngle }: Drift): number =>
  wanted + Math.sign(halfAngle) * eachWay;

/** What a builder should know of a wall before cutting it. */
export function wallCautions(plan: WalledPlan, roll: Roll): WallCaution[] {
  const { pieces } = plan.wall;
  return keptBy(roll, 'cautions', [pieces], () => [
    ...open(roll),
    ...butts(roll, pieces),
    ...stacked(edgesStack({ roll }), pieces),
    ...steep(plyDrops({ roll })),
  ]);
}
