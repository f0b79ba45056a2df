import { openDB } from 'idb';
import { afterEach, describe, expect, it } from 'vitest';
import { summarize } from '#app/state/summarize.ts';
import { buildVersion } from '#shared/record/build.ts';
import { entryVersion } from '#shared/record/entry.ts';
import { ovenLoadVersion } from '#shared/record/oven-load.ts';
import { revisionVersion } from '#shared/record/revision.ts';
import { backupVersion } from '#storage/backup-format.ts';
import { openDatabase } from '#storage/database.ts';
import { numbered } from '#storage/migrate.ts';
import { migrations } from '#storage/migrations/list.ts';
import type { Store } from '#storage/store.ts';
import { check, cleanUp, name, open } from './samples.ts';

/** What each version of the app really left on a phone, never to be written again: the test reads it. */
const texts = import.meta.glob<string>('./kept/*.{txt,lines,json}', {
  query: '?raw',
  import: 'default',
  eager: true,
});
const kept = (file: string) => texts[`./kept/${file}`] ?? '';
interface Beside {
  summaries: object[];
  phone: { settings: object };
  meta: { device: string; slot0: object };
}
/** Caches and marks that the database of each version held beside its records. */
const beside = (version: number): Beside => JSON.parse(kept(`database-${version}.json`));

interface Kept {
  record: string;
  v: number;
  id: string;
}
const recordsOf = (version: number): Kept[] =>
  kept(`backup-${version}.txt`)
    .trimEnd()
    .split('\n')
    .slice(1, -1)
    .map((line) => JSON.parse(line));

afterEach(cleanUp);

const stores: Record<string, string> = { entry: 'entries', revision: 'revisions' };

/** The database as the app of that version had it, made by the migrations up to there. */
async function leaveDatabase(version: number): Promise<void> {
  const opened = await openDatabase({
    name,
    migrations: numbered(migrations.slice(0, version)),
    onBlocking: () => {},
    onTerminated: () => {},
  });
  if (!opened.ok) throw new Error(opened.detail);
  opened.database.close();
  const database = await openDB(name);
  const { summaries, phone, meta } = beside(version);
  for (const record of recordsOf(version)) await database.put(stores[record.record] ?? 'headers', record);
  for (const summary of summaries) await database.put('summaries', summary);
  await database.put('phone', phone.settings, 'settings');
  await database.put('meta', meta.device, 'device');
  await database.put('meta', meta.slot0, ['slot', 0]);
  database.close();
}

async function leaveLines(version: number): Promise<void> {
  const folder = await navigator.storage.getDirectory();
  const file = await folder.getFileHandle(`${name}-0.lines`, { create: true });
  const writable = await file.createWritable();
  await writable.write(kept(`lines-${version}.lines`));
  await writable.close();
}

/** What a builder finds in the shop. */
async function factsOf(store: Store): Promise<unknown> {
  const builds = (await store.summaries({ of: 'build', limit: 9 })).summaries;
  const ovens = (await store.summaries({ of: 'ovenLoad', limit: 9 })).summaries;
  const entries = (await Promise.all([...builds, ...ovens].map((s) => store.entries(s.subject)))).flat();
  const { unreadable, ...counts } = await store.counts();
  return {
    builds: builds.flatMap((s) =>
      s.of === 'build' ? [[s.name, s.number, s.cups, s.curedMass, s.resinMixed, s.outcome]] : [],
    ),
    ovens: ovens.flatMap((s) => (s.of === 'ovenLoad' ? [[s.readings, s.highestRead]] : [])),
    open: (await store.openSubjects()).length,
    plans: (await store.heads('plan')).map((r) => r.body.name).sort(),
    readable: entries.filter((e) => e.ok).length,
    unreadable,
    counts: [counts.builds, counts.ovenLoads, counts.entries, counts.revisions],
  };
}

const facts = {
  builds: [
    ['Lower mast', 2, 0, undefined, undefined, undefined],
    ['Boom', 1, 2, 0.2976, expect.closeTo(0.2156, 6), 'good'],
  ],
  ovens: [[42, expect.closeTo(340.15, 6)]],
  open: 1,
  plans: ['Boom', 'Lower mast', 'Sprit', 'Upper mast'],
  readable: 201,
  unreadable: 0,
  counts: [2, 1, 201, 7],
};

describe('what an earlier version of the app left', () => {
  it('is kept here for every version there was', () => {
    const versions = migrations.map((m) => m.number);
    for (const version of versions) {
      expect(recordsOf(version).length).toBeGreaterThan(100);
      expect(kept(`lines-${version}.lines`)).not.toBe('');
      expect(beside(version).summaries).toHaveLength(3);
    }
    const known = new Set(versions.flatMap(recordsOf).map(({ record, v }) => `${record} ${v}`));
    const current = {
      build: buildVersion,
      ovenLoad: ovenLoadVersion,
      revision: revisionVersion,
      entry: entryVersion,
    };
    for (const [record, last] of Object.entries(current)) {
      for (let v = 1; v <= last; v++) expect(known).toContain(`${record} ${v}`);
    }
    expect(backupVersion).toBe(1);
  });

  for (const { number: version } of migrations) {
    it(`opens as a database of version ${version}, with the same facts and this phone's own settings`, async () => {
      await leaveDatabase(version);
      const store = await open(summarize);
      expect(await factsOf(store)).toEqual(facts);
      expect(await store.phoneValue('settings')).toMatchObject({ units: 'inchPound', theme: 'dark' });
      expect(store.device).toBe(beside(version).meta.device);
    });

    it(`comes back from its lines of version ${version} alone, with the same facts`, async () => {
      await leaveLines(version);
      expect(await factsOf(await open(summarize))).toEqual(facts);
    });

    it(`is restored from its backup of version ${version}, with the same facts`, async () => {
      const checked = await check(kept(`backup-${version}.txt`));
      if (!checked.ok) throw new Error(checked.detail);
      const store = await open(summarize);
      expect(await store.restore(checked)).toMatchObject({ ok: true, conflicts: [] });
      expect(await factsOf(store)).toEqual(facts);
    });
  }
});
