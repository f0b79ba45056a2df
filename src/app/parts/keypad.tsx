import type { Signal } from '@preact/signals';
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

/** Our own keys, big enough for a glove; no phone keyboard covers the number that matters. */
export function Keypad({ text, label }: Props) {
  const press = (key: string) => {
    text.value = typeKey(text.value, key);
  };
  const keys = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '.', '0', 'erase'];
  return (
    <div class="keypad" role="group" aria-label={label}>
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
