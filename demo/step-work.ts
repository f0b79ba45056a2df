import type { Step } from '#shared/record/checklist.ts';
import { ratingsOf, type WeightOf } from '#shared/record/entry.ts';
import { type Bench, shopOf } from './bench.ts';
import { mixCups } from './cups.ts';
import { onMeter, onScale, rounded } from './draw.ts';
import { measureTube } from './measure.ts';
import { proofTest } from './proof.ts';

/** Thin polyethylene on the wet-out table, kg/m2; polyester of the sleeve. Common practice, no source. */
const tableFilm = 0.03;
const sleeveFilm = 0.0695;

function weigh(bench: Bench, what: WeightOf, mass: number): string {
  return bench.say({ kind: 'weight', what, ...onScale(mass) });
}

/** Bottom and top film, each a hand wider than the cloth. */
function tableFilms({ header, materials, plan }: Bench): number {
  const width = header.clothMass / materials.cloth.arealWeight / plan.tubeLength;
  return 2 * (width + 0.1) * (plan.tubeLength + 0.1) * tableFilm;
}

function sleeveMass({ plan }: Bench): number {
  return (Math.PI * plan.mandrelDiameter + 0.012) * (plan.tubeLength + 0.25) * sleeveFilm;
}

function surroundings(bench: Bench): void {
  const { air, resin, mandrel, humidity } = shopOf(bench.story);
  const kelvin = (celsius: number) => onMeter(celsius + 273.15).temperature;
  bench.say({
    kind: 'surroundings',
    air: kelvin(air),
    resin: kelvin(resin),
    mandrel: kelvin(mandrel),
    humidity: humidity / 100,
    typed: { air: `${air} C`, resin: `${resin} C`, mandrel: `${mandrel} C`, humidity: `${humidity}` },
  });
}

function intoOven(bench: Bench): void {
  const { oven, number } = bench.story;
  if (!oven) throw new Error(`${bench.header.name} no. ${number} has no oven load`);
  const channel = oven.header.channels.find((c) => c.build === bench.header.id)?.id;
  bench.jump(oven.litAt - 5 * 60_000);
  bench.say({
    kind: 'joinedOvenLoad',
    build: bench.header.id,
    ovenLoad: oven.header.id,
    round: 1,
    ...(channel !== undefined && { channel }),
  });
}

function gelled(bench: Bench): void {
  bench.pass(22);
  bench.say({ kind: 'check', what: 'gel', outcome: 'notYet' });
  bench.pass(16);
  bench.say({ kind: 'check', what: 'gel', outcome: 'gelled' });
}

function samples(bench: Bench): void {
  bench.jump(bench.story.oven?.outAt);
  for (const cup of bench.cups) {
    bench.pass(1);
    const shoreD = rounded(bench.draw(79, 84), 1);
    bench.say({ kind: 'check', what: 'hardness', outcome: 'hard', cup, shoreD, typed: `${shoreD}` });
  }
}

function wetCloth(bench: Bench): void {
  weigh(bench, 'wetCloth', bench.header.clothMass + bench.applied() + tableFilms(bench));
}

function weighCured(bench: Bench): void {
  const { header, story } = bench;
  const mass = header.clothMass + bench.kept() + (story.filmLeft ?? 0);
  const first = weigh(bench, 'cured', story.curedMistyped ? onScale(mass).mass * 10 : mass);
  if (!story.curedMistyped) return;
  bench.pass(4);
  bench.say({ kind: 'weight', what: 'cured', ...onScale(mass), corrects: first });
}

/** Six tenths in cups and on sticks, the rest on gloves, films and the table. */
function weighLoss(bench: Bench): void {
  const { story, plan, cups } = bench;
  if (!story.weighsLoss) return;
  const lost = cups.length * (story.lossPerCup ?? plan.goal.lossPerCup);
  weigh(bench, 'leftover', 0.6 * lost);
  weigh(bench, 'wipings', 0.4 * lost);
}

function rate(bench: Bench): void {
  const { rated } = bench.story;
  for (const what of ratingsOf) {
    if (rated) bench.say({ kind: 'rating', what, value: rated[what] });
  }
}

function judge(bench: Bench): void {
  const { outcome, text } = bench.story.judged ?? { outcome: 'good' };
  bench.say({ kind: 'disposition', outcome, ...(text !== undefined && { text }) });
}

const byRole: Partial<Record<NonNullable<Step['role']>, (bench: Bench) => void>> = {
  surroundings,
  mix: mixCups,
  filmsIn: (bench) => {
    bench.say({ kind: 'filmCount', direction: 'in', count: 2, round: 1 });
    weigh(bench, 'wetFilms', tableFilms(bench));
  },
  weighWet: wetCloth,
  filmsOut: (bench) => {
    bench.say({ kind: 'filmCount', direction: 'out', count: 2, round: 1 });
  },
  rotationOff: gelled,
  samples,
  weighCured,
  measure: (bench) => {
    measureTube(bench);
    proofTest(bench);
  },
  judge,
};

/** Piece by piece, where the wall was drawn. */
function cutPieces(bench: Bench): void {
  for (const { id } of bench.plan.wall?.pieces ?? []) {
    bench.say({ kind: 'tick', step: id, round: 1 });
    bench.pass(3);
  }
}

/** A wall of one piece: how far from its mark the outer edge landed, just inside end 0. */
function readEdge(bench: Bench): void {
  const [piece, ...others] = bench.plan.wall?.pieces ?? [];
  if (!piece || others.length > 0) return;
  const off = rounded(bench.draw(-0.003, 0.003), 0.001);
  const typed = `${Math.abs(Math.round(off * 1000))}`;
  bench.say({ kind: 'edgeMark', piece: piece.id, station: 0.01, off, reading: 0.001, typed });
}

const byStep: Record<string, (bench: Bench) => void> = {
  'cut-cut': cutPieces,
  'wrap-lands': readEdge,
  'cut-weighed': (bench) => weigh(bench, 'cutCloth', bench.header.clothMass),
  'sleeve-weighed': (bench) => weigh(bench, 'filmIn', sleeveMass(bench)),
  'weigh-film': (bench) => weigh(bench, 'filmOut', sleeveMass(bench) - (bench.story.filmLeft ?? 0.0001)),
  'tape-first': weighLoss,
  'demold-pulled': rate,
  'cure-in': intoOven,
  'cure-held': (bench) => bench.jump(bench.story.oven?.offAt),
};

/** What is entered at a step besides its tick. */
export function work(bench: Bench, step: Step): void {
  byStep[step.id]?.(bench);
  if (step.role) byRole[step.role]?.(bench);
}
