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

/**
 * The starter shelf as first revisions. Ids, time and device are the same on every phone, so that two phones'
 * starters merge into one and not into a conflict. When a starter changes, give it a second revision made from the
 * first: the same id with another body would leave two phones with two truths.
 */
export function starterRevisions(): Revision[] {
  return starterShelf().flatMap((item) => {
    const first: Revision = {
      record: 'revision',
      v: revisionVersion,
      id: `${item.doc}-1`,
      parents: [],
      at: 0,
      device: 'starter',
      ...item,
    };
    if (item.type !== 'mandrel' || item.body.wall === undefined) return [first];
    // The first mandrels had no wall: phones that hold them must not meet another body under the same id.
    const { wall: _, ...body } = item.body;
    return [{ ...first, body } as Revision, { ...first, id: `${item.doc}-2`, parents: [first.id] }];
  });
}
