import { panned, type Window, zoomed } from './window.ts';

type Change = (view: Window, all: Window) => Window;

/** One finger drags the chart, two pinch it, a wheel zooms; up and down stays the page's. Returns how to stop. */
export function followFingers(element: HTMLElement, onChange: (change: Change) => void): () => void {
  const fingers = new Map<number, number>();
  element.style.touchAction = 'pan-y';
  const shareAt = (x: number) =>
    (x - element.getBoundingClientRect().left) / Math.max(1, element.clientWidth);
  const down = (event: PointerEvent) => {
    fingers.set(event.pointerId, event.clientX);
    element.setPointerCapture(event.pointerId);
  };
  const move = (event: PointerEvent) => {
    const before = fingers.get(event.pointerId);
    if (before === undefined) return;
    const other = [...fingers].find(([id]) => id !== event.pointerId)?.[1];
    fingers.set(event.pointerId, event.clientX);
    if (other === undefined) {
      const by = (before - event.clientX) / Math.max(1, element.clientWidth);
      onChange((view, all) => panned(view, by, all));
      return;
    }
    const by = Math.abs(before - other) / Math.max(10, Math.abs(event.clientX - other));
    onChange((view, all) => zoomed(view, Math.min(2, Math.max(0.5, by)), shareAt(other), all));
  };
  const up = (event: PointerEvent) => fingers.delete(event.pointerId);
  const wheel = (event: WheelEvent) => {
    event.preventDefault();
    onChange((view, all) => zoomed(view, event.deltaY > 0 ? 1.2 : 1 / 1.2, shareAt(event.clientX), all));
  };
  const listened = { pointerdown: down, pointermove: move, pointerup: up, pointercancel: up } as const;
  for (const [name, listener] of Object.entries(listened))
    element.addEventListener(name, listener as EventListener);
  element.addEventListener('wheel', wheel, { passive: false });
  return () => {
    for (const [name, listener] of Object.entries(listened)) {
      element.removeEventListener(name, listener as EventListener);
    }
    element.removeEventListener('wheel', wheel);
  };
}
