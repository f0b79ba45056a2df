import { Lines } from '#app/parts/figure.tsx';
import { Caution, Warning } from '#app/parts/warning.tsx';
import { show } from '#app/state/show.ts';
import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import type { OvenLimit } from '#shared/record/oven-load.ts';
import { brokenBy, cutoffOf } from './oven-limits.ts';

const feels: Record<OvenLimit['sees'], string> = { air: 'air', part: 'part', element: 'element' };

/** Before it is lit: what everything in there bears, and what this schedule would break. */
export function LimitCheck({ schedule, limits }: { schedule: CureSchedule; limits: readonly OvenLimit[] }) {
  return (
    <>
      {brokenBy(schedule, limits).map(({ limit, by, hottest }) => (
        <Warning
          key={limit.name}
          kind="amber"
          title={`${show(by, 'temperatureDifference', 0)} over what the ${limit.name} bears`}
        >
          The schedule goes to {show(hottest, 'temperature', 0)}, the {limit.name} is good to{' '}
          {show(limit.highest, 'temperature', 0)}. Hold cooler and longer, or change the {limit.name}.
        </Warning>
      ))}
      <h2>What is in there is good to</h2>
      <Lines
        rows={limits.map((l) => [
          `${l.name}, felt by the ${feels[l.sees]}`,
          show(l.highest, 'temperature', 0),
        ])}
      />
    </>
  );
}

export function OvenCautions({ limits }: { limits: readonly OvenLimit[] }) {
  const cutoff = cutoffOf(limits);
  return (
    <Caution>
      Cutoff of the oven, one of its own{cutoff !== undefined && `, at ${show(cutoff, 'temperature', 0)}`}: it
      guards against fire, not the tube. The limits of the tube are watched here by what you log. Before heat
      the solvent has flashed off, a smoke alarm and an extinguisher are there. Never leave it alone without
      the cutoff.
    </Caution>
  );
}
