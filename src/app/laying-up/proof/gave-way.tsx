import { useSignal } from '@preact/signals';
import { Action, Secondary } from '#app/parts/action.tsx';
import { Choice, QuantityField } from '#app/parts/field.tsx';
import { useQuantity } from '#app/parts/quantity-input.ts';
import { Sheet } from '#app/parts/sheet.tsx';
import { Caution } from '#app/parts/warning.tsx';
import { show } from '#app/state/show.ts';
import { type GaveWay, gaveWays } from '#shared/record/proof.ts';
import type { HowItGave } from './running.ts';
import { gaveWayWords } from './words.ts';

interface Props {
  /** kg that hang */
  mass: number;
  /** m */
  length: number;
  onWrite: (gave: HowItGave) => Promise<void>;
  onClose: () => void;
}

/** How did it give way, and where? It ends the test, with what the dials read so far. */
export function GaveWaySheet({ mass, length, onWrite, onClose }: Props) {
  const how = useSignal<GaveWay | undefined>(undefined);
  const place = useQuantity(undefined, { quantity: 'length', min: 0, max: length, optional: true });
  const write = async () => {
    if (how.value === undefined) return;
    const si = place.si.value;
    await onWrite({ how: how.value, ...(si !== undefined && { place: { si, typed: place.typed.value } }) });
  };
  const not = how.value === undefined ? 'Say how' : place.problem.value && 'Say where, or leave it empty';
  return (
    <Sheet
      title="It gave way"
      onClose={onClose}
      actions={
        <>
          <Secondary onPress={onClose}>It holds after all</Secondary>
          <Action onPress={write} not={not}>
            {how.value && `${gaveWayWords[how.value]} under ${show(mass, 'hungMass')}`}
          </Action>
        </>
      }
    >
      <Choice
        label="What it did"
        value={how.value}
        options={gaveWays.map((value) => ({ value, label: gaveWayWords[value] }))}
        onChange={(to) => {
          how.value = to;
        }}
      />
      <QuantityField label="Where, from end 0" input={place} hint="Where you see it; may stay empty" />
      <Caution>
        Take the weight off from the side, standing clear: what cracked may go on at any moment.
      </Caution>
    </Sheet>
  );
}
