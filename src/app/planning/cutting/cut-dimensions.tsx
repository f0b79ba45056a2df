import { FlatShape } from '#app/planning/wall/pictures/flat-shape.tsx';
import { offsetsFromDatum } from '#calc';
import type { CutPiece } from './cut-pieces.ts';
import { bareDimension, dimension, unitWord } from './dimensions.ts';

/** What to set on the rule: along the datum edge, and square to it where the cloth ends. */
export function CutDimensions({ piece, every }: { piece: CutPiece; every: number }) {
  const { outline } = piece.flat;
  const offsets = offsetsFromDatum({ outline, every });
  const says = ({ x, from, to }: (typeof offsets)[number]) => [x, from, to].map(bareDimension).join(' ');
  // Two stations nearer to each other than a rule shows are one mark.
  const marks = offsets.filter((o, i) => i === 0 || says(o) !== says(offsets[i - 1] ?? o));
  const stations = piece.flat.marks.map((m) => m.x);
  const isStation = (x: number) => stations.some((s) => Math.abs(s - x) < 0.0005);
  const curved = offsets.some((o) => Math.abs(o.from) > 0.0005);
  const degrees = (piece.warpAngle * 180) / Math.PI;
  return (
    <div class="cut-dimensions">
      <FlatShape flat={piece.flat} angle={piece.piece.kind === 'cloth' ? piece.warpAngle : undefined} />
      <p>
        Datum edge {dimension(piece.flat.length)}. Warp{' '}
        {Math.abs(degrees) < 0.05 ? 'along it' : `at ${degrees.toFixed(1)}° to it`}. In {unitWord()}:
      </p>
      <table>
        <thead>
          <tr>
            <th scope="col">along</th>
            {curved && <th scope="col">from</th>}
            <th scope="col">{curved ? 'to' : 'wide'}</th>
          </tr>
        </thead>
        <tbody>
          {marks.map((o, i) => (
            <tr key={i} class={isStation(o.x) ? 'cut-station' : undefined}>
              <th scope="row">{bareDimension(o.x)}</th>
              {curved && <td>{bareDimension(o.from)}</td>}
              <td>{bareDimension(o.to)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
