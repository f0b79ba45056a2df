import { computed, signal } from '@preact/signals';

/** ms */
export const wipesFor = 15_000;

/** A finger that is still down as the lock ends must not press what comes in its place, ms */
const settles = 350;

/** Counted by a clock that nobody can set back, ms. */
const until = signal<number | undefined>(undefined);
const tick = signal(0);

/** Seconds that the screen ignores touches still. */
export const secondsToWipe = computed(() =>
  until.value === undefined ? undefined : Math.max(1, Math.ceil((until.value - tick.value) / 1000)),
);

const touches = [
  'pointerdown',
  'pointerup',
  'pointermove',
  'mousedown',
  'mouseup',
  'click',
  'dblclick',
  'contextmenu',
  'touchstart',
  'touchmove',
  'touchend',
  'wheel',
  'keydown',
  'keyup',
];

const down = new Set<number>();
let upAt = Number.NEGATIVE_INFINITY;

function swallow(event: Event): void {
  if (event.type === 'pointerdown') down.add((event as PointerEvent).pointerId);
  if (event.type === 'pointerup') letGo(event);
  if (event.cancelable) event.preventDefault();
  event.stopImmediatePropagation();
}

function letGo(event: Event): void {
  down.delete((event as PointerEvent).pointerId);
  upAt = performance.now();
}

function freeTouches(): void {
  for (const type of touches) removeEventListener(type, swallow, true);
  removeEventListener('pointercancel', letGo, true);
}

/** The whole screen ignores touches and keys until the time is up, and then ends by itself. */
export function startWiping(): void {
  if (until.value !== undefined) return;
  const end = performance.now() + wipesFor;
  tick.value = performance.now();
  until.value = end;
  down.clear();
  for (const type of touches) addEventListener(type, swallow, { capture: true, passive: false });
  addEventListener('pointercancel', letGo, true);
  const counting = setInterval(() => {
    const at = performance.now();
    tick.value = at;
    if (at < end) return;
    until.value = undefined;
    const settled = down.size === 0 && at - upAt > settles;
    // A phone may lose the news that a finger went up: nothing may hold the screen for ever.
    if (!settled && at < end + 3000) return;
    clearInterval(counting);
    freeTouches();
  }, 100);
}
