import { expectedEach, gentleMass, plannedModulus } from '#app/laying-up/proof/bend.ts';
import { plannedOfBuild } from '#app/laying-up/proof/planned-of-build.ts';
import { begun, proofDrafts, withReading } from '#app/laying-up/proof/running.ts';
import { firstSetup } from '#app/laying-up/proof/setup.ts';
import type { Bench } from './bench.ts';
import { rounded } from './draw.ts';

/** On two rests, a can of resin and some shot for a weight, a dial under it and one at a quarter. */
export function proofTest(bench: Bench): void {
  const { header, story, plan } = bench;
  if (story.stiffAs === undefined) return;
  const { tube } = plannedOfBuild(header);
  if (!tube) throw new Error(`${header.name}: nobody knows how stiff it should be`);
  const first = firstSetup(plan.tubeLength, 'rests');
  const quarter = rounded(first.from + (first.to - first.from) / 4, 0.001);
  const setup = { ...first, mass: rounded(gentleMass(tube, first), 0.5), dials: [first.hangAt, quarter] };
  const test = bench.ids.at(bench.now);
  let running = begun(test, setup);
  for (const phase of ['before', 'under', 'after'] as const) {
    bench.pass(2);
    running = running.setup.dials.reduce((now, at, i) => {
      const moved = (expectedEach(tube, setup, at) * setup.mass) / (story.stiffAs ?? 1);
      const zero = 0.002 + 0.001 * i;
      const moves = { before: 0, under: moved * bench.draw(0.99, 1.01), after: moved * 0.004 };
      const si = rounded(zero + moves[phase], 0.00005);
      return withReading(now, phase, si, `${(si * 1000).toFixed(2)} mm`);
    }, running);
  }
  const each = (at: number) => expectedEach(tube, setup, at);
  for (const draft of proofDrafts(header.id, running, { each, modulus: plannedModulus(tube, setup) })) {
    bench.say(draft);
  }
}
