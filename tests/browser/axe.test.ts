import { readdirSync, readFileSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';

test.describe.configure({ mode: 'parallel' });

/** Every address of the app, as its routes have them: a new screen is checked without anybody thinking of it. */
const patterns = [
  '/',
  ...readdirSync('src/app', { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('/routes.ts'))
    .flatMap((file) =>
      Array.from(readFileSync(`src/app/${file}`, 'utf8').matchAll(/pattern: '([^']+)'/g), ([, p]) =>
        String(p),
      ),
    ),
];

/** What the demo shop has for the places in those addresses. */
interface Shop {
  openBuilds: string[];
  closedBuild: string;
  openLoad: string;
  closedLoad: string;
  plan: string;
  piece: string;
  /** A line of the closed build */
  line: string;
}

async function lookRound(page: Page): Promise<Shop> {
  return page.evaluate(async () => {
    const opened = indexedDB.open('tubewright-demo');
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      opened.onsuccess = () => resolve(opened.result);
      opened.onerror = () => reject(opened.error);
    });
    interface Kept {
      id: string;
      record: string;
      kind: string;
      subject: string;
      type: string;
      doc: string;
      body: { wall?: { pieces: { id: string }[] } };
    }
    const all = (store: string) =>
      new Promise<Kept[]>((resolve) => {
        const asked = database.transaction(store).objectStore(store).getAll();
        asked.onsuccess = () => resolve(asked.result);
      });
    const [headers, entries, revisions] = await Promise.all(['headers', 'entries', 'revisions'].map(all));
    database.close();
    if (!headers || !entries || !revisions) throw new Error('the demo has no records');
    const closed = new Set(entries.filter((e) => e.kind === 'closed').map((e) => e.subject));
    const ids = (record: string, isClosed: boolean) =>
      headers.filter((h) => h.record === record && closed.has(h.id) === isClosed).map((h) => h.id);
    const plans = revisions.filter((r) => r.type === 'plan');
    const plan = plans.find((p) => p.body.wall) ?? plans[0];
    const [closedBuild = ''] = ids('build', true);
    return {
      openBuilds: ids('build', false),
      closedBuild,
      openLoad: ids('ovenLoad', false)[0] ?? '',
      closedLoad: ids('ovenLoad', true)[0] ?? '',
      plan: plan?.doc ?? '',
      piece: plan?.body.wall?.pieces[0]?.id ?? 'none',
      line: entries.find((e) => e.subject === closedBuild && e.kind === 'weight')?.id ?? '',
    };
  });
}

const shelfItems = {
  cloth: 'starter-cloth-carbon-twill-200',
  resin: 'starter-resin-laminating-slow',
  release: 'starter-release-wax-pva',
};

const loadsOfMast = {
  doc: 'demo-plan-lower-mast',
  case: 'demo-gust',
  load: 'demo-sail',
  support: 'demo-partners',
  fitting: 'new',
};

/** The addresses of one pattern that are worth a look, with the demo in them. */
function addressesOf(pattern: string, shop: Shop): string[] {
  const fill = (values: Record<string, string>) =>
    pattern.replace(/:(\w+)/g, (_, name: string) => values[name] ?? 'none');
  const [first = ''] = shop.openBuilds;
  if (pattern === '/build/:id') return [...shop.openBuilds, shop.closedBuild].map((id) => fill({ id }));
  if (pattern === '/mix/:id') return shop.openBuilds.map((id) => fill({ id }));
  if (pattern.includes('oven/:id')) return [shop.openLoad, shop.closedLoad].map((id) => fill({ id }));
  if (pattern === '/record/build/:id') return [shop.closedBuild, first].map((id) => fill({ id }));
  if (pattern.startsWith('/record/fix')) return [fill({ subject: shop.closedBuild, root: shop.line })];
  if (pattern.startsWith('/shelf/checklist'))
    return [fill({ doc: 'starter-checklist-film-sleeve', stage: 'mix' })];
  if (pattern.startsWith('/shelf/cloth')) return [fill({ doc: shelfItems.cloth })];
  if (pattern.startsWith('/shelf/:type'))
    return Object.entries(shelfItems).map(([type, doc]) => fill({ type, doc }));
  // What the ledger, the lots and a choice of builds hold, not that they are empty.
  if (pattern.startsWith('/ledger/')) return [fill({ doc: 'demo-structure-spars', part: 'sprit' })];
  if (pattern.startsWith('/plan/:doc/loads')) return [fill(loadsOfMast)];
  if (pattern.startsWith('/lots/'))
    return [fill({ doc: 'demo-lot-plain-2', of: 'cloth', item: shelfItems.cloth, id: first })];
  const { plan, piece } = shop;
  return [
    fill({ id: first, doc: plan, plan, piece, view: 'cups', what: 'cured', stage: 'mix-1', name: 'wall' }),
  ];
}

