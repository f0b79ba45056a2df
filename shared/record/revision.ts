import * as z from 'zod/mini';
import { checklistBody } from './checklist.ts';
import { clothBody } from './cloth.ts';
import { id, once, stamp } from './common.ts';
import { coreBody } from './core.ts';
import type { Known } from './known.ts';
import { lotBody } from './lot.ts';
import { mandrelBody } from './mandrel.ts';
import { planBody } from './plan.ts';
import { releaseSystemBody } from './release-system.ts';
import { resinSystemBody } from './resin-system.ts';
import { structureBody } from './structure.ts';
import { tapeBody } from './tape.ts';

export const revisionVersion = 1;

const base = once(() => ({
  record: z.literal('revision'),
  v: z.number(),
  /** The document this is a revision of. */
  doc: id,
  id,
  /** Revisions this one was made from; two when a builder settled a conflict. */
  parents: z.array(id),
  at: stamp,
  device: id,
  /** Taken off the shelf; kept, because builds were made from it. */
  retired: z.optional(z.boolean()),
}));

export const revision = z.lazy(() =>
  z.discriminatedUnion('type', [
    z.looseObject({ ...base(), type: z.literal('plan'), body: planBody }),
    z.looseObject({ ...base(), type: z.literal('cloth'), body: clothBody }),
    z.looseObject({ ...base(), type: z.literal('resin'), body: resinSystemBody }),
    z.looseObject({ ...base(), type: z.literal('release'), body: releaseSystemBody }),
    z.looseObject({ ...base(), type: z.literal('tape'), body: tapeBody }),
    z.looseObject({ ...base(), type: z.literal('mandrel'), body: mandrelBody }),
    z.looseObject({ ...base(), type: z.literal('core'), body: coreBody }),
    z.looseObject({ ...base(), type: z.literal('checklist'), body: checklistBody }),
    z.looseObject({ ...base(), type: z.literal('lot'), body: lotBody }),
    z.looseObject({ ...base(), type: z.literal('structure'), body: structureBody }),
  ]),
);
export type Revision = Known<z.infer<typeof revision>>;
export type DocType = Revision['type'];

const types = once(
  () => new Set(revision._zod.innerType.def.options.map((o) => o.def.shape.type.def.values[0] as string)),
);
/** Whether this version knows it. */
export const isDocType = (type: string): type is DocType => types().has(type);

export type RevisionOf<T extends DocType> = Extract<Revision, { type: T }>;
export type Body<T extends DocType> = RevisionOf<T>['body'];

/** A revision of a document type that this version does not know: kept and passed on. */
export const foreignRevision = z.lazy(() =>
  z.looseObject({ ...base(), type: z.string(), body: z.unknown() }),
);
export type ForeignRevision = Known<z.infer<typeof foreignRevision>>;

/**
 * The revisions that nothing else in the set was made from. One is the normal case;
 * two mean that two phones changed the document since they last agreed.
 */
export function heads<R extends { id: string; parents: string[] }>(revisions: readonly R[]): R[] {
  const superseded = new Set(revisions.flatMap((r) => r.parents));
  const once = new Map(revisions.map((r) => [r.id, r]));
  return [...once.values()].filter((r) => !superseded.has(r.id)).sort((a, b) => (a.id < b.id ? -1 : 1));
}
