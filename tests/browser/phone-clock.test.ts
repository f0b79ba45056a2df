import { expect, type Page, test } from '@playwright/test';
import { minutes } from '../app/shop-of.ts';
import { follow, heading, loosely, type Phone, phoneWithOwnClock, press } from './support/hands.ts';
import { startTube, tickLine } from './support/job.ts';

test.use({ actionTimeout: 10_000 });

const day = 24 * 60;
const notices = (page: Page) => page.getByRole('region', { name: 'Notices' });
const strip = (page: Page) => page.getByRole('complementary', { name: 'Running clocks' });
const line = (page: Page, name: RegExp) => page.getByRole('checkbox', { name });

async function midBuild(page: Page): Promise<Phone> {
  await page.clock.install({ time: minutes(0) });
  await page.goto('./');
  const phone = phoneWithOwnClock(page);
  await expect(heading(phone)).toHaveText('Your bench is clear');
  await startTube(phone);
  await tickLine(phone, 'Mandrel picked');
  return phone;
}

/** Somebody sets the phone's clock; its next second comes. */
async function setClock(page: Page, minute: number): Promise<void> {
  await page.clock.setSystemTime(minutes(minute));
  await page.clock.runFor(2000);
}

interface Written {
  id: string;
  recordedAt: number;
  kind: string;
}

/** All entries in the order in which they were written. */
const written = (page: Page): Promise<Written[]> =>
  page.evaluate(async () => {
    const opened = indexedDB.open('tubewright');
    await new Promise((done) => (opened.onsuccess = done));
    const all = opened.result.transaction('entries').objectStore('entries').getAll();
    await new Promise((done) => (all.onsuccess = done));
    opened.result.close();
    return all.result;
  });

test('with the clock set back a day in mid build, the phone says so, an undo holds, and later lines stay the later ones', async ({
  page,
}) => {
  const phone = await midBuild(page);
  await setClock(page, -day);
  await expect(notices(page)).toContainText(
    /clock was set back: it reads .* and the last line was written at/,
  );
  await press(phone, 'Undo');
  await expect(line(page, /^Mandrel picked/)).not.toBeChecked();
  await tickLine(phone, 'Rolled on the bench');
  const entries = await written(page);
  expect(entries.map((e) => e.kind)).toEqual(['tick', 'retracted', 'tick']);
  expect([...entries].sort((a, b) => a.recordedAt - b.recordedAt)).toEqual(entries);

  await page.getByRole('button', { name: 'Seen' }).tap();
  await expect(notices(page)).not.toContainText('set back');
  await page.reload();
  await expect(line(page, /^Mandrel picked/)).not.toBeChecked();
  await expect(line(page, /^Rolled on the bench/)).toBeChecked();
  await expect(notices(page)).not.toContainText('set back');
});

test('with the clock put on a year, the phone says so, and set right again its clocks are right', async ({
  page,
}) => {
  const phone = await midBuild(page);
  await follow(phone, 'Bench');
  await follow(phone, 'Timer');
  await press(phone, '10 min');
  await expect(strip(page)).toContainText(/(10:00|9:5\d) left/);
  await setClock(page, 365 * day + 15);
  await expect(notices(page)).toContainText(
    loosely('This phone’s clock jumped 365 days on while you looked'),
  );
  await expect(strip(page)).toContainText(loosely('ended 365 days ago'));
  await setClock(page, 2);
  await expect(strip(page)).toContainText(/(8:0\d|7:5\d) left/);
  await page.reload();
  await expect(strip(page)).toContainText(/(8:0\d|7:5\d) left/);
});

test('through the night the clocks go back, a wait lasts as long as it lasts, and each line keeps the time it was lived at', async ({
  page,
}) => {
  const phone = await page.context().newCDPSession(page);
  const zone = (timezoneId: string) => phone.send('Emulation.setTimezoneOverride', { timezoneId });
  await zone('America/New_York');
  // 1:30 AM daylight time; half an hour later it is 1 AM again.
  await page.clock.install({ time: Date.UTC(2026, 10, 1, 5, 30) });
  await page.goto('./');
  const own = phoneWithOwnClock(page);
  await expect(heading(own)).toHaveText('Your bench is clear');
  await startTube(own);
  await tickLine(own, 'Mandrel picked');
  const route = page.url();
  await follow(own, 'Bench');
  await follow(own, 'Timer');
  await press(own, '60 min');
  await expect(strip(page)).toContainText(/Ends 1:3\d\sAM/);
  await page.clock.fastForward('40:00');
  await expect(strip(page)).toContainText(/(20:00|19:[345]\d) left/);
  await page.goto(route);
  await tickLine(own, 'Rolled on the bench');
  // And on to another continent.
  await zone('Europe/Berlin');
  await page.goto(route.replace('/build/', '/record/build/'));
  await page.reload();
  const lines = page.getByRole('region', { name: 'Time line' }).getByRole('listitem');
  await expect(lines).toHaveText([/1:3\d\sAM/, /1:1\d\sAM/]);
  await expect(strip(page)).toContainText(/(20:00|19:[0-5]\d) left/);
});
