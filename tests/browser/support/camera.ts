import { mkdtemp, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium, type Page } from '@playwright/test';
import { findChromium, QUIET_FLAGS } from '../../../scripts/ensure-chromium.mjs';

const [width, height] = [640, 480];

/** What a camera sees that looks at drawn codes: a gray film, one code a picture, a little off the middle. */
function film(codes: readonly { size: number; path: string }[]): Buffer {
  const pictures = codes.map(({ size, path }) => {
    const luma = Buffer.alloc(width * height, 120);
    const px = Math.floor((height - 12) / size);
    const [left, top] = [Math.floor((width - size * px) / 2) + 7, Math.floor((height - size * px) / 2) - 2];
    const fill = (x: number, y: number, value: number) => {
      for (let row = 0; row < px; row++) {
        const at = (top + y * px + row) * width + left + x * px;
        luma.fill(value, at, at + px);
      }
    };
    for (let y = 0; y < size; y++) for (let x = 0; x < size; x++) fill(x, y, 225);
    for (const [, x, y] of path.matchAll(/M(\d+) (\d+)h1v1h-1z/g)) fill(Number(x), Number(y), 30);
    return Buffer.concat([Buffer.from('FRAME\n'), luma, Buffer.alloc((width * height) / 2, 128)]);
  });
  return Buffer.concat([Buffer.from(`YUV4MPEG2 W${width} H${height} F4:1 Ip A1:1 C420mpeg2\n`), ...pictures]);
}

/** The code on the screen, module by module. */
export async function drawnCode(page: Page): Promise<{ size: number; path: string }> {
  const picture = page.locator('.code-picture');
  const [box, path] = await Promise.all([
    picture.getAttribute('viewBox'),
    picture.locator('path').getAttribute('d'),
  ]);
  return { size: Number(box?.split(' ')[2]), path: path ?? '' };
}

/** A phone whose camera looks at these codes, over and over. */
export async function phoneThatSees(
  codes: readonly { size: number; path: string }[],
  baseURL: string,
): Promise<{ page: Page; context: BrowserContext }> {
  const folder = await mkdtemp(join(tmpdir(), 'sees-'));
  await writeFile(join(folder, 'film.y4m'), film(codes));
  const executablePath = await findChromium();
  const context = await chromium.launchPersistentContext(join(folder, 'profile'), {
    ...(executablePath ? { executablePath } : {}),
    args: [
      ...QUIET_FLAGS,
      '--use-fake-ui-for-media-stream',
      '--use-fake-device-for-media-stream',
      `--use-file-for-fake-video-capture=${join(folder, 'film.y4m')}`,
    ],
    baseURL,
    viewport: { width: 360, height: 740 },
    hasTouch: true,
    isMobile: true,
    deviceScaleFactor: 2,
    locale: 'en-US',
  });
  return { context, page: context.pages()[0] ?? (await context.newPage()) };
}
