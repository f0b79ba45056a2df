import { useId } from 'preact/hooks';
import { HatchLines } from '#app/parts/hatch.tsx';
import { useWidth } from '#app/parts/use-width.ts';
import { AlongAxis } from '#app/planning/wall/pictures/along-axis.tsx';
import { linear, type Scale } from '#app/planning/wall/pictures/scale.ts';
import { linePath } from '#app/planning/wall/pictures/thin-line.ts';
import { show } from '#app/state/show.ts';
import type { BeamSolution } from '#calc';
import type { Setup } from './setup.ts';
import { at, layWords, letters } from './words.ts';
import '#app/planning/wall/pictures/pictures.css';
import './proof.css';

interface Props {
  length: number;
  setup: Setup;
  /** Under one kilogram; without it the tube is drawn as it lies. */
  bent: BeamSolution | undefined;
}

const pad = { left: 16, right: 16 };
/** px: the tube before the weight, the floor, and how far it is drawn to bend at most */
const lies = 62;
const floor = 176;
const drawnBend = 34;
const half = 5;

interface Drawn {
  x: Scale;
  y: (place: number) => number;
  path: string;
}

function drawn({ length, bent }: Props, width: number): Drawn {
  const x = linear(0, length, pad.left, width - pad.right);
  if (!bent) return { x, y: () => lies, path: linePath([x(0), x(length)], [lies, lies]) };
  const most = bent.deflection.reduce((far, d) => Math.max(far, Math.abs(d)), 1e-12);
  const ys = bent.deflection.map((d) => lies + (d / most) * drawnBend);
  const y = (place: number) => {
    let nearest = 0;
    bent.at.forEach((a, i) => {
      if (Math.abs(a - place) < Math.abs((bent.at[nearest] ?? 0) - place)) nearest = i;
    });
    return ys[nearest] ?? lies;
  };
  return { x, y, path: linePath(bent.at.map(x), ys) };
}

function Rest({ x }: { x: number }) {
  return <path class="proof-rest" d={`M${x} ${lies + half}L${x - 11} ${floor}H${x + 11}Z`} />;
}

function Clamp({ from, to, hatch }: { from: number; to: number; hatch: string }) {
  const box = { x: from, width: Math.max(10, to - from), y: lies - 17, height: 34 };
  return (
    <>
      <path class="proof-rest" d={`M${(from + to) / 2} ${lies + 17}V${floor}`} />
      <rect class="proof-clamp" {...box} />
      <rect {...box} fill={`url(#${hatch})`} />
    </>
  );
}

function Dial({ x, y, letter }: { x: number; y: number; letter: string }) {
  const top = 22;
  return (
    <>
      <path class="proof-stem" d={`M${x} ${top + 12}V${y - half}`} />
      <circle class="proof-dial" cx={x} cy={top} r={12} />
      <text class="picture-number" x={x} y={top + 5} text-anchor="middle">
        {letter}
      </text>
    </>
  );
}

/** The tube as the bench sees it: what holds it, the weight a hand above the floor, and each dial with its letter. */
export function BenchPicture(props: Props) {
  const { length, setup } = props;
  const { ref, width } = useWidth<HTMLDivElement>();
  const hatch = useId().replace(/[^\w-]/g, '');
  const { x, y, path } = drawn(props, width.value);
  const dials = [...setup.dials].sort((a, b) => a - b);
  const weight = { x: x(setup.hangAt), y: y(setup.hangAt) };
  const says = `${layWords(setup)}, ${show(setup.mass, 'hungMass')} hung at ${at(setup.hangAt)}, read at ${dials.map(at).join(', ')}`;
  return (
    <div ref={ref} class="picture">
      <svg width={width.value} height={floor + 34} role="img" aria-label={says}>
        <HatchLines id={hatch} class="proof-hatch" />
        {setup.held === 'rests' ? (
          <>
            <Rest x={x(setup.from)} />
            <Rest x={x(setup.to)} />
          </>
        ) : setup.held === 'clamp0' ? (
          <Clamp from={x(0) - 8} to={x(setup.from)} hatch={hatch} />
        ) : (
          <Clamp from={x(setup.to)} to={x(length) + 8} hatch={hatch} />
        )}
        <path class="picture-dimension" d={`M${x(0)} ${lies}H${x(length)}`} />
        <path class="proof-tube" d={path} />
        <path class="proof-bore" d={path} />
        <path class="proof-cord" d={`M${weight.x} ${weight.y + half}V134`} />
        <path
          class="proof-weight"
          d={`M${weight.x - 15} 134H${weight.x + 15}L${weight.x + 20} 160H${weight.x - 20}Z`}
        />
        {dials.map((place, i) => (
          <Dial key={place} x={x(place)} y={y(place)} letter={letters[i] ?? ''} />
        ))}
        <path class="proof-floor" d={`M0 ${floor}H${width.value}`} />
        <AlongAxis x={x} length={length} y={floor + 8} width={width.value} />
      </svg>
    </div>
  );
}
