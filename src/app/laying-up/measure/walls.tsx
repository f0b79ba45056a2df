import { fiberVolumeByThickness, innerDiameter, wallsMeasured } from '#app/made/results/by-thickness.ts';
import { curedByWeight } from '#app/made/results/by-weight.ts';
import { Lines } from '#app/parts/figure.tsx';
import { Empty } from '#app/parts/rows.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { show } from '#app/state/show.ts';
import type { BuildState } from '#shared/record/build-state.ts';

/** Wall, ply and fiber at every station measured, and beside them what the weight says. */
export function Walls({ state }: { state: BuildState }) {
  const walls = wallsMeasured(state);
  if (innerDiameter(state, 0) === undefined) {
    return (
      <Empty>
        This tube was started without its mandrel's diameter and plies: readings are kept, but its wall cannot
        be told from them.
      </Empty>
    );
  }
  if (walls.length === 0) {
    return (
      <Empty>
        Nothing measured yet. A tape around is surest: a wall is half of a small difference. A pi tape reads
        across.
      </Empty>
    );
  }
  const byWeight = curedByWeight(state);
  const byThickness = fiberVolumeByThickness(walls);
  return (
    <>
      <Lines
        head={['at', 'wall', 'a ply', 'fiber']}
        rows={walls.map((w) => [
          show(w.station, 'length', 0),
          show(w.wall, 'thickness'),
          show(w.plyThickness, 'thickness'),
          w.fiberVolume === undefined ? 'too thin' : show(w.fiberVolume, 'fraction', 0),
        ])}
      />
      {byThickness !== undefined && (
        <p>
          Fiber volume <strong>{show(byThickness, 'fraction', 0)}</strong> by thickness
          {byWeight.ok && `, ${show(byWeight.value.fiberVolume, 'fraction', 0)} by weight`}.
        </p>
      )}
      {walls.some((w) => w.fiberVolume === undefined) && (
        <Warning kind="amber" title="Thinner than its fiber alone">
          The wall cannot be thinner there than its plies without resin. Measure again, or check the plies and
          the mandrel's diameter in the plan.
        </Warning>
      )}
    </>
  );
}
