import { now } from '#app/state/now.ts';
import { FaceWord } from './clock-face.tsx';
import { clockKey, isStale, type RunningClock } from './clock-list.ts';
import { figureFor, toneFor } from './clock-words.ts';
import { faceSize, farFigure, shared, sharedAtOnce } from './face-size.ts';
import { FarDigits } from './far-figure.tsx';
import { useScreenSize } from './use-screen-size.ts';
import './clock-tiles.css';

/** Long enough to be found and read from across the shop, s */
const turnsAfter = 6;

interface Props {
  clocks: readonly RunningClock[];
  /** Taken by a line above them, px */
  above: number;
  onChoose: (clock: RunningClock) => void;
}

/** Taken by the line that says which of them are shown, px */
const lineHeight = 28;

interface Page {
  shown: readonly RunningClock[];
  /** Taken above the tiles, px */
  above: number;
  says?: string;
}

/** As many at once as are read across the shop; the others come in turn. */
function pageOf({ clocks, above }: Props, screen: { width: number; height: number }): Page {
  const figures = clocks.map((c) => farFigure(c.left));
  if (sharedAtOnce(screen, figures, above) === clocks.length) return { shown: clocks, above };
  const atOnce = sharedAtOnce(screen, figures, above + lineHeight);
  const line = atOnce > 1 ? lineHeight : 0;
  const pages = Math.ceil(clocks.length / atOnce);
  const second = Math.floor(now.value / 1000);
  const first = (Math.floor(second / turnsAfter) % pages) * atOnce;
  const shown = clocks.slice(first, first + atOnce);
  const last = first + shown.length;
  const which = shown.length > 1 ? `Clocks ${first + 1} and ${last}` : `Clock ${last}`;
  const next = turnsAfter - (second % turnsAfter);
  return { shown, above: above + line, says: `${which} of ${clocks.length}, next in ${next} s` };
}

/** Clocks share the screen while each can be read across the shop; a tap brings one to the front. */
export function ClockTiles(props: Props) {
  const screen = useScreenSize().value;
  const { shown, above, says } = pageOf(props, screen);
  const { columns, room } = shared(screen, shown.length, above);
  return (
    <>
      {says && shown.length > 1 && <p class="clock-turns">{says}</p>}
      <div
        class={shown.length > 1 ? 'clock-tiles' : 'clock-tiles clock-tiles-one'}
        style={{ gridTemplateColumns: `repeat(${columns}, minmax(0, 1fr))` }}
      >
        {shown.map((clock) => {
          const figure = farFigure(clock.left);
          return (
            <button
              key={clockKey(clock)}
              type="button"
              class={`clock-tile clock-tile-${toneFor(clock)}`}
              onClick={() => props.onChoose(clock)}
            >
              <span class="clock-tile-name">
                <span>
                  <b>{clock.name}</b> {clock.of && <span>{clock.of}</span>}
                </span>
                <span class="clock-tile-units" aria-hidden="true">
                  {figure.units.join(', ')}
                </span>
              </span>
              {isStale(clock) ? (
                <span class="clock-face-long">{figureFor(clock).figure}</span>
              ) : (
                <FarDigits left={clock.left} size={faceSize(figure, room, 0)} bare />
              )}
              <FaceWord clock={clock} />
              {says && shown.length === 1 && <span class="clock-turns">{says}</span>}
            </button>
          );
        })}
      </div>
    </>
  );
}
