import type { CutPiece } from '#app/planning/cutting/cut-pieces.ts';
import type { Tiling } from '#calc';
import { templateMarks, turnWords } from './template-marks.ts';
import { TemplateSheet } from './template-sheet.tsx';
import type { Paper } from './template-tiles.ts';
import type { WalledPlan } from './wall-model.ts';

/** What goes to the printer; not seen on the screen. */
export function TemplateSheets({
  plan,
  piece,
  tiling,
  paper,
}: {
  plan: WalledPlan;
  piece: CutPiece;
  tiling: Tiling;
  paper: Paper;
}) {
  const lies = tiling.sheet.width > tiling.sheet.height ? 'across' : 'upright';
  const marks = templateMarks(piece);
  return (
    <div class={`template-sheets template-${paper}-${lies}`}>
      {tiling.tiles.map((tile) => (
        <TemplateSheet
          key={`${tile.row} ${tile.column}`}
          tiling={tiling}
          tile={tile}
          outline={piece.flat.outline}
          marks={marks}
          title={`${plan.name}, ${piece.number} ${piece.name}`}
          foot={`Inside face up, end 0 to the left, datum edge at the top. ${turnWords}.`}
        />
      ))}
    </div>
  );
}
