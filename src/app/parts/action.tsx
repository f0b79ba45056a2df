import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { claimMainKey } from './main-key.ts';
import './action.css';

/** A glove bounces: presses this soon after the last one are the same press, ms */
const bounce = 350;

interface ActionProps {
  /** What will have happened, not 'OK'. */
  children: ComponentChildren;
  onPress: () => unknown;
  /** Why it must not be pressed now, shown in its place: '11.5 g short'. */
  not?: string | undefined;
  tone?: 'main' | 'stop';
}

/** The main action of a screen: full width, at the bottom, and what Enter or a foot switch presses. */
export function Action({ children, onPress, not, tone = 'main' }: ActionProps) {
  const busy = useSignal(false);
  // The first press is no bounce, however soon after the app was opened.
  const last = useRef(Number.NEGATIVE_INFINITY);
  const press = async () => {
    if (not !== undefined || busy.value || performance.now() - last.current < bounce) return;
    busy.value = true;
    try {
      await onPress();
    } finally {
      busy.value = false;
      last.current = performance.now();
    }
  };
  const latest = useRef(press);
  latest.current = press;
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => claimMainKey({ down: () => latest.current(), place: () => button.current }), []);
  return (
    <button
      ref={button}
      type="button"
      class={`action action-${tone}`}
      aria-disabled={not !== undefined}
      onClick={press}
    >
      {not ?? children}
    </button>
  );
}

interface SecondaryProps {
  children: ComponentChildren;
  onPress: () => unknown;
  pressed?: boolean;
  /** What it does, where the room lets only a part of it be seen. */
  label?: string;
  /** Why there is nothing to press now, shown in its place. */
  not?: string | undefined;
}

export function Secondary({ children, onPress, pressed, label, not }: SecondaryProps) {
  return (
    <button
      type="button"
      class="secondary"
      aria-pressed={pressed}
      aria-label={label}
      aria-disabled={not === undefined ? undefined : true}
      onClick={() => not === undefined && onPress()}
    >
      {not ?? children}
    </button>
  );
}

/** Secondary actions side by side, above the main one. */
export function Beside({ children }: { children: ComponentChildren }) {
  return <div class="beside">{children}</div>;
}

export function LinkButton({ to, children }: { to: string; children: ComponentChildren }) {
  return (
    <a class="secondary" href={`#${to}`}>
      {children}
    </a>
  );
}
