import type { Signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { Beside, Secondary } from '#app/parts/action.tsx';
import { type ChecklistDraft, putBack } from './checklist-draft.ts';

interface ListProps {
  label: string;
  items: readonly { key: string; text: string; about?: ComponentChildren; value?: string }[];
  chosen: Signal<string | undefined>;
}

/** Things in an order: a touch chooses one, and keys in thumb reach move it. */
export function ArrangeList({ label, items, chosen }: ListProps) {
  const list = useRef<HTMLUListElement>(null);
  const place = items.findIndex((item) => item.key === chosen.value);
  useEffect(() => {
    // The keys that come up with it would cover a line near the bottom.
    if (place >= 0) list.current?.children[place]?.scrollIntoView({ block: 'center' });
  }, [chosen.value, place]);
  return (
    <ul class="arrange" ref={list} aria-label={label}>
      {items.map((item) => (
        <li key={item.key}>
          <button
            type="button"
            aria-pressed={item.key === chosen.value}
            onClick={() => {
              chosen.value = item.key === chosen.value ? undefined : item.key;
            }}
          >
            <span>
              {item.text}
              {item.about && <span class="arrange-about">{item.about}</span>}
            </span>
            {item.value && <span class="arrange-value">{item.value}</span>}
          </button>
        </li>
      ))}
    </ul>
  );
}

interface KeysProps {
  onMove: (by: -1 | 1) => void;
  onOpen: () => void;
  open: string;
  onRemove: () => void;
}

export function ArrangeKeys({ onMove, onOpen, open, onRemove }: KeysProps) {
  return (
    <>
      <Beside>
        <Secondary onPress={() => onMove(-1)}>Up</Secondary>
        <Secondary onPress={() => onMove(1)}>Down</Secondary>
      </Beside>
      <Beside>
        <Secondary onPress={onOpen}>{open}</Secondary>
        <Secondary onPress={onRemove}>Remove</Secondary>
      </Beside>
    </>
  );
}

/** What was taken out last, and the way back. */
export function PutBack({ draft }: { draft: ChecklistDraft }) {
  const removed = draft.removed.value;
  if (!removed) return null;
  return <Secondary onPress={() => putBack(draft)}>Put back: {removed.words}</Secondary>;
}
