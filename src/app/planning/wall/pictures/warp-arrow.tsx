interface Props {
  /** Warp to datum edge, rad, toward the side the cloth is rolled to */
  angle: number;
  /** Middle, px */
  x: number;
  y: number;
}

const half = 22;

/** The arrow that is drawn on the cloth along its warp, at its true angle. */
export function WarpArrow({ angle, x, y }: Props) {
  const degrees = (angle * 180) / Math.PI;
  const upright = Math.abs(Math.sin(angle)) * half;
  const across = Math.abs(Math.cos(angle)) * half;
  return (
    <g class="warp-arrow">
      <path
        class="picture-seam"
        transform={`translate(${x} ${y + upright}) rotate(${degrees})`}
        d={`M${-half} 0H${half}M${half - 7} -5L${half} 0L${half - 7} 5`}
      />
      <text class="picture-over" x={x + across + 6} y={y + upright + 4}>
        warp
      </text>
    </g>
  );
}
