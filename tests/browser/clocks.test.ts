import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { cupOf, type Event, entriesOf, minutes, ticksOf } from '../app/shop-of.ts';
import { buildHeader } from '../record/arbitraries.ts';
import { seed } from './support/seed.ts';

test.use({ serviceWorkers: 'allow' });

const strip = (page: Page) => page.getByRole('complementary', { name: 'Running clocks' });
const heading = (page: Page) => page.getByRole('heading', { level: 1 });
const beforeMix = ['mandrelPrep', 'release', 'cut', 'setUp'].flatMap((stage) => ticksOf(stage, 0));

async function openAt(page: Page, minute: number): Promise<void> {
  await page.clock.install({ time: minutes(minute) });
  await page.goto('./');
  await expect(heading(page)).toHaveText('Your bench is clear');
}

/** The app with one tube on the bench, whose cup 2 met its hardener ten minutes after the start. */
async function openWithCup(page: Page, minute: number, events: readonly Event[] = []): Promise<void> {
  await openAt(page, minute);
  const happened = entriesOf(buildHeader.id, [...beforeMix, ...cupOf('a', 2, 10), ...events]);
  await seed(page, [buildHeader, ...happened]);
  await expect(heading(page)).toHaveText('On the bench');
}

/** Two taps from the bench. */
async function startTimer(page: Page, length: number): Promise<void> {
  await page.getByRole('link', { name: 'Timer', exact: true }).tap();
  await page.getByRole('button', { name: `${length} min`, exact: true }).tap();
  await expect(strip(page)).toContainText(`Timer, ${length} min`);
}

const later = (page: Page, count: number) => page.clock.fastForward(count * 60_000);

/** A glove bounces: a screen just opened takes no touch for an answer, so time has to pass on it. */
async function touchLow(page: Page): Promise<void> {
  await page.clock.runFor(1000);
  await page.touchscreen.tap(340, 430);
}

