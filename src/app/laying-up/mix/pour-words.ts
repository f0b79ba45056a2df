import type { CupState } from '#shared/record/cup-state.ts';
import type { PourTask, Verdict } from './cup-phase.ts';
import { offWords } from './mix-words.ts';

interface Told {
  cup: CupState;
  task: PourTask;
  hardener: string;
  /** A mass as the scale shows it. */
  mass: (kg: number) => string;
  /** Hardener for the resin as it is typed, kg; while nothing is typed, what was planned. */
  follows?: number | undefined;
}

/** What the target is made of. */
export function targetWords({ cup, task, hardener, mass, follows }: Told, runningTotal: boolean): string {
  if (task.correcting) return `${mass(task.wanted)} of ${task.part} puts this cup right.`;
  if (task.part === 'resin') return `then ${mass(follows ?? cup.wanted.hardener)} of ${hardener} follows`;
  if (runningTotal) return `resin ${mass(cup.resin)} as poured + ${hardener} ${mass(task.wanted)}`;
  return `${hardener} alone, for ${mass(cup.resin)} of resin as poured`;
}

/** What a pour that is over its mark does to the cup, and what puts it right; nothing while all is well. */
export function overWords({ cup, hardener, mass }: Told, verdict: Verdict | undefined): string | undefined {
  if (verdict === undefined || verdict.kind === 'short') return undefined;
  const limit = `this cup may hold ${mass(cup.holds)}`;
  if (verdict.kind === 'good') {
    return verdict.fits
      ? undefined
      : `With its ${hardener} the cup comes to ${mass(verdict.total)}, and ${limit}: pour some resin back first.`;
  }
  const right = `${mass(verdict.add)} of ${verdict.next === 'resin' ? 'resin' : hardener} puts it right`;
  return verdict.fits
    ? `Hardener ${offWords(verdict.off)}. ${right}, and the cup holds that.`
    : `Hardener ${offWords(verdict.off)}. ${right}, but that makes ${mass(verdict.total)} and ${limit}: pour it out flat at once, or throw it out.`;
}
