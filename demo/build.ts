import { type BuildHeader, buildVersion } from '#shared/record/build.ts';
import type { ChecklistStage, Step } from '#shared/record/checklist.ts';
import type { AnyEntry } from '#shared/record/entry.ts';
import { Bench, type BuildStory } from './bench.ts';
import { drawing, onScale } from './draw.ts';
import { device, type Ids } from './journal.ts';
import { type Materials, materialsOf } from './materials.ts';
import type { PlanRevision } from './plans.ts';
import { weighedCloth, weighedDoc } from './shelf.ts';
import { minute, shopZone } from './shop-time.ts';
import { work } from './step-work.ts';
import { drawFromLots } from './stock.ts';

export interface Build {
  header: BuildHeader;
  entries: AnyEntry[];
}

/** Steps that take longer than a minute and a half, minutes. */
const takes: Record<string, number> = {
  'mandrel-polished': 11,
  'mandrel-clean': 5,
  'sleeve-wrapped': 7,
  'cut-marked': 8,
  'cut-masked': 9,
  'cut-cut': 12,
  'cut-rolled': 4,
  'setup-scale': 3,
  'setup-oven': 5,
  'setup-dry-run': 4,
  'wet-half': 2,
  'wet-rest': 2,
  'wet-even': 8,
  'wrap-rolled': 6,
  'tape-first': 7,
  'tape-back': 6,
  'demold-tape': 9,
  'demold-pulled': 8,
  'trim-cut': 9,
};

/** What the build started with. Its cloth weighs what the plan says, give or take one part in a hundred. */
export function startBuild(plan: PlanRevision, story: BuildStory, ids: Ids): BuildHeader {
  const materials = materialsOf(plan.body);
  const { cloth, release, resin, tape, checklist } = materials;
  const startedAt = story.prepAt - 3 * minute;
  const { name, goal, schedule, mandrelDiameter, tubeLength, plies, serviceTemperature } = plan.body;
  return {
    record: 'build',
    v: buildVersion,
    id: ids.at(startedAt),
    name,
    number: story.number,
    plan,
    cloth,
    clothMass: onScale(clothOf(plan, materials) * drawing(story.seed * 31)(0.992, 1.008)).mass,
    ...areaOf(plan.body),
    resin,
    takes: takesOf(plan.body, materials),
    release,
    tape,
    goal,
    route: checklist.stages,
    schedule,
    mandrelDiameter,
    tubeLength,
    plies,
    serviceTemperature,
    startedAt,
    zone: shopZone,
    device,
  };
}

/** As planned, or as its wall says where that is of one cloth: what the cut cloth weighed tells its areal weight. */
function areaOf({ clothAmount, wall, cloth }: PlanRevision['body']): Pick<BuildHeader, 'clothArea'> {
  if (clothAmount.by === 'area') return { clothArea: clothAmount.area };
  const one = wall?.pieces.every((p) => p.kind === 'cloth' && (p.material ?? cloth) === weighedDoc);
  return one ? { clothArea: clothAmount.mass / weighedCloth.arealWeight } : {};
}

function takesOf({ cloth: item, resin, tape, clothAmount }: PlanRevision['body'], { cloth }: Materials) {
  const area = clothAmount.by === 'area' ? clothAmount.area : clothAmount.mass / cloth.arealWeight;
  return { cloths: [{ item, area }], resin, ...(tape && { tape }) };
}

function clothOf({ body: { clothAmount } }: PlanRevision, { cloth }: Materials): number {
  return clothAmount.by === 'mass' ? clothAmount.mass : clothAmount.area * cloth.arealWeight;
}

/** Works the route from its first step to the one the story stops at. */
export function runBuild(header: BuildHeader, plan: PlanRevision, story: BuildStory, ids: Ids): Build {
  const bench = new Bench(story, plan.body, materialsOf(plan.body), header, ids);
  drawFromLots(header, plan, story, bench.journal);
  const late = new Set(story.tickedLate?.steps);
  for (const { stage, steps } of header.route) {
    beginStage(bench, stage);
    for (const step of steps) {
      const inUse = story.cupInUse && step.role === 'mix';
      if (step.id === story.stopAt && !inUse) return finished(bench);
      story.before?.[step.id]?.(bench);
      bench.pass(takes[step.id] ?? 1.5);
      work(bench, step);
      if (inUse) return finished(bench);
      if (!late.has(step.id)) tick(bench, step);
      if (step.id === story.tickedLate?.with) for (const id of late) tickLate(bench, id);
    }
  }
  bench.pass(2);
  bench.say({ kind: 'closed' });
  return finished(bench);
}

function finished({ header, journal: { entries } }: Bench): Build {
  return { header, entries };
}

function beginStage(bench: Bench, stage: ChecklistStage['stage']): void {
  const { setUpAt, demoldAt } = bench.story;
  if (stage === 'setUp') bench.jump(setUpAt);
  if (stage === 'demold') bench.jump(demoldAt);
}

function tick(bench: Bench, step: Step): void {
  bench.say({ kind: 'tick', step: step.id, round: 1 });
  if (step.waits === undefined) return;
  const wet = step.id === 'wet-soak';
  const clock = bench.startClock(wet ? 'soak' : 'dry', step.text, step.waits, wet ? 0 : 60, {
    step: step.id,
    round: 1,
  });
  bench.now += step.waits * 1000 + Math.round(bench.draw(5, wet ? 20 : 240)) * 1000;
  bench.say({ kind: 'clockAnswered', clock });
}

function tickLate(bench: Bench, step: string): void {
  bench.now += 1000;
  bench.say({ kind: 'tick', step, round: 1, timeNotSeen: true });
}
