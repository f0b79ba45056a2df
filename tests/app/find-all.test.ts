import { expect, test } from 'vitest';
import { findAll } from '#app/made/record/find-all.ts';
import type { Doc } from '#app/state/documents.ts';
import { summarize } from '#app/state/summarize.ts';
import type { DocType } from '#shared/record/revision.ts';
import type { BuildSummary, OvenSummary } from '#shared/record/summary.ts';
import { starterRevisions } from '#shared/reference/starter-shelf.ts';
import { buildHeader, ovenLoadHeader } from '../record/arbitraries.ts';
import { type Event, entriesOf } from './shop-of.ts';

const build = (name: string, events: readonly Event[] = []) =>
  summarize({ ...buildHeader, id: name, name }, entriesOf(name, events)) as BuildSummary;
const note = (text: string): Event => ({ minute: 9, kind: 'note', text });

const builds = [
  build('Boom', [note('Ridges at the thin end')]),
  build('Upper mast', [note('Smooth all over')]),
];
const ovens = [summarize(ovenLoadHeader, []) as OvenSummary];
const docs = starterRevisions().map(
  (revision) =>
    ({
      doc: revision.doc,
      revision,
      body: revision.body,
      others: [],
      retired: false,
    }) as unknown as Doc<DocType>,
);
const find = (text: string) => findAll(text, { builds, ovens, docs });
const names = (text: string) => find(text).builds.map((b) => b.name);

test('a word of a note finds its tube, in whatever case', () => {
  expect(names('RIDGES')).toEqual(['Boom']);
  expect(names('smooth mast')).toEqual(['Upper mast']);
});

test('all words have to be there', () => {
  expect(names('smooth ridges')).toEqual([]);
});

test('a month finds what was started in it', () => {
  expect(names('may 2026')).toEqual(['Boom', 'Upper mast']);
  expect(find('may oven').ovens).toHaveLength(1);
});

test('what is on the shelf is found by its kind, its name and its hardener', () => {
  expect(find('resin slow').docs.map((d) => d.revision.type)).toEqual(['resin']);
  expect(find('mandrel steel').docs).toHaveLength(1);
});

test('what nothing has finds nothing', () => {
  expect(Object.values(find('zeppelin')).flat()).toEqual([]);
});
