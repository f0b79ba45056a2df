import type { Signal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';

export interface Spot {
  x: number;
  y: number;
}

interface Grip extends Spot {
  /** Where the thumb went down. */
  downX: number;
  downY: number;
  index: number;
  gesture: string;
}

interface Options {
  /** The handle under the thumb. */
  held: Signal<number | undefined>;
  handles: readonly Spot[];
  chosen: number;
  onChoose: (index: number) => void;
  /** Called once a frame while a thumb moves; undefined for a direction it has not moved in yet. */
  onMove: (index: number, to: { x: number | undefined; y: number | undefined }, gesture: string) => void;
}

/** A gloved thumb covers this much, px */
const reach = 34;
/** A thumb that only taps trembles less than this, px */
const still = 9;

/** The handle under a thumb; of several the chosen one, else the nearest. */
export function handleAt(handles: readonly Spot[], at: Spot, chosen: number): number | undefined {
  const away = handles.map((h) => Math.hypot(h.x - at.x, h.y - at.y));
  const near = away.map((d, i) => ({ d, i })).filter(({ d }) => d <= reach);
  if (near.some(({ d, i }) => i === chosen && d <= reach / 2)) return chosen;
  return near.sort((a, b) => a.d - b.d)[0]?.i;
}

/** Lets a thumb move handles of a picture. Each direction starts to count once it is meant. */
export function useStationDrag({ held, handles, chosen, onChoose, onMove }: Options) {
  const grip = useRef<Grip | undefined>(undefined);
  const moved = useRef({ x: false, y: false });
  const frame = useRef(0);
  const latest = useRef({ handles, chosen, onChoose, onMove });
  latest.current = { handles, chosen, onChoose, onMove };
  useEffect(() => () => cancelAnimationFrame(frame.current), []);

  const box = useRef<DOMRect | undefined>(undefined);
  const spotOf = (picture: Element, at: { clientX: number; clientY: number }): Spot => {
    // Asked for once a drag: every asking lays the whole page out.
    box.current ??= picture.getBoundingClientRect();
    return { x: at.clientX - box.current.left, y: at.clientY - box.current.top };
  };
  const touched = (event: TouchEvent) => {
    const [touch] = event.touches;
    box.current = undefined;
    const at = touch && spotOf(event.currentTarget as Element, touch);
    // A thumb on a handle must not scroll the page away under itself.
    if (at && handleAt(latest.current.handles, at, latest.current.chosen) !== undefined)
      event.preventDefault();
  };
  const down = (event: PointerEvent) => {
    box.current = undefined;
    const at = spotOf(event.currentTarget as Element, event);
    const index = handleAt(latest.current.handles, at, latest.current.chosen);
    const handle = index === undefined ? undefined : latest.current.handles[index];
    if (index === undefined || !handle) return;
    event.preventDefault();
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    grip.current = { ...handle, downX: at.x, downY: at.y, index, gesture: `drag ${event.timeStamp}` };
    moved.current = { x: false, y: false };
    held.value = index;
    latest.current.onChoose(index);
  };
  const move = (event: PointerEvent) => {
    const start = grip.current;
    if (!start) return;
    const at = spotOf(event.currentTarget as Element, event);
    const [dx, dy] = [at.x - start.downX, at.y - start.downY];
    moved.current = {
      x: moved.current.x || Math.abs(dx) > still,
      y: moved.current.y || Math.abs(dy) > still,
    };
    const { x, y } = moved.current;
    if (!x && !y) return;
    cancelAnimationFrame(frame.current);
    frame.current = requestAnimationFrame(() => {
      const to = { x: x ? start.x + dx : undefined, y: y ? start.y + dy : undefined };
      latest.current.onMove(start.index, to, start.gesture);
    });
  };
  const up = () => {
    grip.current = undefined;
    held.value = undefined;
  };
  return {
    onTouchStart: touched,
    onPointerDown: down,
    onPointerMove: move,
    onPointerUp: up,
    onPointerCancel: up,
  };
}
