import type { Tube } from '#app/carry/tube-of-plan.ts';

/** What nobody measured and was taken for true. */
export function AssumedWords({ tube }: { tube: Tube }) {
  if (tube.assumed.what.length === 0) return null;
  return null;
}
