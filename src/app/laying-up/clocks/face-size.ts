import { digitHeight, readableFrom } from '#calc';

/** A phone's CSS px is about 1/160 in, m */
const px = 0.0254 / 160;

/** Our boldest figures as shares of their font size: measured in the font that comes with the app. */
const digit = { height: 0.672, width: 0.632, colon: 0.3, line: 0.74 };

/** Beside stacked figures stands their unit, px */
const unitWidth = 42;

/** Where a clock is to be read from, m */
export const acrossTheShop = 4;

/** The digits a clock shows to the shop: two figures, and what they count. */
export interface FarFigure {
  parts: readonly [string, string];
  units: readonly [string, string];
}

/** `13:42`; above an hour the seconds would only take room. */
export function farFigure(left: number): FarFigure {
  const seconds = Math.abs(Math.ceil(left));
  const two = (n: number) => String(Math.floor(n)).padStart(2, '0');
  const minutes = Math.floor(seconds / 60);
  if (minutes < 60) return { parts: [String(minutes), two(seconds % 60)], units: ['min', 's'] };
  return { parts: [String(Math.floor(minutes / 60)), two(minutes % 60)], units: ['h', 'min'] };
}

export interface FaceSize {
  /** px */
  fontSize: number;
  /** One figure above the other: on an upright phone they get twice as big. */
  stacked: boolean;
  /** Whether it is read across the shop, and else from how far, m */
  farEnough: boolean;
  from: number;
}

/** The biggest figures that fit a box of so many px; where several share the screen, their units stand above them. */
export function faceSize(
  { parts }: FarFigure,
  room: { width: number; height: number },
  beside = unitWidth,
): FaceSize {
  const [most, digits] = [Math.max(2, ...parts.map((p) => p.length)), parts.join('').length];
  const oneLine = Math.min(
    (room.width - beside) / (Math.max(digits, 4) * digit.width + digit.colon),
    room.height / digit.line,
  );
  const two = Math.min((room.width - beside) / (most * digit.width), room.height / (2 * digit.line));
  const fontSize = Math.max(12, Math.floor(Math.max(oneLine, two)));
  const height = fontSize * digit.height * px;
  return {
    fontSize,
    stacked: two > oneLine,
    farEnough: height >= digitHeight({ distance: acrossTheShop }),
    from: readableFrom({ height }),
  };
}

interface Screen {
  width: number;
  height: number;
}

/** Turned on its side, a phone has no height for keys below the figures. */
export const isLow = ({ width, height }: Screen) => width > height && height <= 480;

/** Room for the figures of a clock that has the screen to itself, px. Its words and keys take the rest. */
export function roomForOne(screen: Screen): Screen {
  const { width, height } = screen;
  if (isLow(screen)) return { width: width - Math.max(216, 0.4 * width) - 40, height: height - 20 };
  const wide = Math.min(width, 720) - 24;
  return { width: wide, height: Math.min(Math.max(280, height - 440), 0.8 * wide + 60) };
}

/** How two to four clocks share the screen: side by side where it is low, else one above the other. */
export function shared(
  screen: Screen,
  clocks: number,
  /** Taken by a line above them, px */
  above = 0,
): { columns: number; room: Screen } {
  const { width, height } = screen;
  const low = isLow(screen);
  const columns = !low ? 1 : clocks > 3 ? 2 : clocks;
  const rows = Math.ceil(clocks / columns);
  const keys = low ? { beside: 128, below: 0 } : { beside: 0, below: 190 };
  const tile = {
    width: (Math.min(width, low ? width : 720) - 24 - keys.beside - 8 * (columns - 1)) / columns,
    height: (height - 16 - above - keys.below - 8 * (rows - 1)) / rows,
  };
  const words = 62;
  // One in its turn has its words beside it on its side, and upright the line that says whose turn it is below it.
  if (clocks === 1) {
    const room = low
      ? { width: tile.width - 174, height: tile.height - 14 }
      : { width: tile.width - 24, height: tile.height - words - 20 };
    return { columns, room };
  }
  return { columns, room: { width: tile.width - 24, height: Math.max(44, tile.height - words) } };
}

/** How many of so many clocks are shown at once, so that each is read across the shop; at least one. */
export function sharedAtOnce(screen: Screen, figures: readonly FarFigure[], above = 0): number {
  for (let count = Math.min(figures.length, 4); count > 1; count--) {
    const { room } = shared(screen, count, above);
    if (figures.every((figure) => faceSize(figure, room, 0).farEnough)) return count;
  }
  return 1;
}
