import { Lines } from '#app/parts/figure.tsx';
import { show } from '#app/state/show.ts';
import { type Cost, costOf, planCost } from '#app/stock/lots/cost.ts';
import type { StructurePart } from '#shared/record/structure.ts';

/** What the cloth, resin and tape of its tubes cost, where a lot or a cloth has a price. */
export function CostLine({ parts }: { parts: readonly StructurePart[] }) {
  const costs = parts.flatMap((p) => {
    const cost = planCost(p.plan);
    return cost ? [{ ...cost, quantity: p.quantity }] : [];
  });
  const total = costs.reduce((sum, c) => sum + c.quantity * c.total, 0);
  if (total <= 0) return null;
  const missing = [...new Set(costs.flatMap((c) => c.missing))];
  return (
    <>
      <Lines rows={[['Material of its tubes', show(total, 'number', 0)]]} />
      {missing.length > 0 && (
        <p class="quiet small">Not all of it has a price on the shelf: {missing.join(', ')}.</p>
      )}
    </>
  );
}

const withoutWords = ({ by, missing }: Cost): string =>
  missing.map((kind) => (by[kind] === undefined ? kind : `some of its ${kind}`)).join(', ');

/** Of one tube of a plan, on its page. */
export function PlanCost({ doc }: { doc: string }) {
  const cost = planCost(doc);
  if (!cost || cost.total <= 0) return null;
  const parts = costOf(cost).map(([what, amount]) => `${what} ${show(amount, 'number', 0)}`);
  return (
    <p>
      Material of one: about <strong>{show(cost.total, 'number', 0)}</strong> in your money:{' '}
      {parts.join(', ')}
      {cost.missing.length > 0 && `; without ${withoutWords(cost)}, which has no price on the shelf`}.
    </p>
  );
}
