import { FaceWord } from './clock-face.tsx';
import { clockKey, isStale, type RunningClock } from './clock-list.ts';
import { figureFor, toneFor } from './clock-words.ts';
import { faceSize, farFigure, shared } from './face-size.ts';
import { FarDigits } from './far-figure.tsx';
import { useScreenSize } from './use-screen-size.ts';

/** More would be too small to be read from afar. */
export const tilesAtMost = 4;

interface Props {
  clocks: readonly RunningClock[];
  /** Taken by a line above them, px */
  above: number;
  onChoose: (clock: RunningClock) => void;
}

/** Two to four clocks share the screen; a tap brings one to the front. */
export function ClockTiles({ clocks, above, onChoose }: Props) {
  const { columns, room } = shared(useScreenSize().value, clocks.length, above);
  return (
    <div class="clock-tiles" style={{ gridTemplateColumns: `repeat(${columns}, minmax(0, 1fr))` }}>
      {clocks.map((clock) => (
        <button
          key={clockKey(clock)}
          type="button"
          class={`clock-tile clock-tile-${toneFor(clock)}`}
          onClick={() => onChoose(clock)}
        >
          <span class="clock-tile-name">
            <b>{clock.name}</b> {clock.of && <span>{clock.of}</span>}
          </span>
          {isStale(clock) ? (
            <span class="clock-face-long">{figureFor(clock).figure}</span>
          ) : (
            <FarDigits left={clock.left} size={faceSize(farFigure(clock.left), room)} />
          )}
          <FaceWord clock={clock} />
        </button>
      ))}
    </div>
  );
}
