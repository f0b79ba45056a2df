// Draws the README's pictures from the demo shop: npm run demo:pictures
import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright';
import { findChromium, QUIET_FLAGS } from '../scripts/ensure-chromium.mjs';
import { serve } from '../scripts/serve.mjs';

const folder = fileURLToPath(new URL('pictures/', import.meta.url));
const phone = { viewport: { width: 360, height: 740 }, deviceScaleFactor: 2, isMobile: true, hasTouch: true };

/** @type {import('node:http').Server} */
const server = serve(fileURLToPath(new URL('../dist', import.meta.url)));
await new Promise((ready) => server.listen(0, '127.0.0.1', () => ready(undefined)));
const address = server.address();
if (typeof address !== 'object' || address === null) throw new Error('the server has no port');
const root = `http://localhost:${address.port}/`;

const browser = await chromium.launch({ executablePath: await findChromium(), args: QUIET_FLAGS });
const page = await (await browser.newContext(phone)).newPage();

/** @param {string} to */
async function open(to) {
  await page.goto(`${root}#${to}`);
  await page.waitForFunction((hash) => location.hash === hash, `#${to}`);
  await page.waitForTimeout(500);
}

/** @param {string} name */
const draw = (name) => page.screenshot({ path: `${folder}${name}.png` });

/** Where the first line of the screen that says `words` leads; the strip of clocks says them too. @param {string} words */
async function linkOf(words) {
  const line = page.getByRole('main').getByRole('link', { name: words }).first();
  const href = await line.getAttribute('href');
  if (!href) throw new Error(`no line says ${words}`);
  return href.replace('#', '');
}

mkdirSync(folder, { recursive: true });
await page.goto(root);
await page.getByRole('button', { name: 'Load the demo shop' }).tap();
await page.getByText('Demo shop, not your record').waitFor();
await page.getByRole('heading', { name: 'On the bench' }).tap();
await draw('bench');

const boom = await linkOf('Boom no. 2');
const oven = await linkOf('Oven load 5');
const cutting = await linkOf('Lower mast no. 2');
await open(cutting);
await draw('route');
await open(boom.replace('/build/', '/mix/'));
await draw('mix');
await open('/clocks');
await draw('clocks');
await open(oven);
await page.evaluate(() => scrollTo(0, 0));
await draw('oven');
await open('/plans');
await open(await linkOf('Lower mast'));
await draw('plan');
await open('/plan/demo-plan-lower-mast/along');
await page.locator('.along-plot').evaluate((plot) => plot.scrollIntoView({ block: 'center' }));
await draw('along');
await open('/plan/demo-plan-lower-mast/loads/margins');
await draw('margins');
await open('/plan/demo-plan-lower-mast/loads/wanted');
await page.getByRole('img', { name: /^Wanted plies/ }).waitFor();
await draw('wanted');
const wall = 'demo-plan-lower-mast/wall/demo-lower-skin';
await open(`/plan/${wall}`);
await page.locator('.station-handle').nth(1).tap({ force: true });
await page.evaluate(() => scrollTo(0, 0));
await draw('wall');
await open('/plan/demo-plan-lower-mast/cutting');
await page.locator('svg.nest').first().waitFor();
await page
  .locator('svg.nest')
  .first()
  .evaluate((nest) => nest.scrollIntoView({ block: 'center' }));
await draw('nest');
await open('/record');
await draw('record');
await open('/compare/choose');
await page.getByRole('button', { name: 'All weighed' }).tap();
await page.getByRole('button', { name: /side by side/ }).tap();
await page.waitForTimeout(800);
await draw('compare');
await open('/ledger');
await open(await linkOf('Canoe spar set'));
await draw('ledger');
await open('/record');
await open(await linkOf('Sprit no. 1'));
await draw('weighed');
await page.evaluate(() => {
  document.documentElement.dataset.theme = 'dark';
});
await draw('dark');

await browser.close();
server.close();
