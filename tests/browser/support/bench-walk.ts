import { expect, type Page } from '@playwright/test';
import { minutes } from '../../app/shop-of.ts';
import { benchTimers, busyShop, seenAt } from './bench-shop.ts';
import { seed } from './seed.ts';

/** A screen of the bench as a thumb meets it. */
export interface BenchScreen {
  name: string;
  at: string;
  /** What is pressed there before it stands as meant. */
  open?: (page: Page) => Promise<void>;
}

const press =
  (...names: (string | RegExp)[]) =>
  async (page: Page) => {
    for (const name of names) {
      await page.getByRole('button', { name, exact: true }).last().click();
    }
  };

const type = (figures: string) => async (page: Page) => {
  const keys = page.locator('.keypad').last();
  for (const key of figures) await keys.getByRole('button', { name: key, exact: true }).click();
};

const then =
  (...does: ((page: Page) => Promise<void>)[]) =>
  async (page: Page) => {
    for (const one of does) await one(page);
  };

/** Every screen of the job between the first cloth on the scale and the weighed tube. */
export const benchScreens: readonly BenchScreen[] = [
  { name: 'bench', at: '/' },
  { name: 'timer', at: '/timer' },
  { name: 'timer, keypad', at: '/timer', open: press('Another length') },
  { name: 'route, mandrel prep', at: '/build/dry' },
  { name: 'route, ticked and to be undone', at: '/build/wrap', open: tickNext },
  { name: 'stages sheet', at: '/build/dry', open: press('All stages') },
  { name: 'note sheet', at: '/build/dry', open: press('Note or photo') },
  { name: 'step sheet', at: '/build/dry', open: ticked },
  { name: 'route, set-up', at: '/build/set-up' },
  { name: 'surroundings, keypad', at: '/build/set-up', open: press('Read the surroundings') },
  {
    name: 'surroundings, keypad, wrong',
    at: '/build/set-up',
    open: then(press('Read the surroundings'), type('999')),
  },
  { name: 'route, mix', at: '/build/plan' },
  { name: 'films sheet', at: '/build/plan', open: press('Count the films in') },
  { name: 'cut list', at: '/cut/mast-build' },
  { name: 'weigh a piece, keypad', at: '/cut/mast-build/weigh/skin' },
  { name: 'weigh a piece, keypad, doubtful', at: '/cut/mast-build/weigh/skin', open: type('9') },
  { name: 'mix, what to mix', at: '/mix/plan' },
  { name: 'mix, when', at: '/mix/plan/times' },
  { name: 'pour resin, keypad', at: '/mix/pour' },
  { name: 'pour resin, keypad, short', at: '/mix/pour', open: type('88') },
  { name: 'scale sheet', at: '/mix/pour', open: press('The scale') },
  { name: 'contact', at: '/mix/contact' },
  { name: 'pour hardener, keypad', at: '/mix/hardener' },
  { name: 'pour hardener, keypad, over', at: '/mix/hardener', open: type('150') },
  { name: 'stir and pour out', at: '/mix/mixed' },
  { name: 'route, wet-out', at: '/build/wet' },
  { name: 'weights', at: '/weigh/wet' },
  { name: 'weigh wet cloth, keypad', at: '/weigh/wet/wetCloth' },
  { name: 'weigh wet cloth, keypad, doubtful', at: '/weigh/wet/wetCloth', open: type('9') },
  { name: 'route, wrap', at: '/build/wrap' },
  { name: 'edges', at: '/edge/mast-build' },
  { name: 'read an edge, keypad', at: '/edge/mast-build', open: firstEdge },
  { name: 'route, tape', at: '/build/taped' },
  { name: 'tape', at: '/tape/taped' },
  { name: 'set up the oven', at: '/oven/new' },
  { name: 'oven', at: '/oven/oven-1' },
  { name: 'oven, logged and to be undone', at: '/oven/oven-1', open: logChip },
  { name: 'oven, other reading, keypad', at: '/oven/oven-1', open: press('Other') },
  { name: 'oven, other reading, keypad, wrong', at: '/oven/oven-1', open: then(press('Other'), type('999')) },
  { name: 'oven, time of a reading', at: '/oven/oven-1', open: press('Time: now') },
  { name: 'demold', at: '/demold/cured' },
  { name: 'mandrel heat, keypad', at: '/demold/cured', open: press('The mandrel reads something else') },
  { name: 'route, weigh', at: '/build/cured' },
  { name: 'weights, cured', at: '/weigh/cured' },
  { name: 'weigh the tube, keypad', at: '/weigh/cured/cured' },
  { name: 'measure', at: '/measure/cured' },
  { name: 'measure, keypad', at: '/measure/cured', open: press(/^Read it at/) },
  { name: 'measure, keypad, wrong', at: '/measure/cured', open: then(press(/^Read it at/), type('9')) },
  { name: 'proof test', at: '/proof/cured' },
  { name: 'proof test, keypad', at: '/proof/cured', open: press(/^Ready: read/) },
  { name: 'proof test, keypad, wrong', at: '/proof/cured', open: type('99999999') },
  { name: 'gave way sheet', at: '/proof/cured', open: gaveWay },
  { name: 'squeeze an end', at: '/proof/cured/squeeze' },
  { name: 'squeeze an end, keypad', at: '/proof/cured/squeeze', open: press(/^Squeezed: type/) },
  { name: 'judge sheet', at: '/build/trimmed', open: press('Judge the tube') },
  { name: 'clocks', at: '/clocks' },
  { name: 'one clock in front', at: '/clocks', open: (page) => page.locator('.clock-tile').first().click() },
  { name: 'wipe lock', at: '/', open: press(/^Wipe glass/) },
];

