import { useSignal } from '@preact/signals';
import { Action, Secondary } from '#app/parts/action.tsx';
import { BigFigure } from '#app/parts/figure.tsx';
import { Keyed } from '#app/parts/keyed.tsx';
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

/** Any temperature, on our own keys. A figure that fits the other unit better is asked about once, on pressing. */
export function OtherSheet({ load, logging, expected, onClose }: Props) {
  const text = useSignal('');
  const isAsking = useSignal(false);
  const { units } = settings.value;
  const unit = unitFor('temperature', units);
  const read = readTemperature(text.value, units, expected);
  const name = load.header.channels.find((c) => c.id === logging.channel.value)?.name ?? '';
  const log = async (reading: Figure) => {
    if (await logging.log(reading)) onClose();
  };
  const press = () => {
    if (read.kind === 'read') return log(read.reading);
    isAsking.value = read.kind === 'otherUnit';
  };
  const again = () => {
    text.value = '';
    isAsking.value = false;
  };
  const asks = isAsking.value && read.kind === 'otherUnit';
  const isReady = read.kind === 'read' || read.kind === 'otherUnit';
  return (
    <Sheet
      title={`${name} reads`}
      onClose={onClose}
      actions={
        asks ? undefined : (
          <div class="keys-row">
            <Secondary onPress={onClose}>Not now</Secondary>
            <Action onPress={press} not={isReady ? undefined : 'Type what it reads'}>
              Log {text.value.replace('-', '−')} {unit}
            </Action>
          </div>
        )
      }
    >
      {asks ? (
        <>
          <BigFigure figure={text.value.replace('-', '−')} unit={unit} />
          <UnitQuestion read={read} onLog={log} />
          <Secondary onPress={again}>Type it again</Secondary>
        </>
      ) : (
        <Keyed
          text={text}
          unit={unit}
          label={`${name} reads, ${unit}`}
          says={read.kind === 'wrong' ? read.says : undefined}
          sign
        />
      )}
    </Sheet>
  );
}
