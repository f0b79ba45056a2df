import { type FaceSize, farFigure } from './face-size.ts';

interface Props {
  left: number;
  size: FaceSize;
  /** Its units stand elsewhere. */
  bare?: boolean;
}

/** The digits of a clock as big as they fit, in one line or one above the other. */
export function FarDigits({ left, size: { fontSize, stacked }, bare = false }: Props) {
  const { parts, units } = farFigure(left);
  const [first, second] = parts;
  return (
    <span
      class={bare ? 'clock-face-figure clock-face-bare' : 'clock-face-figure'}
      role="timer"
      aria-label={`${first} ${units[0]} ${second} ${units[1]}`}
      style={{ fontSize: `${fontSize}px` }}
    >
      {stacked ? (
        parts.map((part, i) => (
          <span key={units[i]} class="clock-face-line">
            {part}
            {!bare && <small>{units[i]}</small>}
          </span>
        ))
      ) : (
        <span class="clock-face-line">
          {first}:{second}
          {!bare && <small>{units[0]}</small>}
        </span>
      )}
    </span>
  );
}
