import { Action, Secondary } from '#app/parts/action.tsx';
import { QuantityField } from '#app/parts/field.tsx';
import { allGood, useQuantity } from '#app/parts/quantity-input.ts';
import { Sheet } from '#app/parts/sheet.tsx';
import type { LotOnShelf, Need } from './choose-lot.ts';
import { lotWords, showAmount } from './lot-words.ts';

interface Props {
  need: Need;
  /** What gave so far, by the record */
  before: LotOnShelf | undefined;
  to: LotOnShelf;
  onAll: () => void;
  /** m2 or m */
  onPart: (amount: number) => void;
  onClose: () => void;
}

/** Cut or pulled in one go, but not always from one roll: all of it from the new one, or the rest? */
export function PartOfItSheet({ need, before, to, onAll, onPart, onClose }: Props) {
  const { quantity, thing } = lotWords[need.of];
  // What the first one is short of, with this build's own share already off it.
  const short = before && before.left < 0 ? -before.left : undefined;
  const input = useQuantity(short, { quantity, positive: true, max: need.amount ?? 10_000 });
  const part = () => {
    if (allGood([input]) && input.si.value !== undefined) onPart(input.si.value);
  };
  return (
    <Sheet
      title={`How much of it is from ${to.lot.name}?`}
      onClose={onClose}
      actions={
        <>
          <Secondary onPress={onAll}>All of it from {to.lot.name}</Secondary>
          <Action onPress={part}>Only this much</Action>
        </>
      }
    >
      <p>
        {thing} of this tube was to come from {before?.lot.name ?? 'another'}
        {short === undefined ? '' : `, which is short by ${showAmount(need.of, short)}`}.
      </p>
      <QuantityField label={`From ${to.lot.name}`} input={input} hint="The rest stays with the other" />
    </Sheet>
  );
}
