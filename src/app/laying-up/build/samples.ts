import type { BuildState } from '#shared/record/build-state.ts';
import type { EntryDraft, EntryOf } from '#shared/record/entry.ts';
import { cupsOf } from './cups-left.ts';

/** How a kept sample feels under a fingernail. */
export const feels = ['hard', 'tacky', 'soft'] as const;
export type Feel = (typeof feels)[number];

/** A sample to feel: of a cup, or of whatever was mixed when no cup was written down. */
export interface Sample {
  cup?: string;
  name: string;
  /** As it was felt last. */
  feel?: Feel;
}

const isFeel = (outcome: string): outcome is Feel => (feels as readonly string[]).includes(outcome);

function lastFeel(checks: readonly EntryOf<'check'>[], cup: string | undefined): Feel | undefined {
  const outcome = checks.filter((c) => c.what !== 'gel' && c.cup === cup).at(-1)?.outcome;
  return outcome !== undefined && isFeel(outcome) ? outcome : undefined;
}

export function samplesOf(state: BuildState, round: number): Sample[] {
  const checks = state.checks.map((f) => f.entry);
  const cups = cupsOf(state, round).filter((c) => c.hardenerAt !== undefined);
  const samples: Sample[] =
    cups.length === 0 ? [{ name: 'The sample' }] : cups.map((c) => ({ cup: c.cup, name: `Cup ${c.number}` }));
  return samples.map((sample) => {
    const feel = lastFeel(checks, sample.cup);
    return feel ? { ...sample, feel } : sample;
  });
}

export const allHard = (samples: readonly Sample[]) => samples.every((s) => s.feel === 'hard');

export function sampleDraft(subject: string, { cup }: Sample, feel: Feel): EntryDraft {
  return {
    kind: 'check',
    subject,
    what: feel === 'tacky' ? 'tack' : 'hardness',
    outcome: feel,
    ...(cup !== undefined && { cup }),
  };
}

/** One sentence on samples that are not hard. */
export function softSentence(samples: readonly Sample[]): string | undefined {
  const soft = samples.filter((s) => s.feel === 'soft' || s.feel === 'tacky');
  if (soft.length === 0) return undefined;
  const names = soft.map((s) => s.name).join(' and ');
  return `${names} not hard yet. Leave it in the heat with the tube. One that stays soft was off its ratio or badly stirred: no heat makes it hard, and what it wetted in the tube is soft too.`;
}
