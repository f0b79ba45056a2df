import { useMemo } from 'preact/hooks';
import type { Roll } from '#calc';
import type { GivenBy } from '../shape-edits.ts';
import type { Scale } from './scale.ts';
import { areaPath, linePath } from './thin-line.ts';

function valuesOf(roll: Roll, index: number, by: GivenBy): Float64Array {
  const piece = roll.pieces[index];
  if (!piece) return new Float64Array(roll.at.length);
  if (by === 'width') return piece.width;
  const thick = piece.spec.thickness;
  return by === 'plies' ? piece.plies : piece.plies.map((n) => n * thick);
}

/** One piece along the tube, in plies, width or wall. */
export function PieceCurve({
  roll,
  index,
  by,
  x,
  y,
}: {
  roll: Roll;
  index: number;
  by: GivenBy;
  x: Scale;
  y: Scale;
}) {
  const paths = useMemo(() => {
    const ys = valuesOf(roll, index, by).map(y);
    const xs = roll.at.map(x);
    return { line: linePath(xs, ys), area: areaPath(xs, ys, y(0)) };
  }, [roll, index, by, x(1), y(1)]);
  return (
    <>
      <path class="picture-ground" d={paths.area} />
      <path class="picture-line" d={paths.line} />
    </>
  );
}
