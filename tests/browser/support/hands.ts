import { expect, type Locator, type Page } from '@playwright/test';

/** A phone in the hand. Time either is the test's own or goes by itself. */
export interface Phone {
  page: Page;
  /** Lets a glove's bounce pass, so that the next touch counts as one of its own. */
  settle: () => Promise<void>;
}

const bounce = 400;

/** On this phone the test moves the clock. */
export const phoneWithOwnClock = (page: Page): Phone => ({ page, settle: () => page.clock.runFor(bounce) });

export const phoneOnRealTime = (page: Page): Phone => ({ page, settle: () => page.waitForTimeout(bounce) });

export type Name = string | RegExp;

export const heading = ({ page }: Phone): Locator => page.getByRole('heading', { level: 1 });
export const button = ({ page }: Phone, name: Name): Locator =>
  page.getByRole('button', { name, exact: true });
export const sheet = ({ page }: Phone, name: Name): Locator => page.getByRole('dialog', { name });

export async function press(phone: Phone, name: Name): Promise<void> {
  await phone.settle();
  await button(phone, name).tap();
}

export async function follow(phone: Phone, name: Name): Promise<void> {
  await phone.page.getByRole('link', { name, exact: true }).tap();
}

/** Figures on the app's own keys. */
export async function typeOnKeys({ page }: Phone, figures: string): Promise<void> {
  const keys = page.locator('.keypad').last();
  for (const key of figures) await keys.getByRole('button', { name: key, exact: true }).tap();
}

/** A thumb that stays on a key until it is done, though a laden machine hears late that it came. */
export async function holdDown(phone: Phone, name: Name): Promise<void> {
  const target = button(phone, name);
  await target.scrollIntoViewIfNeeded();
  const box = await target.boundingBox();
  if (!box) throw new Error(`${name} is not on the screen`);
  const touch = await phone.page.context().newCDPSession(phone.page);
  const touchPoints = [{ x: box.x + box.width / 2, y: box.y + box.height / 2 }];
  await touch.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints });
  for (let i = 0; i < 5; i++) await phone.settle();
  await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await touch.detach();
}

/** The figure this screen is about. */
export async function expectBigFigure({ page }: Phone, figure: string): Promise<void> {
  await expect(page.locator('.big-figure').first()).toHaveText(new RegExp(`${escaped(figure)}\\s*$`));
}

/** What was said lies under the thumb for ten seconds, and only after it is on disk. */
export async function expectSaid({ page }: Phone, words: Name): Promise<void> {
  await expect(page.locator('.undo-said')).toHaveText(words);
}

/** Spaces of every kind are one: figures and units are held together by narrow ones. */
export const loosely = (text: string): RegExp => new RegExp(escaped(text).replaceAll(' ', '\\s'));

const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** '8:15 AM', as the phone shows a time of day. */
export const timeOfDay = (at: number): string =>
  new Date(at).toLocaleTimeString('en-US', { hour: 'numeric', minute: '2-digit' }).replace(/\s/g, ' ');
