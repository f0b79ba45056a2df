import type { Doc } from '#app/state/documents.ts';
import type { DocType } from '#shared/record/revision.ts';
import type { BuildSummary, OvenSummary } from '#shared/record/summary.ts';

export interface Searched {
  builds: readonly BuildSummary[];
  ovens: readonly OvenSummary[];
  docs: readonly Doc<DocType>[];
}

/** What has all the words asked for, each group in the order it came in. */
export type Found = Searched;

export const askedWords = (text: string): string[] => text.toLowerCase().split(/\s+/).filter(Boolean);

/** What a document is called and noted with; a plan's pieces and a structure's parts too. */
function wordsOf({ body, revision }: Doc<DocType>): string {
  const inside: string[] = [];
  if ('wall' in body && typeof body.wall === 'object') inside.push(...body.wall.pieces.map((p) => p.name));
  if ('parts' in body) inside.push(...body.parts.map((p) => p.name));
  if ('hardener' in body) inside.push(body.hardener, body.lot ?? '');
  if ('fiber' in body) inside.push(body.fiber);
  const note = 'note' in body ? body.note : undefined;
  return [revision.type, body.name, note ?? '', ...inside].join(' ').toLowerCase();
}

const dayOf = (at: number) => new Date(at).toDateString().toLowerCase();

const ofBuild = (b: BuildSummary) => `${b.words} ${dayOf(b.startedAt)}`;
const ofOven = (o: OvenSummary) => `oven load ${o.number} ${dayOf(o.startedAt)}`;

const searched = new WeakMap<object, string>();

/** Put together once for each thing: it is looked through again at every key. */
function keptWords<T extends object>(of: T, make: (of: T) => string): string {
  const known = searched.get(of);
  if (known !== undefined) return known;
  const made = make(of);
  searched.set(of, made);
  return made;
}

/** Everything that is kept, by the words in it: 'boom gel', 'warm oven', 'nov 2026'. */
export function findAll(text: string, { builds, ovens, docs }: Searched): Found {
  const asked = askedWords(text);
  const has = (words: string) => asked.every((word) => words.includes(word));
  return {
    builds: builds.filter((b) => has(keptWords(b, ofBuild))),
    ovens: ovens.filter((o) => has(keptWords(o, ofOven))),
    docs: docs.filter((d) => has(keptWords(d, wordsOf))),
  };
}
