import type { Signal } from '@preact/signals';
import { BigFigure } from './figure.tsx';
import { Keypad, typeKey } from './keypad.tsx';
import { Warning } from './warning.tsx';
import './keyed.css';

interface Props {
  text: Signal<string>;
  unit: string;
  /** Words for a screen reader: 'Scale reads, grams'. */
  label: string;
  /** What is wrong with the figure, or doubtful about it. */
  says?: string | undefined;
  /** May be below zero. */
  sign?: boolean;
}

/** The figure, the sentence about it and our own keys as one piece: no key ever covers what the figure is told. */
export function Keyed({ text, unit, label, says, sign = false }: Props) {
  return (
    <>
      <div class={says ? 'keyed keyed-says' : 'keyed'}>
        <div class="keyed-figure">
          <BigFigure figure={text.value.replace('-', '−') || (sign ? '–' : '0')} unit={unit} />
          {sign && (
            <button
              type="button"
              class="keyed-sign"
              onClick={() => {
                text.value = typeKey(text.value, 'sign');
              }}
            >
              + / −
            </button>
          )}
        </div>
        {says && <Warning kind="amber" title={says} announce />}
      </div>
      <Keypad text={text} label={label} />
    </>
  );
}
