import { computed, signal } from '@preact/signals';
import { type Body, type DocType, heads, type Revision, revisionVersion } from '#shared/record/revision.ts';
import { theStore } from './shop.ts';
import { writeThen } from './unsaved.ts';

export const docTypes = [
  'plan',
  'cloth',
  'resin',
  'release',
  'tape',
  'mandrel',
  'core',
  'checklist',
  'lot',
  'structure',
] as const satisfies readonly DocType[];

/** Every head of every document; two of one document are a conflict that the builder settles. */
const known = signal<readonly Revision[]>([]);

/** Whether plans and shelf are in memory. The bench is shown before they are. */
export const shelfIsThere = signal(false);

export interface Doc<T extends DocType> {
  doc: string;
  /** Newest head; the one to show and use. */
  revision: Extract<Revision, { type: T }>;
  body: Body<T>;
  /** The other heads, when two phones changed it. */
  others: Extract<Revision, { type: T }>[];
  retired: boolean;
}

const all = computed(() => {
  const byDoc = new Map<string, Revision[]>();
  for (const r of known.value) byDoc.set(r.doc, [...(byDoc.get(r.doc) ?? []), r]);
  return byDoc;
});

export function findDoc<T extends DocType>(type: T, doc: string | undefined): Doc<T> | undefined {
  const group = doc === undefined ? [] : heads(all.value.get(doc) ?? []);
  const revision = group.at(-1);
  if (revision?.type !== type) return undefined;
  const own = group as Extract<Revision, { type: T }>[];
  const newest = own[own.length - 1];
  if (!newest || doc === undefined) return undefined;
  return {
    doc,
    revision: newest,
    body: newest.body as Body<T>,
    others: own.slice(0, -1),
    retired: newest.retired === true,
  };
}

/** A document of whatever kind, for a list of mixed ones. */
export function anyDoc(doc: string): Doc<DocType> | undefined {
  const type = all.value.get(doc)?.at(-1)?.type;
  return type && findDoc(type, doc);
}

function byName<T extends DocType>(type: T, retired: boolean): Doc<T>[] {
  return [...all.value.keys()]
    .map((doc) => findDoc(type, doc))
    .filter((d): d is Doc<T> => d?.retired === retired)
    .sort((a, b) => a.body.name.localeCompare(b.body.name, undefined, { numeric: true }));
}

/** Everything that is on the shelf or planned, by name, whatever it is. */
export const anyDocs = (): Doc<DocType>[] => docTypes.flatMap((type) => byName<DocType>(type, false));

/** What is on the shelf of a kind, by name, without what was taken off it. */
export const docsOf = <T extends DocType>(type: T): Doc<T>[] => byName(type, false);

/** What was taken off it: kept, because builds were made from it. */
export const retiredOf = <T extends DocType>(type: T): Doc<T>[] => byName(type, true);

export async function loadDocuments(): Promise<void> {
  const store = theStore();
  const before = known.peek();
  const lists = await Promise.all(docTypes.map((type) => store.heads(type) as Promise<Revision[]>));
  // What was saved while the disk was read must not vanish from the screen.
  const saved = known.peek().filter((r) => !before.includes(r) && !lists.flat().some((l) => l.id === r.id));
  known.value = [...lists.flat(), ...saved];
}

/** A new revision made from every present head; returns the document's id once it is written. */
export async function saveDoc<T extends DocType>(
  type: T,
  body: Body<T>,
  options: { doc?: string; retired?: boolean } = {},
): Promise<string | undefined> {
  const store = theStore();
  const doc = options.doc ?? store.newId();
  const revision = {
    record: 'revision',
    v: revisionVersion,
    type,
    doc,
    id: store.newId(),
    parents: heads(all.value.get(doc) ?? []).map((r) => r.id),
    at: Date.now(),
    device: store.device,
    body,
    ...(options.retired && { retired: true }),
  } as unknown as Revision;
  const written = await writeThen({ revisions: [revision] }, () => {
    known.value = [...known.value, revision];
  });
  return written ? doc : undefined;
}
