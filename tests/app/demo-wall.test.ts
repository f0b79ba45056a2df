import { describe, expect, it } from 'vitest';
import * as z from 'zod/mini';
import { demoRecords } from '#app/phone/data/demo.ts';
import { walledPlanOf } from '#app/planning/cutting/build-shelf.ts';
import { clothGroups } from '#app/planning/cutting/cloth-groups.ts';
import { cutPieces } from '#app/planning/cutting/cut-pieces.ts';
import { layOut, usualMask, usualRoll, usualSelvage } from '#app/planning/cutting/lay-out.ts';
import { planWithWall } from '#app/planning/wall/plan-with-wall.ts';
import { wallCautions } from '#app/planning/wall/wall-cautions.ts';
import { wallCloth } from '#app/planning/wall/wall-mix.ts';
import { hasWall, masses, rollOf, type WalledPlan } from '#app/planning/wall/wall-model.ts';
import { nestPieces } from '#calc';
import { planBody } from '#shared/record/plan.ts';
import { readRecord } from '#shared/record/read.ts';
import { weighedCloth } from '../../demo/shelf.ts';
import shop from '../../demo/shop.txt?raw';
import { wallShelf } from '../../demo/walls.ts';
import { leastLength, shelfLength } from '../calc/nest-bounds.ts';

const moved = await demoRecords(shop, Date.UTC(2027, 0, 9, 20, 15), 0);
const records = moved.flatMap((one) => {
  const read = readRecord(one);
  return read.ok ? [read.value] : [];
});

const plans = records.flatMap((r): WalledPlan[] => {
  if (r.record !== 'revision' || r.type !== 'plan') return [];
  const { data } = z.safeParse(planBody, r.body);
  return data && hasWall(data) ? [data] : [];
});

const builds = records.flatMap((r) => {
  const plan = r.record === 'build' ? walledPlanOf(r) : undefined;
  return plan && r.record === 'build' ? [{ header: r, plan }] : [];
});

describe('the walls drawn in the demo shop', () => {
  it('are a mast thick at its partners, one on a tapered mandrel, and a beam with a core', () => {
    expect(plans.map((p) => p.name)).toEqual(['Upper mast', 'Lower mast', 'Seat beam']);
    const [upper, lower, beam] = plans.map((p) => rollOf(p, wallShelf));
    const carbon = (at: number) =>
      lower?.pieces
        .filter((p) => p.spec.arealWeight === weighedCloth.arealWeight)
        .reduce((sum, p) => sum + (p.plies[lower.at.findIndex((x) => x >= at)] ?? 0), 0);
    expect([0.2, 0.6, 2.1].map(carbon)).toEqual([3, 6, 2]);
    expect(upper?.diameter[0]).toBeGreaterThan((upper?.diameter.at(-1) ?? 0) + 0.01);
    expect(beam?.pieces.map((p) => p.spec.kind)).toEqual(['cloth', 'core', 'cloth']);
  });

  it('ask for nothing to be mended', () => {
    for (const plan of plans) expect(wallCautions(plan, rollOf(plan, wallShelf)), plan.name).toEqual([]);
  });

  it('say the same of cloth, plies and diameter as their plans', () => {
    for (const plan of plans) expect(planWithWall(plan, wallShelf)).toEqual(plan);
  });

  it('are what their builds froze: cloth within 1 %, mixed for all its cloths together', () => {
    expect(builds.map(({ header }) => `${header.name} ${header.number}`)).toEqual([
      'Upper mast 1',
      'Upper mast 2',
      'Lower mast 2',
    ]);
    for (const { header, plan } of builds) {
      const cloth = masses(plan, rollOf(plan, wallShelf), wallShelf)?.cloth ?? 0;
      expect(Math.abs(header.clothMass / cloth - 1)).toBeLessThan(0.01);
      expect(header.cloth).toEqual(wallCloth(plan, wallShelf)?.cloth);
    }
  });
});

/** Each cloth of each wall laid out for so many tubes. */
async function laidOut(tubes: number) {
  const groups = plans.flatMap((plan) => {
    const found = clothGroups(plan, cutPieces(plan, wallShelf), wallShelf);
    return found.map((group) => ({ ...group, says: `${tubes} of ${plan.name}, ${group.cloth.name}` }));
  });
  return Promise.all(
    groups.map(async ({ cloth, pieces, says }) => {
      const rollWidth = cloth.rollWidth ?? usualRoll;
      const settings = {
        rollWidth,
        mask: usualMask,
        selvage: usualSelvage,
        tubes,
        spliced: new Set<string>(),
      };
      const { nest, cuts } = await layOut(pieces, settings, nestPieces);
      const all = cuts.map((c) => c.nest);
      const room = rollWidth - 2 * usualSelvage;
      const [least, shelf] = [leastLength(all, room, usualMask), shelfLength(all, room, usualMask)];
      return { says, nest, wanted: all.length * tubes, least, shelf };
    }),
  );
}

describe('their pieces on the roll', () => {
  it('take no more than a tenth more cloth than can be, for one tube of each', async () => {
    for (const { says, nest, least } of await laidOut(1)) expect(nest.length / least, says).toBeLessThan(1.1);
  });

  for (const tubes of [1, 2, 3, 6]) {
    it(`are all there for ${tubes} of each, and never take more cloth than in shelf order`, async () => {
      for (const { says, nest, wanted, least, shelf } of await laidOut(tubes)) {
        expect(nest.placements, says).toHaveLength(wanted);
        expect(nest.length, says).toBeLessThanOrEqual(shelf + 1e-9);
        // A hair shorter is rounding; shorter than that is a piece forgotten.
        expect(nest.length, says).toBeGreaterThan(least - 1e-6);
      }
    });
  }
});
