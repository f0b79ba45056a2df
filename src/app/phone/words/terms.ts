import type { Term, TermGroup } from './term.ts';
import { cureTerms } from './terms-cure.ts';
import { loadTerms } from './terms-load.ts';
import { resinTerms } from './terms-resin.ts';
import { shopTerms } from './terms-shop.ts';
import { stiffnessTerms } from './terms-stiffness.ts';
import { wallTerms } from './terms-wall.ts';

/** In the order a tube is made. */
export const termGroups: readonly TermGroup[] = [
  { title: 'Mandrel, wall and cloth', terms: wallTerms },
  { title: 'Stiffness and strength', terms: stiffnessTerms },
  { title: 'Loads and margins', terms: loadTerms },
  { title: 'Resin and wet-out', terms: resinTerms },
  { title: 'Tape, cure and demold', terms: cureTerms },
  { title: 'The shop and its record', terms: shopTerms },
];

export const allTerms: readonly Term[] = termGroups.flatMap((group) => group.terms);

/** The last place that counts. */
const lastPlace = { name: 1, all: 2 };

/** Where the words looked for stand in a term: in its name first, then in what else it is called, then in what it says. */
function rank(term: Term, asked: readonly string[]): number | undefined {
  const places = [
    term.name,
    `${term.name} ${term.also ?? ''}`,
    `${term.name} ${term.also ?? ''} ${term.says}`,
  ];
  const found = places.findIndex((text) => asked.every((word) => text.toLowerCase().includes(word)));
  return found === -1 ? undefined : found;
}

/** The terms that have all of these words, those named so first; or only those called so. */
export function findTerms(text: string, by: 'name' | 'all' = 'all'): Term[] {
  const asked = text.toLowerCase().split(/\s+/).filter(Boolean);
  return allTerms
    .map((term) => ({ term, at: rank(term, asked) }))
    .filter((one): one is { term: Term; at: number } => one.at !== undefined && one.at <= lastPlace[by])
    .sort((a, b) => a.at - b.at)
    .map((one) => one.term);
}
