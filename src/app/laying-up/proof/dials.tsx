import { useSignal } from '@preact/signals';
import { Action } from '#app/parts/action.tsx';
import { QuantityField } from '#app/parts/field.tsx';
import { allGood, useQuantity } from '#app/parts/quantity-input.ts';
import { Sheet } from '#app/parts/sheet.tsx';
import { dialPlaces, freeOf, mostDials } from './setup.ts';
import type { Planning } from './use-planning.ts';
import { at } from './words.ts';

function Elsewhere({ planning, onClose }: { planning: Planning; onClose: () => void }) {
  const { min, max } = freeOf(planning.setup.value, planning.length);
  const place = useQuantity(undefined, { quantity: 'length', min, max });
  const add = () => {
    const value = place.si.value;
    if (!allGood([place]) || value === undefined) return;
    const { dials } = planning.setup.value;
    planning.change({ dials: [...dials.slice(0, mostDials - 1), value] });
    onClose();
  };
  return (
    <Sheet title="Where does it stand?" onClose={onClose} actions={<Action onPress={add}>Dial there</Action>}>
      <QuantityField label="From end 0" input={place} />
    </Sheet>
  );
}

/** Where a dial or a rule stands beside the tube: one at least, three at most. */
export function Dials({ planning }: { planning: Planning }) {
  const asks = useSignal(false);
  const setup = planning.setup.value;
  const { dials, hangAt } = setup;
  const toggle = (place: number) => {
    const others = dials.filter((d) => d !== place);
    planning.change({ dials: dials.includes(place) ? others : [...others, place].slice(-mostDials) });
  };
  return (
    <fieldset class="choice">
      <legend>A dial or a rule at</legend>
      <div class="choice-row">
        {dialPlaces(setup, planning.length).map((place) => (
          <button
            key={place}
            type="button"
            aria-pressed={dials.includes(place)}
            onClick={() => toggle(place)}
          >
            {at(place)}
            {place === hangAt && ', the weight'}
          </button>
        ))}
        <button type="button" onClick={() => (asks.value = true)}>
          Elsewhere
        </button>
      </div>
      {asks.value && <Elsewhere planning={planning} onClose={() => (asks.value = false)} />}
    </fieldset>
  );
}
