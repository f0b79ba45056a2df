import { show } from '#app/state/show.ts';
import { formatClockTime } from '#shared/units/time.ts';
import { type PlannedCup, stirs } from './cup-planner.ts';
import './cup-time-line.css';

const says: Record<PlannedCup['is'], string> = {
  past: 'on the cloth',
  standing: 'in hand',
  toCome: 'to mix',
};

interface Props {
  cups: readonly PlannedCup[];
  tapeBy: number | undefined;
}

/** Every cup as a bar along the time of day: stirred, then worked in; the line is the tape's. */
export function CupTimeLine({ cups, tapeBy }: Props) {
  const from = Math.min(...cups.map((c) => c.mixAt));
  const to = Math.max(tapeBy ?? 0, ...cups.map((c) => c.emptyAt));
  if (cups.length === 0 || !(to > from)) return null;
  const at = (time: number) => `${(100 * (time - from)) / (to - from)}%`;
  const wide = (span: number) => `${(100 * span) / (to - from)}%`;
  return (
    <ol class="cup-times">
      {cups.map((cup) => {
        const stirred = Math.min(1000 * stirs, cup.emptyAt - cup.mixAt);
        return (
          <li key={cup.number} class={`cup-time cup-time-${cup.is}`}>
            <span class="cup-time-words">
              <b>
                Cup {cup.number}, {formatClockTime(cup.mixAt)}
              </b>
              <span>
                {show(cup.mass, 'mass', 0)}, {says[cup.is]} {cup.is === 'past' ? '' : 'to '}
                {formatClockTime(cup.emptyAt)}
              </span>
            </span>
            <span class="cup-time-track" aria-hidden="true">
              <span class="cup-time-stir" style={{ left: at(cup.mixAt), width: wide(stirred) }} />
              <span
                class="cup-time-work"
                style={{ left: at(cup.mixAt + stirred), width: wide(cup.emptyAt - cup.mixAt - stirred) }}
              />
              {tapeBy !== undefined && <span class="cup-time-tape" style={{ left: at(tapeBy) }} />}
            </span>
          </li>
        );
      })}
      {tapeBy !== undefined && (
        <li class="cup-time-foot">
          Dark: stirred. Light: worked in. Line: tape all on by {formatClockTime(tapeBy)}.
        </li>
      )}
    </ol>
  );
}
