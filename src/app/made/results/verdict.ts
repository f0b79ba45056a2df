/** Bounds of good hand work by fiber volume (common practice, no source). */
export const leanOver = 0.5;
export const richUnder = 0.32;

export interface Verdict {
  word: 'lean' | 'good' | 'rich';
  says: string;
}

/** What a fiber volume means, in a word and what to look for. */
export function verdict(fiberVolume: number): Verdict {
  if (fiberVolume > leanOver) {
    return { word: 'lean', says: 'Tap and look for dry spots. Taped tubes may rightly be leaner.' };
  }
  if (fiberVolume < richUnder) {
    return {
      word: 'rich',
      says: 'Weight that carries nothing. Less resin, or more squeeze, next time.',
    };
  }
  return { word: 'good', says: 'Good hand work.' };
}

/** Two figures for the same laminate further apart than this share of the larger get a word. */
const apartBy = 0.1;

export function tellDifferentStories(byWeight: number, byThickness: number): boolean {
  return Math.abs(byWeight - byThickness) > apartBy * Math.max(byWeight, byThickness);
}
