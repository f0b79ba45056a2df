/** A phone's CSS px is about 1/160 in. */
export const pxPerMm = 160 / 25.4;

export interface Box {
  left: number;
  right: number;
  top: number;
  bottom: number;
}

/** A control as it lies on the screen, px. */
export interface Control extends Box {
  name: string;
  kind: 'key' | 'main' | 'hold' | 'tab' | 'bench';
  /** Which of the bars holds it, when it does not scroll. */
  bar: number | undefined;
}

/** A screen that stands at its top. */
export interface Look {
  width: number;
  height: number;
  /** px that can be scrolled */
  further: number;
  /** What stays in its place while the rest scrolls. */
  bars: Box[];
  controls: Control[];
}

export interface Landing {
  wrong: number;
  missed: number;
}

/** How far from its aim a touch is followed, in standard deviations. */
const reach = 5;

/** px; a gap of 8 px is two of them. */
const cell = 4;

const moved = (box: Box, up: number): Box => ({ ...box, top: box.top - up, bottom: box.bottom - up });

/** How far a thumb scrolls until a control lies in the middle of what the bars leave free. */
function scrolledTo({ bars, height, further }: Look, control: Control): number {
  if (control.bar !== undefined) return 0;
  const upper = Math.max(0, ...bars.filter((b) => b.top <= 1 && b.bottom < height / 2).map((b) => b.bottom));
  const lower = Math.min(height, ...bars.filter((b) => b.top > height / 3).map((b) => b.top));
  if (control.top >= upper && control.bottom <= lower) return 0;
  return Math.min(further, Math.max(0, (control.top + control.bottom) / 2 - (upper + lower) / 2));
}

interface HitMap {
  columns: number;
  rows: number;
  /** Row by row, the index of a control or -1 */
  hits: Int16Array;
}

/** What a touch on each cell presses: bars lie over what scrolls. */
function hitMap({ width, height, bars, controls }: Look, up: number): HitMap {
  const [columns, rows] = [Math.ceil(width / cell), Math.ceil(height / cell)];
  const hits = new Int16Array(columns * rows).fill(-1);
  const fill = ({ left, right, top, bottom }: Box, value: number) => {
    const [from, to] = [Math.max(0, Math.round(left / cell)), Math.min(columns, Math.round(right / cell))];
    for (let y = Math.max(0, Math.round(top / cell)); y < Math.min(rows, Math.round(bottom / cell)); y++) {
      if (to > from) hits.fill(value, y * columns + from, y * columns + to);
    }
  };
  controls.forEach((c, i) => {
    if (c.bar === undefined) fill(moved(c, up), i);
  });
  bars.forEach((bar, at) => {
    fill(bar, -1);
    controls.forEach((c, i) => {
      if (c.bar === at) fill(c, i);
    });
  });
  return { columns, rows, hits };
}

/** The middle of what can be seen of a control, px; nothing when none of it can. */
function middleOf({ columns, hits }: HitMap, control: number): { x: number; y: number } | undefined {
  let [left, right, top, bottom] = [columns, -1, -1, -1];
  hits.forEach((hit, i) => {
    if (hit !== control) return;
    const [x, y] = [i % columns, Math.floor(i / columns)];
    left = Math.min(left, x);
    right = Math.max(right, x);
    if (top < 0) top = y;
    bottom = y;
  });
  if (bottom < 0) return undefined;
  return { x: ((left + right + 1) / 2) * cell, y: ((top + bottom + 1) / 2) * cell };
}

/**
 * A gloved thumb: a contact of 20 mm whose center, which is all that a screen tells, lies off its aim by a
 * normal error on each axis. Summed over the cells of the map, so that it comes out the same each time.
 */
export function landingsOf(look: Look, control: number, sigmaMm: number): Landing | undefined {
  const meant = look.controls[control];
  if (!meant) return undefined;
  const map = hitMap(look, scrolledTo(look, meant));
  const aim = middleOf(map, control);
  if (!aim) return undefined;
  const sigma = sigmaMm * pxPerMm;
  const across = spread(aim.x, sigma, map.columns);
  const down = spread(aim.y, sigma, map.rows);
  let [right, wrong] = [0, 0];
  for (const [y, ofRow] of down) {
    for (const [x, ofColumn] of across) {
      const hit = map.hits[y * map.columns + x] ?? -1;
      if (hit === control) right += ofRow * ofColumn;
      else if (hit >= 0) wrong += ofRow * ofColumn;
    }
  }
  return { wrong, missed: Math.max(0, 1 - right - wrong) };
}

/** The share of touches in each column of cells, or in each row. */
function spread(aim: number, sigma: number, cells: number): [number, number][] {
  const first = Math.max(0, Math.floor((aim - reach * sigma) / cell));
  const last = Math.min(cells - 1, Math.ceil((aim + reach * sigma) / cell));
  const shares: [number, number][] = [];
  for (let i = first; i <= last; i++) {
    shares.push([i, below((i + 1) * cell, aim, sigma) - below(i * cell, aim, sigma)]);
  }
  return shares;
}

const below = (x: number, mean: number, sigma: number) => (1 + erf((x - mean) / (sigma * Math.SQRT2))) / 2;

/** Abramowitz and Stegun, Handbook of Mathematical Functions, 7.1.26: good to 1.5e-7. */
function erf(x: number): number {
  const t = 1 / (1 + 0.3275911 * Math.abs(x));
  const poly =
    t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
  return Math.sign(x) * (1 - poly * Math.exp(-x * x));
}
