import { HatchLines } from '#app/parts/hatch.tsx';
import { useWidth } from '#app/parts/use-width.ts';
import { show } from '#app/state/show.ts';
import type { OutsideAt } from '#calc';
import '#app/planning/wall/pictures/pictures.css';
import './tape.css';

interface Props {
  outside: readonly OutsideAt[];
  width: number;
  advance: number;
}

const pad = { left: 10, right: 26, top: 30, bottom: 40 };
const tallest = 150;

/** m of tube shown: some turns, and more of them on a fat tube, so that it stays flat enough for a screen. */
function shownLength({ outside, width, advance }: Props, room: number): number {
  const fat = Math.max(...outside.map((o) => o.diameter));
  return Math.max(6 * advance + width, (fat * room) / tallest);
}

/** The first turns at end 0, true to scale: what shows of each, what the next one hides, and which way it turns. */
export function TapePicture(props: Props) {
  const { outside, width: wide, advance } = props;
  const { ref, width } = useWidth<HTMLDivElement>();
  const room = width.value - pad.left - pad.right;
  const long = shownLength(props, room);
  const px = room / long;
  const half = ((outside[0]?.diameter ?? 0) / 2) * px;
  const [top, foot] = [pad.top, pad.top + 2 * half];
  const lean = (advance / 2) * px;
  const x = (m: number) => pad.left + m * px;
  const edge = (m: number) => `M${x(m)} ${foot}L${x(m) + lean} ${top}`;
  const band = (from: number, to: number) =>
    `M${x(from)} ${foot}L${x(from) + lean} ${top}H${x(to) + lean}L${x(to)} ${foot}Z`;
  const turns = Math.max(0, Math.floor((long - advance / 2) / advance));
  const edges = Array.from({ length: turns + 1 }, (_, i) => edge(i * advance)).join('');
  const from = 2 * advance;
  const hidden = wide - advance > 1e-6;
  return (
    <div ref={ref} class="picture">
      <svg
        width={width.value}
        height={foot + pad.bottom}
        role="img"
        aria-label={`Tape ${show(wide, 'length')} wide, each turn ${show(advance, 'length')} further along`}
      >
        <HatchLines id="tape-under" class="tape-under" apart={6} turn={60} />
        <rect class="picture-ground" x={x(0)} y={top} width={room} height={2 * half} />
        <path class="picture-tone tape-turn" d={band(from, from + advance)} />
        {hidden && <path fill="url(#tape-under)" d={band(from + advance, from + wide)} />}
        <path class="picture-layer" d={edges} />
        {hidden && <path class="picture-dimension" d={edge(from + wide)} />}
        <path class="picture-outline" d={`M${x(0)} ${top}H${x(long)}M${x(0)} ${foot}H${x(long)}`} />
        <path class="picture-tick" d={`M${x(from) + lean} ${top - 6}H${x(from + wide) + lean}`} />
        <text x={x(from + wide / 2) + lean} y={top - 12} text-anchor="middle">
          one tape, {show(wide, 'length')}
        </text>
        <path class="picture-tick" d={`M${x(from)} ${foot + 7}H${x(from + advance)}`} />
        <text x={x(from + advance / 2)} y={foot + 22} text-anchor="middle">
          {show(advance, 'length')} a turn
        </text>
        <path
          class="picture-tick tape-way"
          d={`M${x(long) + 5} ${foot - 4}A10 ${half} 0 0 0 ${x(long) + 5} ${top + 4}m-3 7l3 -8l6 6`}
        />
      </svg>
      <p class="picture-words">
        The first {show(long, 'length', 0)} at end 0, true to scale.{' '}
        {hidden ? 'Hatched: what the next turn lies on. ' : ''}The arrow is the way the cloth was rolled: the
        tape turns the same way.
      </p>
    </div>
  );
}
