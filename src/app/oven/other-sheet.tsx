import { useSignal } from '@preact/signals';
import { Action, Secondary } from '#app/parts/action.tsx';
import { BigFigure } from '#app/parts/figure.tsx';
import { Keypad } from '#app/parts/keypad.tsx';
import { Sheet } from '#app/parts/sheet.tsx';
import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
import { unitFor } from '#shared/units/quantity.ts';
import type { Logging } from './logging.ts';
import { type Figure, readTemperature, type TypedReading } from './reading-check.ts';

interface Props {
  load: OvenState;
  logging: Logging;
  /** K */
  expected: number;
  onClose: () => void;
}

type OtherUnit = Extract<TypedReading, { kind: 'otherUnit' }>;

function UnitQuestion({ read, onLog }: { read: OtherUnit; onLog: (reading: Figure) => void }) {
  const { other, asTyped } = read;
  return (
    <>
      <p role="alert">
        Do you mean {other.typed} = {show(other.si, 'temperature')}?
      </p>
      <Secondary onPress={() => onLog(other)}>Log {other.typed}</Secondary>
      {asTyped && <Secondary onPress={() => onLog(asTyped)}>It is {asTyped.typed}: log that</Secondary>}
    </>
  );
}

/** Any temperature, on our own keys. */
export function OtherSheet({ load, logging, expected, onClose }: Props) {
  const text = useSignal('');
  const { units } = settings.value;
  const read = readTemperature(text.value, units, expected);
  const name = load.header.channels.find((c) => c.id === logging.channel.value)?.name ?? '';
  const log = async (reading: Figure) => {
    if (await logging.log(reading)) onClose();
  };
  const ready = read.kind === 'read' ? read.reading : undefined;
  return (
    <Sheet
      title={`${name} reads`}
      onClose={onClose}
      actions={
        <Action
          onPress={() => ready && log(ready)}
          not={ready ? undefined : read.kind === 'otherUnit' ? 'Which of the two?' : 'Type what it reads'}
        >
          Log {ready?.typed}
        </Action>
      }
    >
      <BigFigure figure={text.value.replace('-', '−') || '–'} unit={unitFor('temperature', units)} />
      {read.kind === 'wrong' && (
        <p class="field-problem" role="alert">
          {read.says}
        </p>
      )}
      {read.kind === 'otherUnit' ? (
        <UnitQuestion read={read} onLog={log} />
      ) : (
        <Keypad text={text} label={`${name} reads, ${unitFor('temperature', units)}`} sign />
      )}
      <Secondary onPress={read.kind === 'otherUnit' ? () => (text.value = '') : onClose}>
        {read.kind === 'otherUnit' ? 'Type it again' : 'Not now'}
      </Secondary>
    </Sheet>
  );
}
