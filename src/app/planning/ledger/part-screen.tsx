import { Action, LinkButton, Secondary } from '#app/parts/action.tsx';
import { BigFigure, Lines } from '#app/parts/figure.tsx';
import { Empty } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { go, type Params } from '#app/router.ts';
import { useAllSummaries } from '#app/state/all-summaries.ts';
import { type Doc, findDoc } from '#app/state/documents.ts';
import { show } from '#app/state/show.ts';
import type { StructurePart } from '#shared/record/structure.ts';
import type { BuildSummary } from '#shared/record/summary.ts';
import { bigGrams, grams, madeWords, partTitle, wentWhere } from './ledger-words.ts';
import { assignedTo, factsOf, offeredTo, titleOf } from './part-facts.ts';
import { type PartSum, reckonPart } from './reckon.ts';
import { saveStructure, withPart } from './save.ts';
import { NoStructure } from './structure-screen.tsx';

const massOf = ({ trimmedMass }: BuildSummary) =>
  trimmedMass === undefined ? 'not weighed' : grams(trimmedMass);

interface Props {
  found: Doc<'structure'>;
  part: StructurePart;
  builds: readonly BuildSummary[];
}

function Assigned({ found, part, builds }: Props) {
  const taken = assignedTo();
  const own = builds.filter((b) => part.builds.includes(b.subject));
  const missing = part.builds.length - own.length;
  const out = (build: string) =>
    saveStructure(found, withPart(found.body, { ...part, builds: part.builds.filter((b) => b !== build) }));
  return (
    <>
      {own.map((b) => (
        <Secondary key={b.subject} onPress={() => out(b.subject)}>
          Take out {titleOf(b)}, {massOf(b)}
          {b.outcome !== 'good' && ', no longer judged good'}
        </Secondary>
      ))}
      {own.some((b) => (taken.get(b.subject)?.length ?? 0) > 1) && (
        <Warning kind="amber" title="Counted twice">
          A tube in here is also counted elsewhere, given away on two phones. Take it out where it is not.
        </Warning>
      )}
      {missing > 0 && (
        <p class="quiet small">{missing} assigned on another phone: restore its backup here to count it.</p>
      )}
    </>
  );
}

/** Good tubes of its plan that are in nothing yet; a touch puts one in. */
function Offered({ found, part, builds }: Props) {
  const offered = offeredTo(part, builds);
  const assign = (build: string) =>
    saveStructure(found, withPart(found.body, { ...part, builds: [...part.builds, build] }));
  if (part.builds.length >= part.quantity) return null;
  if (offered.length === 0) {
    return (
      <Empty>
        No tube of this plan is free. One that is judged good, and in no structure yet, appears here to be put
        in.
      </Empty>
    );
  }
  return (
    <>
      <h2>Free tubes of its plan</h2>
      {offered.map((b) => (
        <Secondary key={b.subject} onPress={() => assign(b.subject)}>
          Put in {titleOf(b)}, {massOf(b)}
        </Secondary>
      ))}
    </>
  );
}

function PartFigure({ sum }: { sum: PartSum }) {
  const { expected, budget, over } = sum;
  const matters = over === undefined ? expected : Math.abs(over);
  const { figure, unit } = matters === undefined ? { figure: '–', unit: '' } : bigGrams(matters);
  const label =
    over === undefined || budget === undefined
      ? madeWords(sum)
      : over > 0
        ? `▲ over its budget of ${grams(budget)}`
        : `left of ${grams(budget)}`;
  return <BigFigure figure={figure} unit={unit} label={label} />;
}

function PartLines({ sum, part }: { sum: PartSum; part: StructurePart }) {
  const { planned, plannedThen, actual } = sum;
  const went = wentWhere(sum);
  return (
    <>
      <Lines
        rows={[
          ['By plan, all of them', planned === undefined ? '–' : grams(planned)],
          ['Weighed', sum.weighed === 0 ? 'none yet' : grams(actual)],
          ...(plannedThen === undefined || part.plan === undefined
            ? []
            : [['By plan when they were started', grams(plannedThen)]]),
          ['To go', `${sum.toGo} of ${part.quantity}`],
          ...(sum.toGo === 0 || sum.expected === undefined
            ? []
            : [['To go, by today’s plan', grams(sum.expected - actual)]]),
          ...(sum.saved > 0 ? [['Its shaped wall saves', grams(sum.saved)]] : []),
          ...(part.position === undefined ? [] : [['Its center at', show(part.position, 'length', 0)]]),
        ]}
      />
      {went.length > 0 && <p>Weighed and not planned: {went.join(', ')}.</p>}
    </>
  );
}

function PartView(props: Props) {
  const { found, part, builds } = props;
  const sum = reckonPart(factsOf(part, builds));
  const plan = findDoc('plan', part.plan);
  return (
    <Screen
      kicker={found.body.name}
      title={partTitle(part)}
      back={{ to: `/ledger/${found.doc}`, label: found.body.name }}
      actions={
        <Action onPress={() => go(`/ledger/${found.doc}/part/${part.id}/edit`)}>Change this part</Action>
      }
    >
      <PartFigure sum={sum} />
      {part.plan !== undefined && (
        <>
          <Offered {...props} />
          <Assigned {...props} />
        </>
      )}
      <PartLines sum={sum} part={part} />
      {plan && <LinkButton to={`/plan/${plan.doc}`}>Its plan</LinkButton>}
    </Screen>
  );
}

/** What does this part weigh, and which tubes became it? */
export function PartScreen({ params }: { params: Params }) {
  const all = useAllSummaries();
  const found = findDoc('structure', params.doc);
  const part = found?.body.parts.find((p) => p.id === params.part);
  if (!found || !part) return <NoStructure />;
  return all ? <PartView found={found} part={part} builds={all.builds} /> : null;
}
