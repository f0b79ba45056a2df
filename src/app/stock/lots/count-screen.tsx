import { Action } from '#app/parts/action.tsx';
import { Keyed } from '#app/parts/keyed.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { useTypedFigure } from '#app/parts/typed-figure.ts';
import { goInstead, type Params } from '#app/router.ts';
import { type Doc, findDoc, saveDoc } from '#app/state/documents.ts';
import { settings } from '#app/state/settings.ts';
import { NotOnShelf } from '#app/stock/shelf/not-on-shelf.tsx';
import { unitFor } from '#shared/units/quantity.ts';
import { leftIn } from './lot-left.ts';
import { lotWords, showAmount } from './lot-words.ts';
import { useLots } from './use-lots.ts';

const how = {
  cloth: 'Unroll it or measure the roll: length times width.',
  resin: 'Weigh the can and take off what it weighs empty.',
  hardener: 'Weigh the bottle and take off what it weighs empty.',
  tape: 'Measure it, or weigh the reel against a full one.',
};

function Count({ found: { doc, body: lot, retired } }: { found: Doc<'lot'> }) {
  const { quantity, one } = lotWords[lot.of];
  const figure = useTypedFigure({ quantity, min: 0, max: 10_000 });
  const shelf = useLots();
  const unit = unitFor(quantity, settings.value.units);
  const amount = figure.si.value;
  const save = async () => {
    if (amount === undefined) return;
    const counted = { at: Date.now(), amount };
    if (await saveDoc('lot', { ...lot, counted }, { doc, retired })) goInstead(`/lots/${doc}`);
  };
  return (
    <Screen
      keys
      kicker={lotWords[lot.of].thing}
      title={`What is in ${lot.name}`}
      back={{ to: `/lots/${doc}`, label: lot.name }}
      actions={
        <Action onPress={save} not={amount === undefined ? 'Type what you counted' : undefined}>
          The {one} holds {amount === undefined ? '' : showAmount(lot.of, amount)}
        </Action>
      }
    >
      <p class="quiet">
        {shelf && `By the record ${showAmount(lot.of, leftIn(lot, shelf.draws.get(doc) ?? []))}. `}
        {how[lot.of]}
      </p>
      <Keyed text={figure.text} unit={unit} label={`What is left, ${unit}`} says={figure.problem.value} />
    </Screen>
  );
}

/** What does a count find? */
export function CountScreen({ params }: { params: Params }) {
  const found = findDoc('lot', params.doc);
  return found ? <Count found={found} /> : <NotOnShelf />;
}
