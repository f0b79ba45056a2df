import type { CutPiece } from '#app/planning/cutting/cut-pieces.ts';
import { dimension } from '#app/planning/cutting/dimensions.ts';
import { offsetsFromDatum, type Point } from '#calc';

/** Flat, m, y down: the inside face is up, end 0 to the left, and the cloth rolls toward its free edge. */
export interface MarkLine {
  kind: 'datum' | 'arrow' | 'station';
  points: readonly Point[];
}

export interface MarkText {
  at: Point;
  text: string;
  /** Height of its capitals, m */
  size: number;
  anchor: 'start' | 'middle' | 'end';
}

export interface TemplateMarks {
  lines: MarkLine[];
  texts: MarkText[];
}

/**
 * Rolled away from the datum edge with its inside face up, the cloth goes round one way only; tape wound the other
 * way would unwind it. So mandrel and tape turn alike.
 */
export const turnWords = 'Mandrel turns clockwise seen from end 0, rolling and taping';

const largestText = 0.006;
const longestArrow = 0.06;
const head = 0.008;
/** Width of a letter to the height of a capital. */
const letters = 0.75;

/** A line from a to b with a head at b, and at a too when it goes both ways. */
function arrow(a: Point, b: Point, both: boolean): MarkLine[] {
  const angle = Math.atan2(b.y - a.y, b.x - a.x);
  const wing = (tip: Point, turn: number) => ({
    x: tip.x + head * Math.cos(angle + turn),
    y: tip.y + head * Math.sin(angle + turn),
  });
  const headAt = (tip: Point, back: number): MarkLine => ({
    kind: 'arrow',
    points: [wing(tip, back - 0.4), tip, wing(tip, back + 0.4)],
  });
  return [{ kind: 'arrow', points: [a, b] }, headAt(b, Math.PI), ...(both ? [headAt(a, 0)] : [])];
}

/** Three quarters of a turn, clockwise as it is drawn, with a head: how the mandrel turns seen from end 0. */
function turnArrow(center: Point, radius: number): MarkLine[] {
  const at = (turn: number): Point => ({
    x: center.x + radius * Math.cos(turn),
    y: center.y + radius * Math.sin(turn),
  });
  const points = Array.from({ length: 25 }, (_, k) => at(-Math.PI / 2 + (k / 24) * 1.5 * Math.PI));
  const [before, tip] = [at(Math.PI - 0.25), at(Math.PI)];
  return [{ kind: 'arrow', points }, ...arrow(before, tip, false).slice(1)];
}

/** How far the cloth reaches from the datum edge, a share of the way along it. */
function reachAt({ flat, length }: CutPiece, share: number): number {
  const offsets = offsetsFromDatum({ outline: flat.outline, every: Math.max(length / 8, 1e-4) });
  const wanted = flat.length * share;
  return offsets.reduce((best, o) => (Math.abs(o.x - wanted) < Math.abs(best.x - wanted) ? o : best)).to;
}

function stationMarks({ flat }: CutPiece, size: number): TemplateMarks {
  const inward = 2 * size;
  const lines = flat.marks.map(
    ({ edge }): MarkLine => ({
      kind: 'station',
      points: [edge, { x: edge.x, y: Math.max(0, edge.y - inward) }],
    }),
  );
  const texts = flat.marks.map(({ at, edge }, i): MarkText => {
    const last = i === flat.marks.length - 1;
    return {
      at: { x: edge.x + (last ? -1 : 1) * 0.002, y: edge.y - inward },
      text: `at ${dimension(at)}: ${dimension(edge.y)}`,
      size: 0.7 * size,
      anchor: last ? 'end' : 'start',
    };
  });
  return { lines, texts };
}

/** Everything that is drawn on the cloth besides its outline. */
export function templateMarks(piece: CutPiece): TemplateMarks {
  const { flat, name, warpAngle } = piece;
  const [quarter, half, later] = [0.25, 0.5, 0.75].map((share) => reachAt(piece, share));
  const size = Math.min(largestText, (half ?? 0.1) / 10, flat.length / 60);
  const at = (share: number, y: number): Point => ({ x: flat.length * share, y });
  const middle = at(0.5, (half ?? 0) / 2);
  const warp = Math.min(longestArrow, (half ?? 0) / 4, flat.length / 8);
  const along = { x: warp * Math.cos(warpAngle), y: warp * Math.sin(warpAngle) };
  const wrapEnd = Math.min(2 * longestArrow, 0.6 * (quarter ?? 0));
  const radius = Math.min(0.02, (later ?? 0) / 6);
  const stations = stationMarks(piece, size);
  const edgeWords = `Datum edge of ${name}. Inside face up. ${turnWords}`;
  const say = (point: Point, text: string, anchor: MarkText['anchor'] = 'middle'): MarkText => ({
    at: point,
    text,
    size,
    anchor,
  });
  return {
    lines: [
      {
        kind: 'datum',
        points: [
          { x: 0, y: 0 },
          { x: flat.length, y: 0 },
        ],
      },
      ...arrow(
        { x: middle.x - along.x, y: middle.y - along.y },
        { x: middle.x + along.x, y: middle.y + along.y },
        true,
      ),
      ...arrow(at(0.25, 3 * size), at(0.25, 3 * size + wrapEnd), false),
      ...turnArrow(at(0.75, (later ?? 0) / 2), radius),
      ...stations.lines,
    ],
    texts: [
      {
        ...say(at(0.5, 1.6 * size), edgeWords),
        size: Math.min(size, flat.length / (letters * edgeWords.length)),
      },
      say({ x: 0.004, y: 4 * size }, 'End 0', 'start'),
      say({ x: middle.x, y: middle.y + Math.abs(along.y) + 3 * size }, 'Warp'),
      say({ x: flat.length * 0.25 + 0.004, y: 5 * size }, 'Rolls this way', 'start'),
      say(at(0.75, (later ?? 0) / 2 + radius + 2 * size), 'Turns so, seen from end 0'),
      ...stations.texts,
    ],
  };
}
