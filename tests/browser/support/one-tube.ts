import type { Page } from '@playwright/test';
import { type Event, entriesOf, minutes, ticksOf } from '../../app/shop-of.ts';
import { buildHeader } from '../../record/arbitraries.ts';
import { seed } from './seed.ts';

/** All that comes before the first cup. */
export const before = ['mandrelPrep', 'release', 'cut', 'setUp'].flatMap((stage) => ticksOf(stage, 0));

/** At an address of the app, with one tube to which this happened. */
export async function openAt(
  page: Page,
  at: string,
  { minute, events }: { minute: number; events: readonly Event[] },
) {
  await page.clock.install({ time: minutes(minute) });
  await page.goto(`./#${at}`);
  await page.locator('h1').waitFor();
  await seed(page, [buildHeader, ...entriesOf(buildHeader.id, events)]);
  await page.locator('h1').waitFor();
  await page.waitForFunction(() => document.querySelector('h1')?.textContent !== 'This tube is not here');
}
