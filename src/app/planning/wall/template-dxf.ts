import type { CutPiece } from '#app/planning/cutting/cut-pieces.ts';
import type { Point } from '#calc';
import { templateMarks } from './template-marks.ts';
import { stacked } from './template-svg.ts';

const millimeters = 1000;

/** Drawing programs refuse these in the name of a layer. */
const layerName = ({ number, name }: CutPiece) =>
  `${number} ${name.replace(/[<>/\\":;?*|=,`]/g, ' ')}`.trim();
const marksLayer = 'Marks';

/**
 * All pieces in mm: a closed polyline on a layer of its own for each, and what is drawn on the cloth on another.
 * In a drawing y goes up, so everything is turned over its x axis: the inside face stays up.
 */
export async function templateDxf(pieces: readonly CutPiece[]): Promise<string> {
  const { DxfWriter, LWPolylineFlags, point2d, point3d, Units } = await import('@tarikjabiri/dxf');
  const drawing = new DxfWriter();
  drawing.setUnits(Units.Millimeters);
  drawing.addLayer(marksLayer, 5, 'CONTINUOUS');
  for (const { piece, move } of stacked(pieces)) {
    const at = ({ x, y }: Point) => ({ x: (x + move.x) * millimeters, y: -(y + move.y) * millimeters });
    const flat = (points: readonly Point[]) => points.map(at).map(({ x, y }) => ({ point: point2d(x, y) }));
    const name = layerName(piece);
    drawing.addLayer(name, 7, 'CONTINUOUS');
    drawing.addLWPolyline(flat(piece.flat.outline), { flags: LWPolylineFlags.Closed, layerName: name });
    const { lines, texts } = templateMarks(piece);
    for (const { points } of lines) drawing.addLWPolyline(flat(points), { layerName: marksLayer });
    for (const { at: where, text, size } of texts) {
      const { x, y } = at(where);
      drawing.addText(point3d(x, y), size * millimeters, text, { layerName: marksLayer });
    }
  }
  return drawing.stringify();
}
