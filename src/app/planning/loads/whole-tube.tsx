import { Ask } from '#app/parts/ask.tsx';
import { Lines } from '#app/parts/figure.tsx';
import { Rule } from '#app/parts/rule.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { settings } from '#app/state/settings.ts';
import type { CheckedCase } from '#calc';
import { inUnits } from '#shared/units/format.ts';
import { factorWords, place } from './load-words.ts';
import type { CheckedPlan } from './margins-of-plan.ts';
import { marginWords } from './ruling.ts';
import { farthest } from './station-margins.ts';

/** Moments grown by less than this are not worth a word. */
const told = 1.005;

/** Nearer than this to where it lay it has not moved, m */
const straight = 1e-5;

const grown = ({ amplification, column }: CheckedCase): string =>
  column.reserve <= 1 ? 'past all bounds: it has buckled' : `${factorWords(amplification)} times`;

/** How far it goes aside, against what it may. */
function Aside({
  far,
  at,
  limit,
  name,
}: {
  far: number;
  at: number;
  limit: number | undefined;
  name: string;
}) {
  const system = settings.value.units;
  const shown = (m: number) => inUnits(m, { quantity: 'length', system }).value;
  const { unit } = inUnits(far, { quantity: 'length', system });
  if (far < straight) return <p>Under {name} it stays straight.</p>;
  if (limit === undefined)
    return <p>{`Under ${name} it goes ${place(far)} aside at ${place(at)}; no limit is set.`}</p>;
  const past = far > limit;
  return (
    <>
      <p>
        Under {name} it goes <strong>{place(far)}</strong> aside at {place(at)}
        {past ? `, ${place(far - limit)} more than it may.` : `, of the ${place(limit)} it may.`}
      </p>
      <Rule
        label={`${place(far)} aside of ${place(limit)}`}
        from={0}
        to={shown(Math.max(limit * 1.25, far * 1.05))}
        value={shown(far)}
        target={shown(limit)}
        zones={[{ from: shown(limit), to: shown(Math.max(limit * 1.25, far * 1.05)), kind: 'stop' }]}
        unit={unit}
        tone={past ? 'stop' : 'blue'}
      />
    </>
  );
}

/** What is no matter of one place: how far it bends, and whether it buckles as a column. */
export function WholeTube({ checked: { checks, loads } }: { checked: CheckedPlan }) {
  const limit = loads.mostDeflection;
  const rows = checks.cases.flatMap((one, i) => {
    const name = loads.cases[i]?.name ?? '';
    const { column, amplification } = one;
    // Nothing presses it, so that it cannot buckle so.
    if (column.reserve >= 1e6) return [];
    return [
      [`${name}: column buckling`, marginWords(column.margin)],
      ...(amplification > told ? [[`${name}: bent moment grows`, grown(one)]] : []),
    ];
  });
  const aside = checks.cases.map((one, i) => ({
    ...farthest(one.solution),
    id: loads.cases[i]?.id ?? String(i),
    name: loads.cases[i]?.name ?? `Case ${i + 1}`,
  }));
  const far = limit !== undefined && aside.some((a) => a.far > limit);
  return (
    <>
      <div class="ask-head">
        <h2>The whole tube</h2>
        <Ask term="load-factor" asks="What is the load factor?" />
      </div>
      {far && (
        <Warning kind="stop" title="It bends too far">
          Stiffer plies along, more of them, or a fatter tube hold it nearer.
        </Warning>
      )}
      {aside.map((a) => (
        <Aside key={a.id} {...a} limit={limit} />
      ))}
      <p class="quiet small">With the load factor in the loads, and without shear of the wall.</p>
      {rows.length > 0 && (
        <div class="margin-lines">
          <Lines rows={rows} />
        </div>
      )}
    </>
  );
}