test('a first opening says what this is, what it is not, and leads to the first tube', async ({ page }) => {
  await openAt(page, 0);
  await expect(page.getByText('what the tube weighs')).toBeVisible();
  await expect(page.getByText('licensed practice')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Load the demo shop' })).toBeVisible();
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations).toEqual([]);
  await page.getByRole('button', { name: 'Start the first tube' }).tap();
  await expect(page).toHaveURL(/#\/start$/);
});

test('a timer is two taps from the bench, warns, comes due, and a touch low on the screen answers it', async ({
  page,
}) => {
  await openWithCup(page, 10, [{ minute: 10, kind: 'cupDiscarded', cup: 'a' }]);
  await startTimer(page, 10);
  await expect(heading(page)).toHaveText('On the bench');
  await later(page, 9.5);
  await expect(strip(page)).toContainText('NEARLY UP');
  await expect(page).toHaveTitle(/^NEARLY UP: Timer, 10 min/);
  await later(page, 1);
  await expect(strip(page)).toContainText('TIME IS UP');
  await page.getByRole('link', { name: 'Answer Timer, 10 min' }).tap();
  await expect(heading(page)).toContainText('Timer, 10 min is over');
  await touchLow(page);
  await expect(heading(page)).toHaveText('No clock is running');
  await expect(page).toHaveTitle(/^No clock is running/);
});

test('a length of one’s own is typed on big keys, and nothing starts on zero', async ({ page }) => {
  await openWithCup(page, 10, [{ minute: 10, kind: 'cupDiscarded', cup: 'a' }]);
  await page.getByRole('link', { name: 'Timer', exact: true }).tap();
  await page.getByRole('button', { name: 'Another length' }).tap();
  await page.getByRole('button', { name: '0', exact: true }).tap();
  await expect(page.getByRole('button', { name: 'More than 0 minutes' })).toHaveAttribute(
    'aria-disabled',
    'true',
  );
  await page.getByRole('button', { name: '7', exact: true }).tap();
  await page.getByRole('button', { name: 'Start 07 min' }).tap();
  await expect(strip(page)).toContainText('Timer, 7 min');
});

test('the strip counts a cup down beside the time by which all tape is on', async ({ page }) => {
  await openWithCup(page, 26.3);
  await expect(strip(page)).toContainText('into the resin');
  await expect(strip(page)).toContainText(/13:\d\d left/);
  await expect(strip(page)).toContainText(/Tape all on by/);
  await later(page, 10);
  await expect(strip(page)).toContainText('USE IT NOW');
  await later(page, 6);
  await expect(strip(page)).toContainText('STOP USING IT');
  await expect(strip(page)).toContainText(/Cup 2 is over: 2\smin ago/);
});

test('across the shop a cup that is over says what to do, and emptying it leaves the tape deadline', async ({
  page,
}) => {
  await openWithCup(page, 25);
  await strip(page).getByRole('link').tap();
  await expect(heading(page)).toHaveText('Cup 2, minutes left');
  await expect(page.getByText('WORKING TIME')).toBeVisible();
  await expect(page.getByText(/see that it has not kicked/i)).toBeHidden();
  await page.getByRole('button', { name: 'Cup is empty' }).tap();
  await expect(heading(page)).toHaveText('Tape all on, minutes left');
  await page.getByRole('button', { name: 'The tape is all on' }).tap();
  await expect(heading(page)).toHaveText('No clock is running');
});

test('a clock is right after a reload, and after the app was closed for a day', async ({ page }) => {
  await openWithCup(page, 20);
  await later(page, 6);
  await page.reload();
  await expect(strip(page)).toContainText(/1[34]:\d\d left/);
  const silent = page.getByText('Silent until the screen is touched. Touch it once.');
  await expect(silent).toBeVisible();
  await heading(page).tap();
  await expect(silent).toBeHidden();
  await page.clock.setSystemTime(minutes(40 + 360));
  await page.reload();
  await expect(strip(page)).toContainText(/Cup 2 ended 6\sh ago/);
  await expect(page.locator('.alarm-flash')).toHaveCount(0);
});

test('travel to another time zone changes the time of day that is shown, not the time left', async ({
  page,
}) => {
  const phone = await page.context().newCDPSession(page);
  const zone = (timezoneId: string) => phone.send('Emulation.setTimezoneOverride', { timezoneId });
  await zone('America/New_York');
  await openWithCup(page, 26.3);
  await expect(strip(page)).toContainText(/into the resin 8:10\sAM/);
  await zone('Europe/Berlin');
  await page.reload();
  await expect(strip(page)).toContainText(/into the resin 2:10\sPM/);
  await expect(strip(page)).toContainText(/13:\d\d left/);
});

test('two clocks due at once are answered one by one, and one touch never answers both', async ({ page }) => {
  await openWithCup(page, 10, [{ minute: 10, kind: 'cupDiscarded', cup: 'a' }]);
  await startTimer(page, 2);
  await startTimer(page, 3);
  await later(page, 4);
  await strip(page).getByRole('link').tap();
  await expect(heading(page)).toContainText('Timer, 2 min is over');
  await touchLow(page);
  await expect(heading(page)).toContainText('Timer, 3 min is over');
  await page.touchscreen.tap(340, 430);
  await expect(heading(page)).toContainText('Timer, 3 min is over');
  await touchLow(page);
  await expect(heading(page)).toHaveText('No clock is running');
});

test('five more minutes are a clock of their own', async ({ page }) => {
  await openWithCup(page, 10, [{ minute: 10, kind: 'cupDiscarded', cup: 'a' }]);
  await startTimer(page, 1);
  await later(page, 2);
  await strip(page).getByRole('link').tap();
  await page.getByRole('button', { name: 'Add 5 minutes' }).tap();
  await expect(heading(page)).toHaveText('Timer, 1 min, minutes left');
  await expect(page.getByRole('timer')).toHaveAccessibleName(/^(5 min 00|4 min 5\d) s$/);
});

test('a page behind other apps notifies, once it was allowed to', async ({ page, context }) => {
  await context.grantPermissions(['notifications']);
  await openWithCup(page, 26);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
  await page.evaluate(() => Object.defineProperty(document, 'visibilityState', { value: 'hidden' }));
  await later(page, 15);
  const notes = () =>
    page.evaluate(async () => {
      const registration = await navigator.serviceWorker.ready;
      return (await registration.getNotifications()).map((n) => ({ title: n.title, data: n.data }));
    });
  await expect.poll(notes).toContainEqual({
    title: expect.stringMatching(/^Cup 2 is over/),
    data: { hash: '#/clocks' },
  });
});

test('the bench and the clocks pass the accessibility check while a clock is over', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await openWithCup(page, 43);
  await expect(strip(page)).toContainText('STOP USING IT');
  const violations = async () =>
    (
      await new AxeBuilder({ page })
        .options({ rules: { 'color-contrast-enhanced': { enabled: true } } })
        .analyze()
    ).violations;
  expect(await violations()).toEqual([]);
  await strip(page).getByRole('link').tap();
  await expect(heading(page)).toContainText('Cup 2 is over');
  expect(await violations()).toEqual([]);
});
