import { BigFigure } from '#app/parts/figure.tsx';
import { Rule } from '#app/parts/rule.tsx';
import { now } from '#app/state/now.ts';
import type { CupState } from '#shared/record/cup-state.ts';
import { formatCountdown, formatDuration } from '#shared/units/time.ts';

/** s; two to three minutes of stirring is common practice, no source */
const enough = 120;
const most = 180;

/** Stirring begins with all of both parts in the cup; pouring must not eat into it. */
export function stirringSince(cup: CupState): number {
  return cup.pours.at(-1)?.entry.happenedAt ?? cup.hardenerAt ?? cup.startedAt;
}

/** Whether three minutes of stirring are over at a time of day, ms */
export const isStirred = (cup: CupState, at: number) => at - stirringSince(cup) >= most * 1000;

/** How long to go on stirring. It follows from when the last pour went in, so nothing has to be running. */
export function StirTimer({ since }: { since: number }) {
  const gone = Math.max(0, (now.value - since) / 1000);
  const left = most - gone;
  return (
    <div>
      <BigFigure
        figure={formatCountdown(left)}
        unit={gone < enough ? 'left to stir' : 'left; 2 min are done'}
      />
      <Rule
        label={`Stirred for ${formatDuration(gone)} of 3 min`}
        from={0}
        to={most / 60}
        value={gone / 60}
        target={enough / 60}
        unit="min"
      />
    </div>
  );
}
