import type { Cloth } from '#shared/record/cloth.ts';
import type { Body, DocType } from '#shared/record/revision.ts';
import { starterCloths } from '#shared/reference/starter-cloths.ts';
import { starterShelf } from '#shared/reference/starter-shelf.ts';

export const weighedDoc = 'starter-cloth-carbon-plain-193';

/** The shop's own roll, weighed: 1 m of it, 1.27 m wide, came to 248.7 g. */
export const weighedCloth: Cloth = {
  ...starterCloths[weighedDoc],
  arealWeight: 0.1958,
  typical: false,
  note: 'Weighed: 1 m off the roll, 1.27 m wide, came to 248.7 g.',
};

/** A document of the starter shelf. */
export function fromShelf<T extends DocType>(type: T, doc: string): Body<T> {
  const found = starterShelf().find((item) => item.type === type && item.doc === doc);
  if (!found) throw new Error(`no ${type} ${doc} on the starter shelf`);
  return found.body as Body<T>;
}
