import { textWidth } from '#app/planning/wall/pictures/scale.ts';

export interface Wanted {
  text: string;
  /** px */
  size: number;
  /** Where its middle may come to lie, px, the best place first. */
  places: readonly { x: number; y: number }[];
}

export interface LabelAt {
  text: string;
  size: number;
  /** Of its middle, px */
  x: number;
  y: number;
}

interface Box {
  left: number;
  right: number;
  top: number;
  bottom: number;
}

const gap = 3;

function boxOf({ text, size, x, y }: LabelAt): Box {
  const [half, tall] = [textWidth(text, size) / 2 + gap, size * 0.62 + gap / 2];
  return { left: x - half, right: x + half, top: y - tall, bottom: y + tall };
}

const overlaps = (a: Box, b: Box) =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** Puts labels where none lies on another or outside, the first ones first. What finds no place is left out. */
export function placeLabels(wanted: readonly Wanted[], room: { width: number; height: number }): LabelAt[] {
  const placed: LabelAt[] = [];
  const taken: Box[] = [];
  for (const { text, size, places } of wanted) {
    for (const place of places) {
      const label = { text, size, ...place };
      const box = boxOf(label);
      const inside = box.left >= 0 && box.right <= room.width && box.top >= 0 && box.bottom <= room.height;
      if (!inside || taken.some((t) => overlaps(t, box))) continue;
      placed.push(label);
      taken.push(box);
      break;
    }
  }
  return placed;
}
