import { lifeOfCup } from '#app/laying-up/mix/cup-life.ts';
import { correctionForOvershoot, cupsFor, hardenerForResin } from '#calc';
import { type Bench, type CupStory, shopOf } from './bench.ts';
import { onMeter, onScale } from './draw.ts';
import { hardenerPerResin, resinWanted } from './materials.ts';

/** Mixes the cups of a build one after the other, each poured out before the next is begun. */
export function mixCups(bench: Bench): void {
  const { header, plan, materials, story } = bench;
  const { cups, each } = cupsFor({
    kept: resinWanted(header.clothMass, plan, materials),
    squeezeOutShare: plan.goal.squeezeOut,
    lossPerCup: plan.goal.lossPerCup,
    largestCup: materials.resin.largestCup,
  });
  const stories: readonly CupStory[] = story.cups ?? Array.from({ length: cups }, () => ({}));
  const of = Math.max(cups, stories.length);
  stories.forEach((one, i) => {
    if (i === 0) bench.jump((story.hardenerAt ?? 0) - 100_000);
    mixCup(bench, one, { number: i + 1, of, mass: one.mass ?? each });
    if (story.cupInUse && i === stories.length - 1) return;
    bench.pass(4);
    bench.say({ kind: 'cupEmpty', cup: bench.cups.at(-1) ?? '' });
    bench.pass(1);
  });
}

function mixCup(bench: Bench, story: CupStory, cup: { number: number; of: number; mass: number }): void {
  const { resin: system } = bench.materials;
  const ratio = hardenerPerResin(system);
  const wanted = cup.mass / (1 + ratio);
  const id = bench.ids.at(bench.now);
  bench.cups.push(id);
  bench.say({
    kind: 'cupStarted',
    cup: id,
    number: cup.number,
    of: cup.of,
    round: 1,
    resin: wanted,
    hardener: hardenerForResin({ resinPoured: wanted, hardenerPerResin: ratio }),
    holds: system.largestCup,
  });
  bench.now += 45_000;
  const resin = pour(bench, id, 'resin', wanted + bench.draw(-0.0004, 0.0012));
  bench.now += 55_000;
  const { air, resin: warm } = shopOf(bench.story);
  const kelvin = (celsius: number) => onMeter(celsius + 273.15).temperature;
  const { usable, basis } = lifeOfCup(system, {
    mass: resin * (1 + ratio),
    resin: kelvin(warm),
    air: kelvin(air),
    assumed: false,
  });
  bench.startClock('potLife', `Cup ${cup.number} of ${cup.of}, ${system.hardener}`, usable, 300, {
    cup: id,
    round: 1,
    basis,
  });
  bench.now += 35_000;
  pourHardener(bench, story, id, resin, ratio);
}

/** As much as the resin in the cup asks for, more or less; and resin after it when it ran over. */
function pourHardener(bench: Bench, story: CupStory, cup: string, resin: number, ratio: number): void {
  const { hardenerOff, putRight } = story;
  const target = hardenerForResin({ resinPoured: resin, hardenerPerResin: ratio });
  const asItIs = hardenerOff !== undefined && !putRight ? (hardenerOff < 0 ? 'lean' : 'rich') : undefined;
  const off = hardenerOff ?? bench.draw(-0.0002, 0.0003);
  const hardener = pour(bench, cup, 'hardener', target + off, asItIs && { asItIs });
  if (!putRight) return;
  bench.now += 50_000;
  const { addResin } = correctionForOvershoot({
    resinPoured: resin,
    hardenerPoured: hardener,
    hardenerPerResin: ratio,
  });
  pour(bench, cup, 'resin', addResin);
}

function pour(
  bench: Bench,
  cup: string,
  part: 'resin' | 'hardener',
  mass: number,
  more: { asItIs?: 'lean' | 'rich' } = {},
): number {
  const shown = onScale(mass);
  bench.say({ kind: 'pour', cup, part, ...shown, ...more });
  bench.mixed += shown.mass;
  return shown.mass;
}
