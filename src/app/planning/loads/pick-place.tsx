import { useRef } from 'preact/hooks';
import { place } from './load-words.ts';
import '#app/planning/wall/wall.css';

interface Props {
  length: number;
  at: number;
  /** px from the left and right edge to the ends of the tube in the picture above. */
  onPick: (at: number) => void;
}

/** The number of the station nearest to a place; of two at one place the first. */
export function nearest(at: ArrayLike<number>, to: number): number {
  let best = 0;
  for (let i = 1; i < at.length; i += 1) {
    if (Math.abs((at[i] ?? 0) - to) < Math.abs((at[best] ?? 0) - to) - 1e-12) best = i;
  }
  return best;
}

/** A long slide for the thumb, under a picture along the tube. */
export function PlaceSlide({ length, at, onPick }: Props) {
  return (
    <input
      class="along-slide"
      type="range"
      aria-label="Place along the tube"
      aria-valuetext={place(at)}
      min={0}
      max={length}
      step={length / 400}
      value={at}
      onInput={(event) => onPick(Number(event.currentTarget.value))}
    />
  );
}

interface TouchOptions {
  length: number;
  /** px where the tube begins and ends in the picture */
  left: number;
  right: number;
  onPick: (at: number) => void;
}

/** Lets a thumb on a picture pick the place it is over. */
export function usePlaceTouch({ length, left, right, onPick }: TouchOptions) {
  const down = useRef(false);
  const pick = (event: PointerEvent) => {
    const box = (event.currentTarget as Element).getBoundingClientRect();
    const share = (event.clientX - box.left - left) / Math.max(1, right - left);
    onPick(Math.min(1, Math.max(0, share)) * length);
  };
  const up = () => {
    down.current = false;
  };
  return {
    onPointerDown: (event: PointerEvent) => {
      down.current = true;
      pick(event);
    },
    onPointerMove: (event: PointerEvent) => down.current && pick(event),
    onPointerUp: up,
    onPointerCancel: up,
  };
}
