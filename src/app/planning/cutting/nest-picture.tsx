import { useWidth } from '#app/parts/use-width.ts';
import { linear, type Scale } from '#app/planning/wall/pictures/scale.ts';
import { outlinePath } from '#app/planning/wall/pictures/thin-line.ts';
import type { Point } from '#calc';
import { bareDimension, dimension } from './dimensions.ts';
import type { PlacedCut } from './marks-on-roll.ts';
import { placeLabels, type Wanted } from './place-labels.ts';

interface Props {
  placed: readonly PlacedCut[];
  /** m */
  rollWidth: number;
  length: number;
  /** Not used along each side, m */
  selvage: number;
  /** Said instead of the picture. */
  label: string;
}

const pad = { left: 52, right: 10, top: 24, bottom: 46 };
/** Taller than this a picture is scrolled past rather than read, px */
const tallest = 1600;
/** Narrower than this a roll shows nothing, px */
const narrowest = 110;

function middleOf(outline: readonly Point[]): Point {
  const sum = outline.reduce((s, p) => ({ x: s.x + p.x, y: s.y + p.y }), { x: 0, y: 0 });
  return { x: sum.x / outline.length, y: sum.y / outline.length };
}

function scaleOf(width: number, rollWidth: number, length: number): number {
  const full = (width - pad.left - pad.right) / rollWidth;
  return Math.min(full, Math.max(tallest / length, narrowest / rollWidth));
}

/** Along the roll in the gutter, numbers of the pieces in them, distances from the selvage at their marks. */
function labelsFor({ placed }: Props, px: (along: number) => number, py: (across: number) => number) {
  const names = placed.map(({ cut, outline }): Wanted => {
    const middle = middleOf(outline);
    const ends = outline.map((p) => ({
      x: middle.x + 0.5 * (p.x - middle.x),
      y: middle.y + 0.5 * (p.y - middle.y),
    }));
    return { text: cut.label, size: 17, places: [middle, ...ends].map((p) => ({ x: py(p.y), y: px(p.x) })) };
  });
  const marks = placed.flatMap((p) => p.marks);
  const along = marks.map(
    (m): Wanted => ({
      text: bareDimension(m.along),
      size: 12,
      places: [{ x: pad.left - 28, y: px(m.along) }],
    }),
  );
  const spots = marks.map((m) => ({ text: bareDimension(m.across), x: py(m.across), y: px(m.along) }));
  const across = [...spots]
    .sort((a, b) => a.x - b.x)
    .map(({ text, x, y }): Wanted => {
      const aside = 6 + 4 * text.length;
      // What has a neighbor on its right stands on its left, or each would be read as the other's.
      const crowded = spots.some((o) => o.x > x + 1 && o.x - x < 2 * aside && Math.abs(o.y - y) < 20);
      const sides = crowded ? [-aside, aside] : [aside, -aside];
      return {
        text,
        size: 12,
        places: [-10, 10].flatMap((dy) => sides.map((dx) => ({ x: x + dx, y: y + dy }))),
      };
    });
  return { names, along, across };
}

interface PieceProps {
  one: PlacedCut;
  /** Where the selvage is that is measured from, px */
  left: number;
  px: Scale;
  py: Scale;
}

function Piece({ one: { cut, outline, marks }, left, px, py }: PieceProps) {
  return (
    <>
      <path
        class={`nest-piece nest-piece-${cut.of.number % 3}`}
        d={outlinePath(
          outline.map((p) => ({ x: p.y, y: p.x })),
          py,
          px,
        )}
      />
      {marks.map((m, i) => (
        <g key={i}>
          <path class="nest-leader" d={`M${left} ${px(m.along)}H${py(m.across)}`} />
          <circle class="nest-mark" cx={py(m.across)} cy={px(m.along)} r="2.5" />
        </g>
      ))}
    </>
  );
}

/** The roll as it lies before whoever stands at its cut end: selvages upright, cut end at the foot. */
export function NestPicture(props: Props) {
  const { placed, rollWidth, length, selvage, label } = props;
  const { ref, width } = useWidth<HTMLDivElement>();
  const scale = scaleOf(width.value, rollWidth, length);
  const height = length * scale + pad.top + pad.bottom;
  const foot = height - pad.bottom;
  const px = linear(0, length, foot, pad.top);
  const py = linear(0, rollWidth, pad.left, pad.left + rollWidth * scale);
  const [left, right] = [py(0), py(rollWidth)];
  const { names, along, across } = labelsFor(props, px, py);
  const ends: Wanted[] = [
    { text: `Cut at ${dimension(length)}`, size: 12, places: [{ x: (left + right) / 2, y: 10 }] },
    {
      text: `${dimension(rollWidth)} selvage to selvage`,
      size: 12,
      places: [{ x: Math.max(90, (left + right) / 2), y: foot + 34 }],
    },
    { text: '0', size: 12, places: [{ x: pad.left - 28, y: foot }] },
  ];
  const labels = placeLabels([...names, ...ends, ...along, ...across], { width: width.value, height });
  return (
    <div ref={ref}>
      <svg class="nest" width="100%" height={height} role="img" aria-label={label}>
        <rect class="nest-roll" x={left} y={pad.top} width={right - left} height={foot - pad.top} />
        <path
          class="nest-selvage"
          d={`M${py(selvage)} ${pad.top}V${foot}M${py(rollWidth - selvage)} ${pad.top}V${foot}`}
        />
        {placed.map((one) => (
          <Piece key={`${one.placement.id} ${one.placement.copy}`} one={one} left={left} px={px} py={py} />
        ))}
        <path class="nest-edge" d={`M${left} ${pad.top}V${foot}H${right}V${pad.top}`} />
        <path class="nest-cut" d={`M${left} ${pad.top}H${right}`} />
        <path
          class="nest-dimension"
          d={`M${left} ${foot + 20}H${right}M${left} ${foot + 14}v12M${right} ${foot + 14}v12`}
        />
        {labels.map((l, i) => (
          <text key={i} class={l.size > 12 ? 'nest-name' : undefined} x={l.x} y={l.y} font-size={l.size}>
            {l.text}
          </text>
        ))}
      </svg>
    </div>
  );
}
