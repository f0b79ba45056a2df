import { Rule } from '#app/parts/rule.tsx';
import { formatDuration } from '#shared/units/time.ts';
import type { RunningClock } from './clock-list.ts';
import { ruleUnit } from './clock-words.ts';

interface Props {
  clock: RunningClock;
  size: 'slim' | 'tall';
}

/** How much of a clock is gone, read off a rule whose last stretch is hatched. */
export function ClockRule({ clock, size }: Props) {
  const { lasts, warns, gone, phase, name } = clock;
  const { unit, seconds } = ruleUnit(lasts);
  const whole = lasts / seconds;
  const from = Math.max(0, lasts - warns) / seconds;
  return (
    <Rule
      label={`${name}: ${formatDuration(gone * lasts)} of ${formatDuration(lasts)} gone`}
      from={0}
      to={whole}
      value={gone * whole}
      zones={warns > 0 ? [{ from, to: whole, kind: 'amber' }] : []}
      unit={unit}
      tone={phase === 'running' ? 'blue' : 'amber'}
      slim={size === 'slim'}
      tall={size === 'tall'}
    />
  );
}
