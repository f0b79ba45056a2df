import { type FaceSize, farFigure } from './face-size.ts';

interface Props {
  left: number;
  size: FaceSize;
}

/** The digits of a clock as big as they fit, in one line or one above the other. */
export function FarDigits({ left, size: { fontSize, stacked } }: Props) {
  const { parts, units } = farFigure(left);
  const [first, second] = parts;
  return (
    <span
      class="clock-face-figure"
      role="timer"
      aria-label={`${first} ${units[0]} ${second} ${units[1]}`}
      style={{ fontSize: `${fontSize}px` }}
    >
      {stacked ? (
        parts.map((part, i) => (
          <span key={units[i]} class="clock-face-line">
            {part}
            <small>{units[i]}</small>
          </span>
        ))
      ) : (
        <span class="clock-face-line">
          {first}:{second}
          <small>{units[0]}</small>
        </span>
      )}
    </span>
  );
}
