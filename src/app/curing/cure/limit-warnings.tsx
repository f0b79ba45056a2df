import { brokenBy, type Margins } from '#app/curing/oven/oven-limits.ts';
import { Secondary } from '#app/parts/action.tsx';
import { Explain } from '#app/parts/explain.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { show } from '#app/state/show.ts';
import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import type { OvenLimit } from '#shared/record/oven-load.ts';
import type { ResinSystem } from '#shared/record/resin-system.ts';
import { formatDuration } from '#shared/units/time.ts';
import { brokenSays, brokenTitle, fitWords, nothingFits } from './limit-words.ts';
import { type Fit, whatFits } from './what-fits.ts';

interface Props {
  schedule: CureSchedule;
  limits: readonly OvenLimit[];
  margins?: Margins;
  resins: readonly ResinSystem[];
  /** Takes what would fit; left out where nothing can be changed. */
  onTake?: ((schedule: CureSchedule) => void) | undefined;
}

export function FitExplained({ fit }: { fit: Fit }) {
  return (
    <Explain
      of="What would fit"
      formula="t₂ = t₁ exp((Ea/R)(1/T₂ − 1/T₁)), over ramps and holds together"
      values={[
        ['Highest allowed', show(fit.at, 'temperature')],
        ['Held there', formatDuration(fit.lasts)],
        ['Ea', show(fit.energy, 'activationEnergy')],
      ]}
      source="ASTM C1074, equivalent age; Ea from the cure times of the resin’s data sheet"
      sure={
        fit.assumed
          ? 'The sheet gives fewer than two cure times, so how heat shortens the cure is taken as usual for epoxy: a rough figure.'
          : 'As good as the cure times on the sheet, and not outside their range. The glass transition ends lower than after the hotter cure.'
      }
    />
  );
}

/** The same in one line each, where a figure is being written. */
export function BrokenTitles({ schedule, limits, margins }: Pick<Props, 'schedule' | 'limits' | 'margins'>) {
  return brokenBy(schedule, limits, margins).map((b) => (
    <Warning key={b.limit.name} kind="amber" title={brokenTitle(b)} />
  ));
}

/** Which limits a schedule goes over, by how much, for how long, and what would fit. */
export function LimitWarnings({ schedule, limits, margins, resins, onTake }: Props) {
  const broken = brokenBy(schedule, limits, margins);
  if (broken.length === 0) return null;
  const fit = whatFits(schedule, broken, resins);
  return (
    <section class="limits-over" aria-label="Limits gone over">
      {broken.map((b) => (
        <Warning key={b.limit.name} kind="amber" title={brokenTitle(b)}>
          {brokenSays(b)}
        </Warning>
      ))}
      {fit ? (
        <>
          <p>
            What would fit: <strong>{fitWords(fit)}</strong>. It uses the same share of the data sheet’s cure
            time.
          </p>
          {onTake && <Secondary onPress={() => onTake(fit.schedule)}>Take {fitWords(fit)}</Secondary>}
          <FitExplained fit={fit} />
        </>
      ) : (
        <p>{nothingFits(broken)}</p>
      )}
    </section>
  );
}
