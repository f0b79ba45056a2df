import { useSticks } from '#app/parts/sticks.ts';
import { path } from '#app/router.ts';
import { late } from '#app/shell/late.ts';
import { formatClockTime } from '#shared/units/time.ts';
import { clockKey, isStale, type RunningClock } from './clock-list.ts';
import { ClockRule } from './clock-rule.tsx';
import {
  beganAt,
  clockWentBack,
  figureFor,
  overSentence,
  shortFigure,
  standsWords,
  toneFor,
  whyWords,
  wordsFor,
} from './clock-words.ts';
import { runningClocks } from './running.ts';
import './clock-strip.css';

/** Further clocks named beside the first; the rest are counted. */
const namedAtMost = 2;

/** The tape deadline of the same build stands in the lines of its cup, unless it is the more urgent of the two. */
export function tapeBeside(clock: RunningClock, clocks: readonly RunningClock[]): RunningClock | undefined {
  if (clock.kind !== 'potLife') return undefined;
  return clocks.find((c) => c.kind === 'tape' && c.subject === clock.subject && c.phase === 'running');
}

function Foot({ clock, tape }: { clock: RunningClock; tape: RunningClock | undefined }) {
  if (clockWentBack(clock)) return <>This phone’s clock was set back: do not trust it.</>;
  if (clock.phase === 'over') return <>{overSentence(clock)}</>;
  const shown = tape ?? clock;
  return (
    <>
      {shown.kind === 'tape' ? 'Tape all on by' : 'Ends'} <b>{formatClockTime(shown.endsAt)}</b>
      {shown.stands && <span class="clock-strip-stands">, {standsWords}</span>}
    </>
  );
}

function First({ clock, tape }: { clock: RunningClock; tape: RunningClock | undefined }) {
  const { figure, says } = figureFor(clock);
  const stale = isStale(clock);
  return (
    <>
      <span class="clock-strip-head">
        <span class="clock-strip-name">
          <b>{clock.phase === 'running' || stale ? clock.name : wordsFor(clock).word}</b>
          {!stale && (
            <span class="clock-strip-about">
              {clock.phase === 'running' ? beganAt(clock) : clock.name}
              {clock.of && <span class="clock-strip-whose">, {clock.of}</span>}
            </span>
          )}
        </span>
        {!stale && (
          <span class="clock-strip-figure">
            <b>{figure}</b> {says}
          </span>
        )}
      </span>
      {clock.phase !== 'over' && <ClockRule clock={clock} size="slim" />}
      <span class="clock-strip-foot">
        <span>
          <Foot clock={clock} tape={tape} />
        </span>
        {clock.of && <span class="clock-strip-of">{clock.of}</span>}
      </span>
      {clock.why && clock.phase !== 'over' && <span class="clock-strip-why">{whyWords(clock.why)}</span>}
    </>
  );
}

/** The others in one line: the work below needs the room. */
function Further({ clocks }: { clocks: readonly RunningClock[] }) {
  const more = clocks.length - namedAtMost;
  if (clocks.length === 0) return null;
  return (
    <span class="clock-strip-line">
      {clocks.slice(0, namedAtMost).map((c) => (
        <span key={clockKey(c)}>
          {c.name} <b>{shortFigure(c)}</b>
        </span>
      ))}
      {more > 0 && <span>+{more}</span>}
    </span>
  );
}

/** Away from the resin, where figures and pictures want the room, the strip says only what is due and when. */
const wantsRoom = /^\/(oven|plans?|record|shelf|lots|ledger|compare|factors|data|hand|words|settings)(\/|$)/;

/** Running clocks stand at the top of every screen, the most urgent first; a tap fills the screen with them. */
export function ClockStrip() {
  const head = useSticks('top');
  const [first, ...rest] = runningClocks.value;
  if (!first || path.value === '/clocks') return null;
  const tape = tapeBeside(first, rest);
  return (
    <aside
      class={`clock-strip clock-${toneFor(first)}${wantsRoom.test(path.value) ? ' clock-strip-brief' : ''}`}
      aria-label="Running clocks"
      ref={head}
    >
      <a href="#/clocks" class="clock-strip-link">
        <First clock={first} tape={tape} />
        <Further clocks={rest.filter((c) => c !== tape)} />
      </a>
      {late.value && <late.value.SoundLine />}
    </aside>
  );
}
