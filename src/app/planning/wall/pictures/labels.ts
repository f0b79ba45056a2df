import { textWidth } from './scale.ts';

export interface Label {
  /** Where it points, px */
  x: number;
  text: string;
  /** The heavier one stays when two do not fit. */
  weight?: number;
}

export interface Placed extends Label {
  /** Its left edge and width, px */
  left: number;
  width: number;
  /** 0 is nearest to what it points at. */
  row: number;
}

interface Room {
  from: number;
  to: number;
  rows: number;
  size?: number;
  gap?: number;
}

/**
 * Puts labels where none lies on another or outside: on the first row with room, each as near to its place as
 * the edges let it. Those that find no room are left out, lightest first.
 */
export function fitLabels(labels: readonly Label[], { from, to, rows, size = 12, gap = 6 }: Room): Placed[] {
  const placed: Placed[] = [];
  const clear = (left: number, width: number, row: number) =>
    placed.every((p) => p.row !== row || left + width + gap <= p.left || p.left + p.width + gap <= left);
  const heavyFirst = [...labels].sort((a, b) => (b.weight ?? 0) - (a.weight ?? 0));
  for (const label of heavyFirst) {
    const width = textWidth(label.text, size);
    if (width > to - from) continue;
    const left = Math.min(Math.max(from, label.x - width / 2), to - width);
    for (let row = 0; row < rows; row += 1) {
      if (!clear(left, width, row)) continue;
      placed.push({ ...label, left, width, row });
      break;
    }
  }
  return placed.sort((a, b) => a.left - b.left);
}
