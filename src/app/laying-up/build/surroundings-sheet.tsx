import { type Signal, signal, useSignal } from '@preact/signals';
import { Action, Secondary } from '#app/parts/action.tsx';
import { Keypad } from '#app/parts/keypad.tsx';
import { allGood, type QuantityInput, useQuantity } from '#app/parts/quantity-input.ts';
import { Sheet } from '#app/parts/sheet.tsx';
import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import { unitFor } from '#shared/units/quantity.ts';
import { act } from './act.ts';
import { ReadingField } from './reading-field.tsx';
import type { SheetProps } from './sheet-props.ts';
import { judgeSurroundings, type Surroundings } from './surroundings.ts';
import {
  fieldWords,
  quantityOf,
  type SurroundingsField,
  surroundingsFields,
  typedWithUnit,
} from './surroundings-words.ts';
import { roleTick } from './ticks.ts';

type Texts = Record<SurroundingsField, Signal<string>>;

/** What was typed and not yet written stays when the sheet is closed, per build. */
const drafts = new Map<string, Texts>();

function draftOf(build: string): Texts {
  const kept = drafts.get(build);
  const texts = kept ?? { air: signal(''), resin: signal(''), mandrel: signal(''), humidity: signal('') };
  drafts.set(build, texts);
  return texts;
}

/** From a winter barn to a hot day, K: anything else is a slip of the finger. */
const coldest = 243.15;
const hottest = 333.15;

const bounds = { quantity: 'temperature', min: coldest, max: hottest, optional: true } as const;

export function SurroundingsSheet({ state, newId, onClose }: SheetProps) {
  const texts = draftOf(state.header.id);
  const active = useSignal<SurroundingsField>('air');
  const inputs: Record<SurroundingsField, QuantityInput> = {
    air: useQuantity(undefined, bounds, texts.air),
    resin: useQuantity(undefined, bounds, texts.resin),
    mandrel: useQuantity(undefined, bounds, texts.mandrel),
    humidity: useQuantity(
      undefined,
      { quantity: 'humidity', positive: true, max: 1, optional: true },
      texts.humidity,
    ),
  };
  const filled = surroundingsFields.filter((f) => texts[f].value.trim() !== '');
  const empty = surroundingsFields.find((f) => texts[f].value.trim() === '' && f !== active.value);
  const read = readOff(inputs);
  const write = async () => {
    const wrong = surroundingsFields.find((f) => inputs[f].problem.value !== undefined);
    if (!allGood(Object.values(inputs))) {
      if (wrong) active.value = wrong;
      return;
    }
    const typed = Object.fromEntries(
      filled.map((f) => [
        f,
        typedWithUnit(inputs[f].typed.value, unitFor(quantityOf(f), settings.value.units)),
      ]),
    );
    const entry = { kind: 'surroundings', subject: state.header.id, ...read, typed } as const;
    const tick = roleTick(state, 'surroundings', { newId });
    if (!(await act([entry, ...tick], { said: 'Surroundings written down' }))) return;
    drafts.delete(state.header.id);
    onClose();
  };
  const isLast = empty === undefined || texts[active.value].value.trim() === '';
  return (
    <Sheet
      title="Surroundings now"
      onClose={onClose}
      actions={
        <div class="keys-row">
          <Secondary onPress={onClose}>Close</Secondary>
          {!isLast && <Secondary onPress={write}>Only these</Secondary>}
          {isLast ? (
            <Action onPress={write} not={filled.length === 0 ? 'Type one or more' : undefined}>
              Readings are down
            </Action>
          ) : (
            <Action onPress={() => (active.value = empty)}>Next: {fieldWords[empty].toLowerCase()}</Action>
          )}
        </div>
      }
    >
      <div class="readings">
        {surroundingsFields.map((field) => (
          <ReadingField
            key={field}
            label={fieldWords[field]}
            input={inputs[field]}
            isActive={active.value === field}
            onActive={() => (active.value = field)}
          />
        ))}
      </div>
      <DewLine
        read={read}
        problem={inputs[active.value].touched.value ? inputs[active.value].problem.value : undefined}
      />
      <Keypad text={texts[active.value]} label={`${fieldWords[active.value]}, figures`} />
    </Sheet>
  );
}

function readOff(inputs: Record<SurroundingsField, QuantityInput>): Surroundings {
  return Object.fromEntries(
    surroundingsFields.flatMap((f) => (inputs[f].si.value === undefined ? [] : [[f, inputs[f].si.value]])),
  );
}

function DewLine({ read, problem }: { read: Surroundings; problem: string | undefined }) {
  if (problem) {
    return (
      <p class="field-problem" role="alert">
        {problem}
      </p>
    );
  }
  const { dewPoint, concerns } = judgeSurroundings(read);
  if (dewPoint === undefined) return <p class="quiet">Air and humidity give the dew point.</p>;
  const close = concerns.some((c) => c.what === 'mandrelNearDew' || c.what === 'resinNearDew');
  return (
    <p>
      Dew point <strong>{show(dewPoint, 'temperature', 1)}</strong>
      {close && '. Too close: water may settle.'}
    </p>
  );
}
