import { type LaidAt, laidAt } from '#app/made/results/laid-at.ts';
import { fiberVolumeFraction } from '#calc';
import type { Bench } from './bench.ts';
import { rounded } from './draw.ts';

/** Air in a taped hand layup: common practice, no source. */
const voids = 0.02;

/** Wall that so much cloth, the weights and a few voids make, m. */
function wallOf(bench: Bench, { plies, arealWeight, fiberDensity }: LaidAt): number {
  const { header, materials } = bench;
  const byWeight = fiberVolumeFraction({
    fiberMass: header.clothMass,
    resinMass: bench.kept(),
    fiberDensity: materials.cloth.fiberDensity,
    resinDensity: materials.resin.curedDensity,
  });
  return (plies * arealWeight) / (fiberDensity * byWeight * (1 - voids));
}

/** Pi tape at four stations, to 0.1 mm of circumference, and the length. */
export function measureTube(bench: Bench): void {
  const { plan, header, story } = bench;
  for (const share of [0.05, 0.35, 0.65, 0.95]) {
    bench.pass(0.7);
    const station = rounded(plan.tubeLength * share, 0.01);
    const laid = laidAt(header, station);
    if (!laid) throw new Error(`${header.name}: nobody wrote down what was laid`);
    const wall = wallOf(bench, laid) * bench.draw(0.985, 1.015);
    // Every other build is measured with a caliper instead.
    const round = story.number % 2 === 1;
    const value = rounded((laid.inner + 2 * wall) * (round ? Math.PI : 1), round ? 0.0001 : 0.00002);
    bench.say({
      kind: 'measurement',
      what: round ? 'circumference' : 'outsideDiameter',
      station,
      value,
      typed: {
        station: `${Math.round(station * 1000)} mm`,
        value: `${(value * 1000).toFixed(round ? 1 : 2)} mm`,
      },
    });
  }
  bench.pass(1);
  const length = rounded(plan.tubeLength - 0.012, 0.001);
  bench.say({
    kind: 'measurement',
    what: 'length',
    station: 0,
    value: length,
    typed: `${Math.round(length * 1000)} mm`,
  });
}
