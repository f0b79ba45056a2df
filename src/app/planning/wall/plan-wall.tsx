import { Warning } from '#app/parts/warning.tsx';
import { show } from '#app/state/show.ts';
import type { FlatPiece, Roll } from '#calc';
import { PictureHead } from './picture-head.tsx';
import { FlatShape } from './pictures/flat-shape.tsx';
import { heightUnit } from './pictures/layers.ts';
import { WallAlong } from './pictures/wall-along.tsx';
import { flatPieces, masses, rollOf, type WalledPlan } from './wall-model.ts';
import { wallProblem } from './wall-words.ts';
import { WeightFigures } from './weights.tsx';

function rolled(plan: WalledPlan): { roll: Roll; flats: FlatPiece[] } | { error: RangeError } {
  try {
    const roll = rollOf(plan);
    return { roll, flats: flatPieces(roll) };
  } catch (error) {
    if (error instanceof RangeError) return { error };
    throw error;
  }
}

/** The wall of a plan at a glance: along the tube, the first cloth flat, what it weighs and saves. */
export function PlanWall({ plan, doc }: { plan: WalledPlan; doc: string }) {
  const found = rolled(plan);
  if ('error' in found) {
    return (
      <Warning kind="stop" title="Its wall cannot be rolled">
        {wallProblem(found.error, plan.wall).says}
      </Warning>
    );
  }
  const { roll, flats } = found;
  const mass = masses(plan, roll);
  const to = (name: string) => `/plan/${doc}/wall/picture/${name}`;
  return (
    <>
      <PictureHead to={to('along')}>Wall along the tube, {heightUnit(roll)}</PictureHead>
      <WallAlong roll={roll} />
      {flats.map((flat, i) => {
        const piece = plan.wall.pieces[i];
        if (piece?.kind !== 'cloth') return null;
        const what = flats.length > 1 ? piece.name : 'Cloth';
        return (
          <div key={piece.id}>
            <PictureHead to={to(`flat-${i + 1}`)}>
              {what}, flat · {show(flat.length, 'length', 0)}
            </PictureHead>
            <FlatShape flat={flat} angle={piece.angle} />
          </div>
        );
      })}
      {mass && <WeightFigures roll={roll} mass={mass} />}
    </>
  );
}
