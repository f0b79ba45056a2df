import { type AnyEntry, benchSubject } from '#shared/record/entry.ts';
import type { StoredRecord } from '#shared/record/read.ts';
import { starterRevisions } from '#shared/reference/starter-shelf.ts';
import type { BuildStory } from './bench.ts';
import { type Build, runBuild, startBuild } from './build.ts';
import { Ids, Journal } from './journal.ts';
import { loggerDraft, runaway } from './logged.ts';
import { heat, holdBegins, lags } from './oven.ts';
import { type Firing, fire, type OvenLoad } from './oven-load.ts';
import { clothRevision, mandrelRevision, type PlanRevision, plans } from './plans.ts';
import { minute } from './shop-time.ts';
import { stock } from './stock.ts';
import { boomOne, lit, lowerMastOne, spritOne, spritTwo, upperMastOne } from './stories-past.ts';
import { boomTwo, heldFor, lowerMastTwo, spritThree, upperMastTwo } from './stories-today.ts';

type Planned = { plan: PlanRevision; story: BuildStory };

/** Builds that went through one firing, and the firing. */
function cured(
  ids: Ids,
  planned: readonly Planned[],
  firing: Omit<Firing, 'plan' | 'tubes'>,
): { builds: Build[]; oven: OvenLoad } {
  const started = planned.map((one) => ({ ...one, header: startBuild(one.plan, one.story, ids) }));
  const [first] = started;
  if (!first) throw new Error(`oven load ${firing.number} is empty`);
  const tubes = started.map(({ header }) => ({
    build: header.id,
    name: `${header.name} no. ${header.number}`,
    lag: lags[header.name as keyof typeof lags],
  }));
  const oven = fire({ ...firing, plan: first.plan.body, tubes }, ids);
  const builds = started.map(({ header, plan, story }) => runBuild(header, plan, { ...story, oven }, ids));
  return { builds, oven };
}

/** Lit so long ago that the hold has gone on for just as long as it should have by now. */
function litToday(now: number, { body }: PlanRevision): number {
  const warmth = heat(body.schedule, 240, [lags['Upper mast'], lags.Sprit]);
  return now - heldFor - holdBegins(warmth, body.schedule) * minute;
}

function freeTimer(now: number, ids: Ids): AnyEntry[] {
  const journal = new Journal(benchSubject, ids);
  const at = now - 7 * minute;
  const clock = ids.at(at);
  const label = 'Glue on the boom end plugs';
  journal.write(at, { kind: 'clockStarted', clock, purpose: 'free', label, lasts: 25 * 60, warns: 60 });
  return journal.entries;
}

const stuck = [
  { minutes: 196, text: 'Thermostat stuck closed: air far too hot. Door open, knocked it loose.' },
  { minutes: 210, text: 'Back where it should be. Going on with the hold; film will have suffered.' },
];

type Plans = ReturnType<typeof plans>;
type Load = ReturnType<typeof cured>;

function pastLoads(ids: Ids, plan: Plans, now: number): Load[] {
  const until = now;
  const together = [
    { plan: plan.upperMast, story: upperMastOne(now) },
    { plan: plan.spritSlow, story: spritTwo(now) },
  ];
  return [
    cured(ids, [{ plan: plan.boom, story: boomOne(now) }], { number: 1, litAt: lit.boom(now), until }),
    cured(ids, [{ plan: plan.sprit, story: spritOne(now) }], { number: 2, litAt: lit.sprit(now), until }),
    cured(ids, [{ plan: plan.lowerMast, story: lowerMastOne(now) }], {
      number: 3,
      litAt: lit.lowerMast(now),
      until,
      runaway,
      logger: loggerDraft,
      notes: stuck,
    }),
    cured(ids, together, { number: 4, litAt: lit.upperMastAndSprit(now), until }),
  ];
}

function loadOfToday(ids: Ids, plan: Plans, now: number): Load {
  const litAt = litToday(now, plan.upperMast);
  const together = [
    { plan: plan.upperMast, story: upperMastTwo(now, litAt) },
    { plan: plan.spritSlow, story: spritThree(now, litAt) },
  ];
  return cured(ids, together, { number: 5, litAt, until: now });
}

function onTheBench(ids: Ids, plan: Plans, now: number): Build[] {
  const planned = [
    { plan: plan.lowerMastAgain, story: lowerMastTwo(now) },
    { plan: plan.boom, story: boomTwo(now) },
  ];
  return planned.map((one) => runBuild(startBuild(one.plan, one.story, ids), one.plan, one.story, ids));
}

/**
 * The demo shop as it stands at a moment: the four spars of a small sailing canoe. All of it is invented, and what can
 * be computed is: masses, ratios, walls and temperatures hang together.
 */
export function demoShop(now: number): StoredRecord[] {
  const ids = new Ids();
  const plan = plans(now);
  const loads = [...pastLoads(ids, plan, now), loadOfToday(ids, plan, now)];
  const builds = [...loads.flatMap((l) => l.builds), ...onTheBench(ids, plan, now)];
  return [
    ...starterRevisions(),
    clothRevision(now),
    mandrelRevision(now),
    ...Object.values(plan),
    ...stock(now, builds),
    ...builds.map((b) => b.header),
    ...loads.map((l) => l.oven.header),
    ...builds.flatMap((b) => b.entries),
    ...loads.flatMap((l) => l.oven.entries),
    ...freeTimer(now, ids),
  ];
}
