import { Rule, type Zone } from '#app/parts/rule.tsx';
import { settings } from '#app/state/settings.ts';
import type { CupState } from '#shared/record/cup-state.ts';
import { inUnits } from '#shared/units/format.ts';
import type { Mixing, PourTask } from './cup-phase.ts';

interface Props {
  cup: CupState;
  mixing: Mixing;
  task: PourTask;
  /** kg the scale reads before this pour */
  before: number;
  /** kg it reads now, as typed */
  reading: number | undefined;
  label: string;
}

/** How far past the target the rule goes, of the pour. */
const beyond = 0.3;

/** The scale as a rule: stop in the clear gap at the mark; short is hatched like over. */
export function PourRule({ cup, mixing, task, before, reading, label }: Props) {
  const { units: system } = settings.value;
  const shown = (kg: number) => inUnits(kg, { quantity: 'mass', system, bare: true });
  const at = (pour: number) => shown(before + pour).value;
  const last = Math.max(task.wanted * (1 + beyond), task.least + (task.wanted - task.least) * 3);
  // Resin is limited by the cup that its hardener still has to go into.
  const full = task.part === 'resin' && !task.correcting ? cup.holds / (1 + mixing.ratio) : last;
  const rich = Math.min(task.most, last);
  const zones: Zone[] = [
    { from: at(0), to: at(task.least), kind: 'amber' },
    { from: at(rich), to: at(Math.max(rich, Math.min(full, last))), kind: 'amber' },
  ];
  if (full < last) zones.push({ from: at(Math.max(rich, full)), to: at(last), kind: 'stop' });
  return (
    <Rule
      label={label}
      from={at(0)}
      to={at(last)}
      value={reading === undefined ? at(0) : shown(reading).value}
      target={at(task.wanted)}
      zones={zones.filter((z) => z.to > z.from)}
      unit={shown(0).unit}
    />
  );
}
