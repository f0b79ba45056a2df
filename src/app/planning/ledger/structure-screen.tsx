import { Action, LinkButton } from '#app/parts/action.tsx';
import { Conflict } from '#app/parts/conflict.tsx';
import { Explain } from '#app/parts/explain.tsx';
import { BigFigure, Lines } from '#app/parts/figure.tsx';
import { Empty, Row, Rows } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { go, type Params } from '#app/router.ts';
import { useAllSummaries } from '#app/state/all-summaries.ts';
import { type Doc, findDoc } from '#app/state/documents.ts';
import { show } from '#app/state/show.ts';
import type { BuildSummary } from '#shared/record/summary.ts';
import { WeightBars } from './bars.tsx';
import { CostLine } from './cost-line.tsx';
import { sumOf } from './ledger-screen.tsx';
import { bigGrams, grams, isOver, leftLabel, madeWords, partTitle, wentWhere } from './ledger-words.ts';
import type { PartSum, StructureSum } from './reckon.ts';

/** Grams left, or over, with what they follow from. */
function Left({ sum }: { sum: StructureSum }) {
  const { left, budget = 0, actual, toGo } = sum;
  if (left === undefined) {
    const { figure, unit } = bigGrams(sum.expected);
    return <BigFigure figure={figure} unit={unit} label="weighed and by plan; it has no budget yet" />;
  }
  const { figure, unit } = bigGrams(Math.abs(left));
  return (
    <>
      <BigFigure figure={figure} unit={unit} label={left < 0 ? `▲ ${leftLabel(sum)}` : leftLabel(sum)} />
      <Explain
        of="Left of the budget"
        formula="left = budget − weighed − to go by plan"
        values={[
          ['Budget', grams(budget)],
          ['Weighed', grams(actual)],
          ['To go, by today’s plans', grams(toGo)],
          [left < 0 ? 'Over' : 'Left', grams(Math.abs(left))],
        ]}
        source="addition; a tube counts as weighed after end trim, with film left inside"
        sure="As good as the scale for what is weighed. What is to go is by today’s plans, without voids and without trim; what is made is held against the plan it was started from."
      />
    </>
  );
}

function Overs({ parts }: { parts: readonly PartSum[] }) {
  const over = parts.filter(isOver);
  if (over.length === 0) return null;
  return (
    <Warning
      kind="amber"
      title={
        over.length === 1 ? 'One part is over its budget' : `${over.length} parts are over their budgets`
      }
    >
      {over.map((p) => (
        <p key={p.part.id}>
          {p.part.name} by {grams(p.over)}
          {wentWhere(p).length > 0
            ? `: ${wentWhere(p).join(', ')}.`
            : ', by plan already: draw it lighter or give it more.'}
        </p>
      ))}
    </Warning>
  );
}

function Sums({ sum, axis }: { sum: StructureSum; axis: string | undefined }) {
  const { saved, savedShare, balance, notPlaced, unknown, actual, toGo } = sum;
  return (
    <>
      <Lines
        rows={[
          ['Weighed', grams(actual)],
          ['To go, by today’s plans', grams(toGo)],
          ...(saved > 0
            ? [['Saved by shaped walls', `${grams(saved)}, ${show(savedShare, 'fraction', 0)} of it all`]]
            : []),
          ...(balance === undefined
            ? []
            : [[`Balances at${axis ? `, ${axis}` : ''}`, show(balance, 'length', 0)]]),
        ]}
      />
      {notPlaced.length > 0 && (
        <p class="quiet small">
          Without a position or weight, and not in the balance: {notPlaced.join(', ')}.
        </p>
      )}
      {unknown.length > 0 && (
        <p class="quiet small">
          Not counted, since nothing tells their weight: {unknown.join(', ')}. Give each a plan, or type what
          one weighs.
        </p>
      )}
    </>
  );
}

function StructureView({ found, builds }: { found: Doc<'structure'>; builds: readonly BuildSummary[] }) {
  const sum = sumOf(found, builds);
  const { doc, body } = found;
  return (
    <Screen
      kicker="Structure"
      title={body.name}
      back={{ to: '/ledger', label: 'Structures' }}
      actions={<Action onPress={() => go(`/ledger/${doc}/part/new/edit`)}>Add a part</Action>}
    >
      <Conflict type="structure" doc={found} />
      {body.parts.length === 0 ? (
        <Empty>No parts yet. Add its tubes and what else has weight: fittings, halyards, paint.</Empty>
      ) : (
        <>
          <Left sum={sum} />
          <WeightBars parts={sum.parts} />
          <Overs parts={sum.parts} />
          <Sums sum={sum} axis={body.axis} />
          <CostLine parts={body.parts} />
          <Rows label="Parts">
            {sum.parts.map((p) => (
              <Row
                key={p.part.id}
                to={`/ledger/${doc}/part/${p.part.id}`}
                title={partTitle(p.part)}
                about={`${madeWords(p)}${p.budget === undefined ? '' : `, budget ${grams(p.budget)}`}`}
                value={p.expected === undefined ? '–' : grams(p.expected)}
              />
            ))}
          </Rows>
        </>
      )}
      {body.note && <p>{body.note}</p>}
      <LinkButton to={`/ledger/${doc}/edit`}>Change name and budget</LinkButton>
    </Screen>
  );
}

export function NoStructure() {
  return (
    <Screen title="No such structure" back={{ to: '/ledger', label: 'Structures' }}>
      <p>
        It is not on this phone. It may be on another one: restore its backup under Shelf, Data and backup.
      </p>
    </Screen>
  );
}

/** Is it within its budget, and where did the weight go? */
export function StructureScreen({ params }: { params: Params }) {
  const all = useAllSummaries();
  const found = findDoc('structure', params.doc);
  if (!found) return <NoStructure />;
  return all ? <StructureView found={found} builds={all.builds} /> : null;
}
