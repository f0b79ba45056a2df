import { expect, type Page, test } from '@playwright/test';
import { heading, type Phone, phoneOnRealTime, press } from './support/hands.ts';
import { startTube, stepsOf, tick } from './support/job.ts';
import type { KillablePhone } from './support/killable-phone.ts';
import { appIsKept } from './support/offline.ts';
import { type Host, startHost } from './support/own-host.ts';
import { SmallDisk, whyNoSmallDisk } from './support/small-disk.ts';

test.use({ serviceWorkers: 'allow' });

const why = whyNoSmallDisk();
test.skip(why !== undefined, why);

let host: Host;
let disk: SmallDisk;
let on: KillablePhone | undefined;

test.beforeEach(async () => {
  host = await startHost();
  disk = await SmallDisk.of(150);
});

test.afterEach(async () => {
  await on?.kill();
  disk.end();
  await host.stop();
});

const notices = (page: Page) => page.getByRole('region', { name: 'Notices' });
const ticked = (page: Page) => page.getByRole('checkbox', { checked: true });
const steps = stepsOf('mandrelPrep');

async function phoneOn(hash = ''): Promise<Phone> {
  on = await disk.on();
  await on.page.goto(host.address + hash);
  return phoneOnRealTime(on.page);
}

async function toHash(phone: Phone, hash: string): Promise<void> {
  await phone.page.evaluate((to) => {
    location.hash = to;
  }, hash);
}

/** The app takes its other screens into memory while it idles: until a while has passed without another one. */
async function screensAreIn(page: Page): Promise<void> {
  // A browser counts 250 unless told: fewer than the app has.
  await page.evaluate(() => performance.setResourceTimingBufferSize(2000));
  const taken = () => page.evaluate(() => performance.getEntriesByType('resource').length);
  for (let [before, now] = [-1, await taken()]; now !== before; ) {
    await page.waitForTimeout(3000);
    [before, now] = [now, await taken()];
  }
}

/** The database may have a little room of its own left: ticks what goes in, and one that does not. */
async function tickUntilRefused(phone: Phone): Promise<number> {
  const { page } = phone;
  for (const [i, step] of steps.slice(1).entries()) {
    await press(phone, step);
    const took = page.locator('.undo-said', { hasText: `Ticked: ${step}` });
    const refused = notices(page).getByText('ot saved');
    await expect(took.or(refused).first()).toBeVisible();
    if (await refused.isVisible()) return i + 1;
    disk.fill();
  }
  throw new Error('a full disk took every tick');
}

/** A browser does not always find the room that a database takes to open. Then the screen says so, and with room it opens. */
async function opensOnceThereIsRoom(phone: Phone): Promise<void> {
  const noRoom = heading(phone).getByText('This phone has no room left');
  await expect(noRoom.or(ticked(phone.page).first())).toBeVisible();
  if (!(await noRoom.isVisible())) return;
  disk.makeRoom();
  await press(phone, 'Open it again');
}

test('on a disk without a free byte a tick says it is not saved, the job stays in sight, and it is written once there is room', async () => {
  test.setTimeout(180_000);
  let phone = await phoneOn();
  await expect(heading(phone)).toHaveText('Your bench is clear');
  await appIsKept(phone.page);
  await startTube(phone);
  const route = new URL(phone.page.url()).hash;
  await tick(phone, steps.slice(0, 1));
  await screensAreIn(phone.page);

  disk.fill();
  const written = await tickUntilRefused(phone);
  await expect(ticked(phone.page)).toHaveCount(written);
  await expect(heading(phone)).toHaveText('Mandrel prep');
  await expect(notices(phone.page)).toContainText('Not saved');

  // Wherever the builder goes, and however often it is tried.
  for (const [hash, title] of [
    ['#/', 'On the bench'],
    ['#/timer', 'How long?'],
    [route, 'Mandrel prep'],
  ] as const) {
    await toHash(phone, hash);
    await expect(heading(phone)).toHaveText(title);
    await expect(notices(phone.page)).toContainText('Not saved');
  }
  disk.fill();
  await press(phone, 'Write it now');
  // A browser that throws a torn database away makes itself the room for a new one.
  const took = ticked(phone.page).nth(written);
  if (
    !(await took.waitFor({ timeout: 10_000 }).then(
      () => true,
      () => false,
    ))
  ) {
    await expect(notices(phone.page)).toContainText('Not saved');
    disk.makeRoom();
    await press(phone, 'Write it now');
  }
  await expect(notices(phone.page)).not.toContainText('ot saved');
  await expect(ticked(phone.page)).toHaveCount(written + 1);
  await on?.kill();

  phone = await phoneOn(route);
  await opensOnceThereIsRoom(phone);
  await expect(ticked(phone.page)).toHaveCount(written + 1);
  await toHash(phone, route.replace('/build/', '/record/build/'));
  await expect(phone.page.getByRole('region', { name: 'Time line' }).getByRole('listitem')).toHaveCount(
    written + 1,
  );
});