async function tickNext(page: Page): Promise<void> {
  await page.locator('.action').last().click();
  await page.getByRole('button', { name: 'Undo', exact: true }).waitFor();
}

async function logChip(page: Page): Promise<void> {
  await page.getByRole('group', { name: 'What it reads' }).getByRole('button').first().click();
  await page.locator('.action').last().click();
  await page.getByRole('button', { name: /^Undo: / }).waitFor();
}

async function ticked(page: Page): Promise<void> {
  await page.locator('.step-done .step-press').first().click();
}

/** The readings before stay typed from the screens before this one. */
async function gaveWay(page: Page): Promise<void> {
  const key = page.getByRole('button', { name: 'It gave way', exact: true });
  for (let i = 0; i < 3 && !(await key.isVisible()); i++) {
    await type('9')(page);
    await page.locator('.action').last().click();
    await page.waitForTimeout(400);
  }
  await key.click();
}

async function firstEdge(page: Page): Promise<void> {
  await page.locator('.action').last().click();
  await page.locator('.keypad').waitFor();
}

/** The app on a busy day's shop, half an hour after it began. */
export async function openShop(page: Page): Promise<void> {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.clock.install({ time: minutes(seenAt) });
  await page.goto('./');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await seed(page, [...busyShop(), ...benchTimers([4])]);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('On the bench');
}

/** Another phone, once the screen has come to rest on it: what is pinned finds its place some frames later. */
export async function turnInto(page: Page, size: { width: number; height: number }): Promise<void> {
  await page.setViewportSize(size);
  await page.evaluate(async () => {
    // A test's own clock has frames of its own; this is told once the browser has really laid one out.
    const nextFrame = () =>
      new Promise<void>((drawn) => {
        const seen = new IntersectionObserver(() => {
          seen.disconnect();
          drawn();
        });
        seen.observe(document.documentElement);
      });
    const places = () =>
      [...document.querySelectorAll('a, button, input, main')]
        .map((part) => Object.values(part.getBoundingClientRect().toJSON()).join())
        .join(';');
    let before = '';
    for (let same = 0, frame = 0; same < 4; frame++) {
      if (frame > 300) throw new Error('the screen does not come to rest');
      await nextFrame();
      const now = places();
      same = now === before ? same + 1 : 0;
      before = now;
    }
  });
}

/** ms; a press can be taken back for ten seconds */
const undoIsOver = 11_000;

/** To a screen of the bench, afresh, whatever stands open. */
export async function goToBench(page: Page, { at, open }: BenchScreen): Promise<void> {
  const toUndo = page.getByRole('button', { name: /^Undo/ });
  if (await toUndo.count()) {
    await page.clock.runFor(undoIsOver);
    await expect(toUndo).toHaveCount(0);
  }
  await page.evaluate(
    (hash) =>
      new Promise<void>((drawn) => {
        const twoFrames = () => requestAnimationFrame(() => requestAnimationFrame(() => drawn()));
        const there = () => {
          if (location.hash === `#${hash}`) return twoFrames();
          addEventListener('hashchange', twoFrames, { once: true });
          location.hash = hash;
        };
        // Through another screen, since the same address again would change nothing.
        if (location.hash === '#/settings') return there();
        addEventListener('hashchange', () => requestAnimationFrame(there), { once: true });
        location.hash = '/settings';
      }),
    at,
  );
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await open?.(page);
}
