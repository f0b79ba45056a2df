import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { Secondary } from './action.tsx';
import { Lines } from './figure.tsx';
import { Sheet } from './sheet.tsx';
import './explain.css';

interface Props {
  /** The number that is explained: 'Cure time used'. */
  of: string;
  /** In the field's own symbols: 'pi n (D + n t)'. */
  formula: string;
  /** What stands in the formula here: its name, its value in the builder's units. */
  values: readonly (readonly [name: string, value: string])[];
  /** Where the formula or its constants come from; 'common practice, no source' where there is none. */
  source: string;
  /** How far to trust it, in a sentence. */
  sure: string;
  /** In a list of several, under a heading that asks. */
  inList?: boolean;
  children?: ComponentChildren;
}

interface BehindProps {
  /** On the key that opens it. */
  asks: string;
  title: string;
  children: ComponentChildren;
}

/** What only some want to know, behind one press. */
export function BehindPress({ asks, title, children }: BehindProps) {
  const open = useSignal(false);
  const close = () => {
    open.value = false;
  };
  return (
    <>
      <button
        type="button"
        class="explain-open"
        onClick={() => {
          open.value = true;
        }}
      >
        {asks}
      </button>
      {open.value && (
        <Sheet title={title} onClose={close} actions={<Secondary onPress={close}>Close</Secondary>}>
          {children}
        </Sheet>
      )}
    </>
  );
}

/** How a number was reckoned, with the values of the build at hand in it. */
export function Explain({ of, formula, values, source, sure, inList, children }: Props) {
  return (
    <BehindPress asks={inList ? of : `${of}: how reckoned?`} title={of}>
      <p class="explain-formula">{formula}</p>
      <Lines rows={values} />
      {children}
      <p>{sure}</p>
      <p class="explain-source">From: {source}</p>
    </BehindPress>
  );
}
