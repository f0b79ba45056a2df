import type { Signal } from '@preact/signals';
import { stretch as stretchWords } from '#app/planning/loads/load-words.ts';
import type { Stretch } from './stretches.ts';
import { plyWords, ruleWords, todayWords } from './wanted-words.ts';

interface Props {
  stretches: readonly Stretch[];
  /** Plies of today at each station. */
  today: readonly number[];
  /** First stations of the stretches that stay as they are. */
  kept: Signal<ReadonlySet<number>>;
}

export const isKept = (kept: ReadonlySet<number>, { stations }: Stretch): boolean =>
  kept.has(stations[0] ?? -1);

/** '3', or '3 to 6' where today's wall changes along the stretch. */
function rangeOf(stretch: Stretch, today: readonly number[]): string {
  const plies = stretch.stations.map((i) => today[i] ?? 0);
  const [least, most] = [todayWords(Math.min(...plies)), todayWords(Math.max(...plies))];
  return least === most ? least : `${least} to ${most}`;
}

/** Each step of the wanted wall under the thumb: taken, or kept as it is. */
export function Steps({ stretches, today, kept }: Props) {
  const toggle = (stretch: Stretch) => {
    const first = stretch.stations[0] ?? -1;
    const next = new Set(kept.value);
    if (!next.delete(first)) next.add(first);
    kept.value = next;
  };
  return (
    <fieldset class="choice">
      <legend>Step by step</legend>
      <div class="wanted-steps">
        {stretches.map((stretch) => {
          const stays = isKept(kept.value, stretch);
          return (
            <button key={stretch.from} type="button" aria-pressed={!stays} onClick={() => toggle(stretch)}>
              <span>
                {stretchWords(stretch.from, stretch.to)}: {plyWords(stretch.plies)}
                <small>
                  {ruleWords(stretch.rules)}; today {rangeOf(stretch, today)}
                </small>
              </span>
              <strong>{stays ? 'kept' : 'taken ✓'}</strong>
            </button>
          );
        })}
      </div>
    </fieldset>
  );
}
