import type { RatingOf } from '#shared/record/entry.ts';

export const ratingNames: Record<RatingOf, string> = {
  surface: 'Surface',
  release: 'Coming off the mandrel',
  drySpots: 'Dry spots',
  straightness: 'Straightness',
};

/** Four words each, worst first. */
export const ratingWords: Record<RatingOf, readonly [string, string, string, string]> = {
  surface: ['rough', 'ridged', 'fair', 'smooth'],
  release: ['stuck', 'hard', 'fair', 'easy'],
  drySpots: ['many', 'some', 'few', 'none'],
  straightness: ['bent', 'bowed', 'nearly', 'straight'],
};
