import { type FlatPiece, type Placement, type Point, placedOutline } from '#calc';
import type { Cut } from './lay-out.ts';

/** A point to mark on the cloth: so far along it from its cut end, and across it from its left selvage, m. */
export interface RollMark {
  /** Station of the tube, m; of a strip's corner, m along the datum edge */
  at: number;
  edge: 'datum' | 'free' | 'corner';
  along: number;
  across: number;
}

export interface PlacedCut {
  cut: Cut;
  placement: Placement;
  /** x along the roll, y across it, m */
  outline: Point[];
  marks: RollMark[];
}

/** Both ends of the datum edge, and the free edge at every station. */
function points({ length, marks }: FlatPiece) {
  const [first, last] = [marks[0], marks.at(-1)];
  const ends = [
    { at: first?.at ?? 0, edge: 'datum' as const, point: { x: 0, y: 0 } },
    { at: last?.at ?? 0, edge: 'datum' as const, point: { x: length, y: 0 } },
  ];
  return [...ends, ...marks.map(({ at, edge }) => ({ at, edge: 'free' as const, point: edge }))];
}

/** Corners that turn; the rest of the points only follow a curve. */
function corners(outline: readonly Point[]): Point[] {
  return outline.filter((here, k) => {
    const before = outline.at(k - 1) ?? here;
    const after = outline[(k + 1) % outline.length] ?? here;
    const turn =
      Math.atan2(after.y - here.y, after.x - here.x) - Math.atan2(here.y - before.y, here.x - before.x);
    return Math.abs(Math.sin(turn / 2)) > Math.sin(Math.PI / 24);
  });
}

/** What to mark of a strip: its corners, since the stations of its piece may lie on another one. */
const stripPoints = (outline: readonly Point[]) =>
  corners(outline).map((point) => ({ at: point.x, edge: 'corner' as const, point }));

/** A cut where it lies on the roll, with what to measure to mark it. */
export function placeCut(cut: Cut, placement: Placement): PlacedCut {
  const { outline, warpAngle } = cut.nest;
  const isWhole = cut.id === cut.of.id;
  const wanted = isWhole ? points(cut.of.flat) : stripPoints(outline);
  // One call, so that the marks are moved by exactly what the outline is moved by.
  const all = placedOutline({
    outline: [...outline, ...wanted.map((w) => w.point)],
    warpAngle,
    x: placement.x,
    y: placement.y,
    flipped: placement.flipped,
  });
  const marks = wanted.map(({ at, edge }, k): RollMark => {
    const { x, y } = all[outline.length + k] ?? { x: 0, y: 0 };
    return { at, edge, along: x, across: y };
  });
  return { cut, placement, outline: all.slice(0, outline.length), marks };
}
