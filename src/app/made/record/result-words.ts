import { laminateByWeight } from '#app/made/results/by-weight.ts';
import { show } from '#app/state/show.ts';
import type { BuildSummary } from '#shared/record/summary.ts';
import { formatRatio } from '#shared/units/ratio.ts';

/** A build's result in two short texts; none before it is weighed. */
export function resultWords(build: BuildSummary): { weight?: string; ratio?: string } {
  const result = laminateByWeight({
    cloth: build.clothMass,
    cured: build.curedMass,
    filmLeft: build.filmLeft,
    core: build.core,
    fiberDensity: build.fiberDensity,
    resinDensity: build.resinDensity,
  });
  if (!result.ok) return {};
  const { tube, resinShare, fiberVolume } = result.value;
  return {
    weight: show(tube, 'mass', 0),
    ratio: `${formatRatio(resinShare)}, ${show(fiberVolume, 'fraction', 0)} fiber`,
  };
}
