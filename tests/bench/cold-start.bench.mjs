// Cold start with no network, processor slowed 4 times, against a bare Preact page on the same machine; the browser is
// relaunched on its profile for every start: node tests/bench/cold-start.bench.mjs [starts, 7] [builds of history, 300]
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { build, runnerImport } from 'vite';
import { figure, median } from './figure.mjs';
import { close, listen, oneStart, slowed, visit } from './start-page.mjs';

const starts = Number(process.argv[2] ?? 7);
const builds = Number(process.argv[3] ?? 300);
const root = resolve(import.meta.dirname, '../..');

/** The least a page of this stack can do: a script, a worker that keeps it, one component, one record read. */
async function bareSite() {
  const source = join(root, 'node_modules/.cache/bare-page');
  await mkdir(source, { recursive: true });
  await writeFile(
    join(source, 'index.html'),
    '<!doctype html><div id="app"></div><script type="module" src="./main.js"></script>',
  );
  await writeFile(
    join(source, 'main.js'),
    `import { h, render } from 'preact';
import { signal } from '@preact/signals';
import { openDB } from 'idb';
const db = await openDB('bare', 1, { upgrade: (d) => { d.createObjectStore('s').put('Bench', 'k'); } });
const title = signal(await db.get('s', 'k'));
render(h(() => h('h1', null, title.value)), document.getElementById('app'));
navigator.serviceWorker.register('./worker.js');`,
  );
  const outDir = join(source, 'dist');
  await build({
    configFile: false,
    logLevel: 'warn',
    root: source,
    base: './',
    build: { target: 'es2022', outDir, emptyOutDir: true },
  });
  await writeFile(
    join(outDir, 'worker.js'),
    `addEventListener('install', (e) => { skipWaiting(); });
addEventListener('activate', (e) => e.waitUntil(clients.claim()));
addEventListener('fetch', (e) => e.respondWith(caches.open('bare').then(async (c) =>
  (await c.match(e.request)) ?? fetch(e.request).then((r) => { c.put(e.request, r.clone()); return r; }))));`,
  );
  return outDir;
}

/** One start of each in turn, so that what else the machine does falls on all of them alike. */
async function measure(sites) {
  for (let i = 0; i < starts; i++)
    for (const site of sites) site.times.push(await oneStart(site.profile, site.address));
  for (const { what, times } of sites) {
    const ready = times.map((t) => t.ready);
    console.log(
      `  ${what}: first screen ${median(ready).toFixed(0)} ms (${Math.min(...ready).toFixed(0)} to ${Math.max(...ready).toFixed(0)}), first paint ${median(times.map((t) => t.paint)).toFixed(0)} ms, median of ${starts}`,
    );
  }
}

/** Copies of the demo's closed builds under new ids, written as a backup would be. */
async function fill(page, count) {
  const { module } = await runnerImport(join(root, 'demo/make-shop.ts'), { configFile: false, root });
  const records = module.demoShop(Date.now() - 86_400_000);
  const header = records.find(
    (r) => r.record === 'build' && records.some((e) => e.subject === r.id && e.kind === 'closed'),
  );
  const entries = records.filter((r) => r.subject === header.id);
  await page.evaluate(
    async ({ header, entries, count }) => {
      const opened = indexedDB.open('tubewright');
      const db = await new Promise((done) => (opened.onsuccess = () => done(opened.result)));
      for (let from = 0; from < count; from += 50) {
        const tx = db.transaction(['headers', 'entries', 'meta'], 'readwrite');
        for (let i = from; i < Math.min(count, from + 50); i++) {
          const subject = `${header.id}-${i}`;
          tx.objectStore('headers').put({
            ...header,
            id: subject,
            number: i + 1,
            startedAt: header.startedAt - i * 3_600_000,
          });
          for (const e of entries)
            tx.objectStore('entries').put({
              ...e,
              id: `${e.id}-${i}`,
              subject,
              ...(e.corrects && { corrects: `${e.corrects}-${i}` }),
            });
          tx.objectStore('meta').put(1, ['dropped', subject]);
        }
        await new Promise((done) => (tx.oncomplete = done));
      }
      db.close();
    },
    { header, entries, count },
  );
  return entries.length * count;
}

const profiles = [];
async function newProfile() {
  const profile = await mkdtemp(join(tmpdir(), 'tubewright-cold-'));
  profiles.push(profile);
  return profile;
}

/** The page in its browser's cache, with nobody to ask from here on. */
async function siteOf(what, folder, prepare) {
  const { server, address } = await listen(folder);
  const profile = await newProfile();
  await visit(profile, address);
  if (prepare) await visit(profile, address, prepare);
  // The first opening after it was filled makes the summaries; it is not a cold start like the others.
  if (prepare) await visit(profile, address);
  await close(server);
  return { what, profile, address, times: [] };
}

/** How many times as long: the median of the starts, each against the one beside it. */
const times = (site, other) => median(site.times.map((t, i) => t.ready / other.times[i].ready)).toFixed(2);

try {
  const bare = await siteOf('bare page of the same stack', await bareSite());
  const empty = await siteOf('empty shop', join(root, 'dist'));
  let entries = 0;
  const full = await siteOf(`${builds} builds of history`, join(root, 'dist'), async (page) => {
    entries = await fill(page, builds);
  });
  console.log(`offline, ${slowed}x slowed`);
  await measure([bare, empty, full]);
  figure('cold start offline, empty shop', `${times(empty, bare)} times a bare page`, '1.5 or less');
  figure(
    `cold start offline, ${builds} builds and ${entries} entries closed`,
    `${times(full, empty)} times the empty shop`,
    '1.1 or less',
  );
} finally {
  for (const profile of profiles)
    await rm(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
}
