import { ruledBy, ruledWords } from '#app/planning/loads/ruling.ts';
import type { Ruling } from '#calc';

/** What asks for the plies of a stretch. */
export function ruleWords(rules: Ruling): string {
  switch (rules) {
    case 'deflection':
      return 'how far it may bend';
    case 'drop-off':
      return 'plies end no faster';
    case 'least':
      return 'the fewest you set';
    default:
      return ruledWords[ruledBy(rules)];
  }
}

export const plyWords = (n: number): string => `${n} ${n === 1 ? 'ply' : 'plies'}`;

/** Plies of today need not be whole. */
export const todayWords = (n: number): string => String(Math.round(n * 10) / 10);
