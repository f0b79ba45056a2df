import type { StageName } from '#shared/record/checklist.ts';

/** The stages of a build, as they are called at the bench. */
export const stageWords: Record<StageName, string> = {
  mandrelPrep: 'Mandrel prep',
  release: 'Release',
  cut: 'Cut',
  setUp: 'Set up',
  mix: 'Mix',
  wetOut: 'Wet-out',
  wrap: 'Wrap',
  shrinkTape: 'Shrink tape',
  cure: 'Cure',
  demold: 'Demold',
  weigh: 'Weigh',
  trim: 'Trim',
  measure: 'Measure',
  postcure: 'Postcure',
  bondPrep: 'Bond prep',
};

export const outcomeWords = { good: 'Good', rework: 'Rework', scrap: 'Scrap' } as const;
