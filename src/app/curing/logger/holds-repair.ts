import type { LoggerRepairs } from '#shared/record/logger-file.ts';
import type { Fault } from './fault.ts';

/** Whether the repairs that stand in the record hold what is done about this fault. */
export function holdsRepair(repairs: LoggerRepairs, { repair }: Fault): boolean {
  if (!repair) return false;
  const { shifts = [], cuts = [] } = repair;
  return (
    shifts.every((s) => repairs.shifts.some((r) => r.row === s.row)) &&
    cuts.every((c) => repairs.cuts.some((r) => r.first === c.first && r.column === c.column)) &&
    (repair.repeats === undefined || repairs.repeats === repair.repeats) &&
    (repair.smooth === undefined || repairs.smooth !== undefined) &&
    (repair.from === undefined || repairs.from !== undefined)
  );
}
