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
  // The first resin is limited by the hardener that still has to go into the same cup.
  const first = task.part === 'resin' && !task.correcting;
  const full = first ? cup.holds / (1 + mixing.ratio) : cup.holds - cup.resin - cup.hardener;
  const rich = Math.min(task.most, last);
  const upTo = Math.min(last, Math.max(rich, full));
  const zones: Zone[] = [
    { from: at(0), to: at(task.least), kind: 'amber' },
    { from: at(rich), to: at(upTo), kind: 'amber' },
  ];
  if (full < last) zones.push({ from: at(Math.max(0, full)), to: at(last), kind: 'stop' });
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
