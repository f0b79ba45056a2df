import { Explain } from '#app/parts/explain.tsx';
import { factorWords, place } from './load-words.ts';
import type { CheckedPlan } from './margins-of-plan.ts';
import { checkWords, type Least, marginWords } from './ruling.ts';

/** How the least margin came about. */
export function HowReckoned({ checked, least }: { checked: CheckedPlan; least: Least }) {
  const { loads, safetyFactor, tube } = checked;
  const one = loads.cases[least.of];
  const reserve = (least.margin + 1) * safetyFactor;
  return (
    <Explain
      of="Least margin"
      formula="margin = reserve / safety factor − 1"
      values={[
        ['What gives out first', checkWords[least.check]],
        ['Load case', one?.name ?? ''],
        ['Its loads are times', factorWords(one?.loadFactor ?? 1)],
        ['They may grow (reserve)', reserve > 99 ? 'over 99 times' : `${reserve.toFixed(2)} times`],
        ['Safety factor', factorWords(safetyFactor)],
        ['Longest stretch nothing keeps round', place(loads.freeLength ?? tube.length)],
        ['Margin', marginWords(least.margin)],
      ]}
      source="Gere and Timoshenko, Mechanics of Materials (beam); Kaw, Mechanics of Composite Materials (plies); Timoshenko and Gere, Theory of Elastic Stability (column); NASA SP-8007 (wall buckling); Brazier 1927 (ovalization)"
      sure="For planning: the wall as thin all round as where it is thinnest, straight fibers, no damage. A test of a tube of your own says more."
    />
  );
}
