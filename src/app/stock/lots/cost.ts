import { estimatePlan, planMaterials } from '#app/planning/plans/plan-estimate.ts';
import { docsOf, findDoc, retiredOf } from '#app/state/documents.ts';
import type { Lot, LotKind } from '#shared/record/lot.ts';
import type { Need } from './choose-lot.ts';
import { planNeeds } from './needs.ts';

/** Of a m2, kg or m: what the newest lot with a price cost; a cloth may have a price of its own. */
export function priceOf({ of, item }: Pick<Need, 'of' | 'item'>, lots: readonly Lot[]): number | undefined {
  const priced = lots
    .filter((l) => l.of === of && l.item === item && l.price !== undefined)
    .sort((a, b) => b.receivedAt - a.receivedAt)[0];
  if (priced?.price !== undefined) return priced.price / priced.received;
  return of === 'cloth' ? findDoc('cloth', item)?.body.price : undefined;
}

export interface Cost {
  by: Partial<Record<LotKind, number>>;
  total: number;
  /** What has no price or no amount. */
  missing: LotKind[];
}

export function costOfNeeds(needs: readonly Need[], price: (need: Need) => number | undefined): Cost {
  const cost: Cost = { by: {}, total: 0, missing: [] };
  for (const need of needs) {
    const each = price(need);
    if (each === undefined || need.amount === undefined) {
      if (!cost.missing.includes(need.of)) cost.missing.push(need.of);
      continue;
    }
    cost.by[need.of] = (cost.by[need.of] ?? 0) + each * need.amount;
    cost.total += each * need.amount;
  }
  return cost;
}

/** Material of one tube of a plan; undefined when the plan or its materials are gone. */
export function planCost(doc: string | undefined): Cost | undefined {
  const plan = findDoc('plan', doc)?.body;
  const materials = plan && planMaterials(plan);
  if (!plan || !materials) return undefined;
  const { cloth, recipe } = estimatePlan(plan, materials);
  const lots = [...docsOf('lot'), ...retiredOf('lot')].map((l) => l.body);
  return costOfNeeds(planNeeds(plan, cloth, recipe), (need) => priceOf(need, lots));
}

export const costOf = ({ by }: Cost): [LotKind, number][] => Object.entries(by) as [LotKind, number][];
