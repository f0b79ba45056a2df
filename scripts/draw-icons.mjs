// Draws the PNG icons from the two SVG files in public/: node scripts/draw-icons.mjs
import { readFileSync } from 'node:fs';
import { chromium } from '@playwright/test';
import { ensureChromium, QUIET_FLAGS } from './ensure-chromium.mjs';

const ICONS = [
  { from: 'icon.svg', to: 'icon-192.png', size: 192 },
  { from: 'icon.svg', to: 'icon-512.png', size: 512 },
  { from: 'icon-maskable.svg', to: 'icon-maskable-512.png', size: 512 },
  { from: 'icon-maskable.svg', to: 'apple-touch-icon.png', size: 180 },
];

const folder = new URL('../public/', import.meta.url);
const browser = await chromium.launch({ executablePath: await ensureChromium(), args: QUIET_FLAGS });
for (const { from, to, size } of ICONS) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  const svg = readFileSync(new URL(from, folder), 'utf8');
  await page.setContent(
    `<style>body{margin:0}svg{display:block;width:${size}px;height:${size}px}</style>${svg}`,
  );
  await page.screenshot({ path: new URL(to, folder).pathname, omitBackground: true });
  await page.close();
}
await browser.close();