async function openDemo(page: Page): Promise<Shop> {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.goto('./');
  await page.getByRole('button', { name: 'Load the demo shop' }).tap();
  await expect(page.getByRole('link', { name: 'Leave' })).toBeVisible({ timeout: 30_000 });
  await goTo(page, '/compare/choose');
  await page.getByRole('button', { name: 'All weighed' }).tap();
  await expect(page.getByRole('button', { name: /side by side/ })).toBeVisible();
  return lookRound(page);
}

/** To an address, and until its own screen stands there. */
async function goTo(page: Page, address: string): Promise<void> {
  await page.evaluate(
    (hash) =>
      new Promise<void>((drawn) => {
        if (location.hash === `#${hash}`) drawn();
        const twoFrames = () => requestAnimationFrame(() => requestAnimationFrame(() => drawn()));
        addEventListener('hashchange', twoFrames, { once: true });
        location.hash = hash;
      }),
    address,
  );
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
}

interface Found {
  address: string;
  rule: string;
  where: string[];
}

/** Leaves the checker in the page, where it stays while only the address changes. */
async function bringChecker(page: Page): Promise<void> {
  await new AxeBuilder({ page }).setLegacyMode().withRules('document-title').analyze();
}

async function violationsOf(page: Page, address: string, only?: string[]): Promise<Found[]> {
  await goTo(page, address);
  const found = await page.evaluate(async (rules) => {
    interface Checker {
      run: (options: object) => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }>;
    }
    // What scrolls under the actions at the foot has its size all the same.
    for (const element of document.querySelectorAll<HTMLElement>('#app *')) {
      if (getComputedStyle(element).position === 'sticky') element.style.position = 'static';
    }
    const checker = Reflect.get(globalThis, 'axe') as Checker;
    const stricter = { 'color-contrast-enhanced': { enabled: true }, 'target-size': { enabled: true } };
    const { violations } = await checker.run({
      resultTypes: ['violations'],
      ...(rules ? { runOnly: { type: 'rule', values: rules } } : { rules: stricter }),
    });
    return violations.map((v) => ({ rule: v.id, where: v.nodes.map((n) => n.html.slice(0, 160)) }));
  }, only);
  return found.map((f) => ({ address, ...f }));
}

async function violationsOfAll(page: Page, shop: Shop, only?: string[]): Promise<Found[]> {
  await bringChecker(page);
  const found: Found[] = [];
  for (const address of patterns.flatMap((p) => addressesOf(p, shop))) {
    found.push(...(await violationsOf(page, address, only)));
  }
  return found;
}

test('no screen of the demo shop has a fault of access', async ({ page }) => {
  test.setTimeout(180_000);
  const shop = await openDemo(page);
  expect(await violationsOfAll(page, shop)).toEqual([]);
});

test('in the dark every word of it keeps its contrast', async ({ page }) => {
  test.setTimeout(180_000);
  const shop = await openDemo(page);
  const paper = () => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  const light = await paper();
  await page.evaluate(() => {
    document.documentElement.dataset.theme = 'dark';
  });
  expect(await paper()).not.toBe(light);
  expect(await violationsOfAll(page, shop, ['color-contrast', 'color-contrast-enhanced'])).toEqual([]);
});
