import { Action, Beside, LinkButton, Secondary } from '#app/parts/action.tsx';
import { Conflict } from '#app/parts/conflict.tsx';
import { BigFigure, Lines } from '#app/parts/figure.tsx';
import { Row, Rows } from '#app/parts/rows.tsx';
import { Rule } from '#app/parts/rule.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { go, type Params } from '#app/router.ts';
import { type Doc, findDoc, saveDoc } from '#app/state/documents.ts';
import { now } from '#app/state/now.ts';
import { settings } from '#app/state/settings.ts';
import { show, showSplit } from '#app/state/show.ts';
import { NotOnShelf } from '#app/stock/shelf/not-on-shelf.tsx';
import type { BuildSummary } from '#shared/record/summary.ts';
import { inUnits } from '#shared/units/format.ts';
import { itemType } from './lot-edit-screen.tsx';
import { bestBy, type LotDraw, leftIn, runsOutAt } from './lot-left.ts';
import { dayWords, lotWords, monthsOf, pastSentence, showAmount } from './lot-words.ts';
import { useLots } from './use-lots.ts';

/** From empty to what came, in the builder's unit. */
function LeftRule({ lot, left }: { lot: Doc<'lot'>['body']; left: number }) {
  const { quantity } = lotWords[lot.of];
  const system = settings.value.units;
  const { unit } = inUnits(lot.received, { quantity, system });
  const value = (si: number) => inUnits(si, { quantity, system, unit }).value;
  const most = Math.max(lot.received, lot.counted?.amount ?? 0);
  return (
    <Rule
      label={`${showAmount(lot.of, left)} left of ${showAmount(lot.of, lot.received)}`}
      from={0}
      to={value(most)}
      value={value(Math.max(0, left))}
      unit={unit}
    />
  );
}

function LotLines({ lot, draws }: { lot: Doc<'lot'>['body']; draws: readonly LotDraw[] }) {
  const best = bestBy(lot);
  const runsOut = runsOutAt(lot, draws, now.value);
  return (
    <Lines
      rows={[
        ['Came', `${showAmount(lot.of, lot.received)}, ${dayWords(lot.receivedAt)}`],
        ['Opened', lot.openedAt === undefined ? 'Not yet' : dayWords(lot.openedAt)],
        ...(lot.keepsOpen === undefined ? [] : [['Keeps once opened', `${monthsOf(lot.keepsOpen)} months`]]),
        ...(best ? [['Good until', dayWords(best.at)]] : []),
        ...(runsOut === undefined ? [] : [['At this pace gone by', dayWords(runsOut)]]),
        ...(lot.counted
          ? [['Last counted', `${showAmount(lot.of, lot.counted.amount)}, ${dayWords(lot.counted.at)}`]]
          : []),
        ...(lot.price === undefined ? [] : [['Price', show(lot.price, 'number', 2)]]),
      ]}
    />
  );
}

function TakenBy({ doc, builds }: { doc: string; builds: readonly BuildSummary[] }) {
  const takers = builds.flatMap((build) => {
    const own = build.draws.filter((d) => d.lot === doc);
    const [first] = own;
    const amount = own.reduce((sum, d) => sum + d.amount, 0);
    return first ? [{ build, of: first.of, amount }] : [];
  });
  if (takers.length === 0) return <p class="quiet">Nothing was taken from it yet.</p>;
  return (
    <Rows label="Taken by">
      {takers.map(({ build, of, amount }) => (
        <Row
          key={build.subject}
          to={`/record/build/${build.subject}`}
          title={`${build.name} no. ${build.number}`}
          about={dayWords(build.startedAt)}
          value={showAmount(of, amount)}
        />
      ))}
    </Rows>
  );
}

function LotView({ found }: { found: Doc<'lot'> }) {
  const { doc, body: lot, retired } = found;
  const shelf = useLots();
  const draws = shelf?.draws.get(doc) ?? [];
  const left = leftIn(lot, draws);
  const { quantity, digits } = lotWords[lot.of];
  const { figure, unit } = showSplit(Math.max(0, left), quantity, digits);
  const past = pastSentence(lot, now.value);
  const item = findDoc(itemType(lot.of), lot.item)?.body.name;
  const save = (change: Partial<typeof lot>, gone = retired) =>
    saveDoc('lot', { ...lot, ...change }, { doc, retired: gone });
  return (
    <Screen
      kicker={`${lotWords[lot.of].thing} · ${item ?? 'no longer on the shelf'}`}
      title={lot.name}
      back={{ to: '/lots', label: 'Lots' }}
      actions={
        <>
          <Beside>
            <LinkButton to={`/lots/${doc}/edit`}>Change it</LinkButton>
            {lot.openedAt === undefined && !retired && (
              <Secondary onPress={() => save({ openedAt: Date.now() })}>Opened now</Secondary>
            )}
            <Secondary onPress={() => save({}, !retired)}>{retired ? 'Not used up' : 'Used up'}</Secondary>
          </Beside>
          <Action onPress={() => go(`/lots/${doc}/count`)}>Count what is left</Action>
        </>
      }
    >
      <Conflict type="lot" doc={found} />
      {retired && <p>Used up: no build is offered it any more.</p>}
      {shelf && (
        <>
          <BigFigure figure={figure} unit={unit} label="left" />
          <LeftRule lot={lot} left={left} />
          {left < 0 && (
            <Warning kind="amber" title={`${showAmount(lot.of, -left)} more was taken than it held`}>
              The record and the shelf do not agree. Count what is left: from then on the count holds.
            </Warning>
          )}
        </>
      )}
      {past && (
        <Warning kind="amber" title="Too old">
          {past} Set a small sample and see it go hard before a tube is wetted with it.
        </Warning>
      )}
      <LotLines lot={lot} draws={draws} />
      {lot.note && <p>{lot.note}</p>}
      <h2>Taken by</h2>
      {shelf && <TakenBy doc={doc} builds={shelf.builds} />}
    </Screen>
  );
}

/** How much is left of it, and who took the rest? */
export function LotScreen({ params }: { params: Params }) {
  const found = findDoc('lot', params.doc);
  return found ? <LotView found={found} /> : <NotOnShelf />;
}
