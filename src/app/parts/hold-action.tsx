import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { claimMainKey } from './main-key.ts';
import './action.css';

/** Long enough that no stray touch does it, ms */
const holdFor = 1000;

/** After the hold the same finger must not press what came in its place, ms after it lets go */
const settles = 350;

function swallowRelease(): void {
  const stop = (event: Event) => {
    event.preventDefault();
    event.stopImmediatePropagation();
  };
  const letGo = () => setTimeout(() => removeEventListener('click', stop, true), settles);
  addEventListener('click', stop, true);
  for (const end of ['pointerup', 'pointercancel', 'keyup'])
    addEventListener(end, letGo, { capture: true, once: true });
}

interface Props {
  children: ComponentChildren;
  onHeld: () => unknown;
  small?: boolean;
}

/** For what must not go wrong by a stray touch: a short press does nothing, held for a second it acts. */
export function HoldAction({ children, onHeld, small }: Props) {
  const held = useSignal(false);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const release = () => {
    clearTimeout(timer.current);
    held.value = false;
  };
  const press = () => {
    if (held.value) return;
    held.value = true;
    timer.current = setTimeout(() => {
      held.value = false;
      swallowRelease();
      onHeld();
    }, holdFor);
  };
  useEffect(() => release, []);
  const button = useRef<HTMLButtonElement>(null);
  const latest = useRef({ down: press, up: release });
  latest.current = { down: press, up: release };
  useEffect(() => {
    if (small) return undefined;
    return claimMainKey({
      down: () => latest.current.down(),
      up: () => latest.current.up(),
      place: () => button.current,
    });
  }, [small]);
  const isPress = (event: KeyboardEvent) => event.key === 'Enter' || event.key === ' ';
  return (
    <button
      ref={button}
      type="button"
      class={small ? 'hold hold-small' : 'hold'}
      data-held={held.value}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        press();
      }}
      onPointerUp={release}
      onPointerCancel={release}
      onContextMenu={(event) => event.preventDefault()}
      onKeyDown={(event) => isPress(event) && press()}
      onKeyUp={(event) => isPress(event) && release()}
      onBlur={release}
    >
      <span class="hold-fill" aria-hidden="true" />
      <span class="hold-label">
        {children} <span class="visually-hidden">(press and hold for one second)</span>
      </span>
    </button>
  );
}
