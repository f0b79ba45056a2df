import type { Signal } from '@preact/signals';
import { useLayoutEffect, useRef } from 'preact/hooks';
import './keypad.css';

interface Props {
  text: Signal<string>;
  /** Words for a screen reader: 'Scale reads, grams'. */
  label: string;
}

const longest = 9;

export function typeKey(text: string, key: string): string {
  if (key === 'erase') return text.slice(0, -1);
  if (key === 'sign') return text.startsWith('-') ? text.slice(1) : `-${text}`;
  if (key === '.' && text.includes('.')) return text;
  if (text.length >= longest) return text;
  if (key === '.' && (text === '' || text === '-')) return `${text}0.`;
  return text + key;
}

/** What a key of a keyboard writes, on a desk or with a number pad at the bench. */
function keyOf({ key }: KeyboardEvent): string | undefined {
  if (/^[0-9]$/.test(key)) return key;
  if (key === '.' || key === ',') return '.';
  return key === 'Backspace' ? 'erase' : undefined;
}

/** True while something in front has the keyboard to itself, or a field has. */
function isElsewhere(pad: HTMLElement | null, target: EventTarget | null): boolean {
  if (target instanceof Element && target.matches('input, select, textarea')) return true;
  const dialog = document.querySelector('dialog[open]');
  return dialog !== null && !dialog.contains(pad);
}

/** Our own keys, big enough for a glove; no phone keyboard covers the number that matters. */
export function Keypad({ text, label }: Props) {
  const press = (key: string) => {
    text.value = typeKey(text.value, key);
  };
  const pad = useRef<HTMLDivElement>(null);
  const latest = useRef(press);
  latest.current = press;
  // Before the keys are seen: a figure typed at once on a number pad would lose its first one.
  useLayoutEffect(() => {
    const type = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey || isElsewhere(pad.current, event.target)) return;
      const key = keyOf(event);
      if (key === undefined) return;
      event.preventDefault();
      latest.current(key);
    };
    addEventListener('keydown', type);
    return () => removeEventListener('keydown', type);
  }, []);
  const keys = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '.', '0', 'erase'];
  return (
    <div
      ref={pad}
      class={text.value === '' ? 'keypad' : 'keypad keypad-typed'}
      role="group"
      aria-label={label}
    >
      {keys.map((key) => (
        <button
          key={key}
          type="button"
          aria-label={key === 'erase' ? 'Erase last figure' : undefined}
          onClick={() => press(key)}
        >
          {key === 'erase' ? '⌫' : key}
        </button>
      ))}
    </div>
  );
}
