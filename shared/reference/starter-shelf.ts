import type { Body, DocType, Revision } from '#shared/record/revision.ts';
import { revisionVersion } from '#shared/record/revision.ts';
import { starterChecklists } from './starter-checklists.ts';
import { starterCloths } from './starter-cloths.ts';
import { starterCores } from './starter-cores.ts';
import { starterMandrels } from './starter-mandrels.ts';
import { starterReleases } from './starter-releases.ts';
import { starterResins } from './starter-resins.ts';
import { starterTapes } from './starter-tapes.ts';

type Shelved = { [T in DocType]: { type: T; doc: string; body: Body<T> } }[DocType];

function shelve<T extends Exclude<DocType, 'plan'>>(type: T, bodies: Record<string, Body<T>>): Shelved[] {
  return Object.entries(bodies).map(([doc, body]) => ({ type, doc, body }) as Shelved);
}

/** Everything a new shop finds on its shelf, in the order it is shown. */
export function starterShelf(): Shelved[] {
  return [
    ...shelve('cloth', starterCloths),
    ...shelve('resin', starterResins),
    ...shelve('release', starterReleases),
    ...shelve('tape', starterTapes),
    ...shelve('mandrel', starterMandrels),
    ...shelve('core', starterCores),
    ...shelve('checklist', starterChecklists),
  ];
}

/** Fields that first revisions did not have yet: phones that hold those must not meet another body under their id. */
const addedLater: Partial<Record<DocType, readonly string[]>> = {
  cloth: ['weave'],
  tape: ['shrinkForce', 'rollLength'],
  mandrel: ['wall'],
};

function revisionsOf(item: Shelved): Revision[] {
  const base = { record: 'revision', v: revisionVersion, at: 0, device: 'starter' } as const;
  const added = Object.keys(item.body).filter((field) => addedLater[item.type]?.includes(field));
  const body = Object.fromEntries(Object.entries(item.body).filter(([field]) => !added.includes(field)));
  const first = { ...base, id: `${item.doc}-1`, parents: [], ...item, body } as unknown as Revision;
  if (added.length === 0) return [first];
  return [first, { ...base, id: `${item.doc}-2`, parents: [first.id], ...item } as Revision];
}

/**
 * The starter shelf as revisions. Ids, times and device are the same on every phone, so that two phones'
 * starters merge into one and not into a conflict. When a starter changes, give it a second revision made from the
 * first: the same id with another body would leave two phones with two truths.
 */
export function starterRevisions(): Revision[] {
  return starterShelf().flatMap(revisionsOf);
}
