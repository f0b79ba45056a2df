import { expect, type Page } from '@playwright/test';
import { heading, loosely, type Phone, press } from './hands.ts';

/** A figure typed into a field with steps, as by a keyboard. */
export async function write({ page }: Phone, label: string, figure: string): Promise<void> {
  const field = page.getByRole('textbox', { name: label, exact: true });
  await field.fill(figure);
  await field.blur();
}

export const field = ({ page }: Phone, label: string) =>
  page.getByRole('textbox', { name: label, exact: true });

interface Wanted {
  name: string;
  /** mm */
  diameter: string;
  length: string;
  plies: string;
}

/** From the list of plans to the empty wall of a new one. */
export async function newPlan(phone: Phone, { name, diameter, length, plies }: Wanted): Promise<void> {
  const { page } = phone;
  await page.getByRole('navigation').getByRole('link', { name: 'Plans' }).tap();
  await page.getByRole('button', { name: 'Write a new plan' }).tap();
  await page.getByLabel('Name').fill(name);
  await page.getByLabel('Mandrel diameter').fill(diameter);
  await page.getByLabel('Tube length').fill(length);
  await page.getByLabel('Plies').fill(plies);
  await page.getByLabel('Release').selectOption({ label: 'Semi-permanent release' });
  await press(phone, 'Save, then draw its wall');
  await expect(heading(phone)).toHaveText('Wall and cloth');
}

export async function openPiece(phone: Phone, number: number): Promise<void> {
  const pieces = phone.page.getByRole('list', { name: 'Pieces in wrap order' });
  await pieces.getByRole('link', { name: new RegExp(`^${number} `) }).tap();
  await expect(phone.page.getByText(/^Station 1 of/)).toBeVisible();
}

/** A station more after the chosen one. */
export async function station(phone: Phone, at: string, plies: string): Promise<void> {
  await press(phone, 'Add a station');
  await write(phone, 'From end 0', at);
  await write(phone, 'Plies', plies);
}

/** The figures under the free edge of a flat piece. */
export async function expectWidths({ page }: Phone, widths: readonly string[]): Promise<void> {
  const picture = page.getByRole('img', { name: /^Cut piece/ }).first();
  for (const width of widths) await expect(picture).toContainText(loosely(width));
}

/** A thumb that goes down at one place, moves in steps, and lets go. Says what stood over it before it did. */
export async function dragThumb(
  page: Page,
  from: { x: number; y: number },
  to: { x: number; y: number },
): Promise<string> {
  const touch = await page.context().newCDPSession(page);
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', at?: { x: number; y: number }) =>
    touch.send('Input.dispatchTouchEvent', { type, touchPoints: at ? [at] : [] });
  await send('touchStart', from);
  for (let i = 1; i <= 8; i++) {
    await send('touchMove', {
      x: from.x + ((to.x - from.x) * i) / 8,
      y: from.y + ((to.y - from.y) * i) / 8,
    });
    await page.waitForTimeout(20);
  }
  await page.waitForTimeout(60);
  const said = await page.locator('.station-bubble').allInnerTexts();
  await send('touchEnd');
  await touch.detach();
  return said.join(' ');
}

/** Texts of one picture that lie on each other, or reach out of the screen. */
export async function crowded(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found: string[] = [];
    for (const svg of document.querySelectorAll('.picture svg')) {
      const texts = [...svg.querySelectorAll('text')].map((t) => ({
        text: t.textContent ?? '',
        box: t.getBoundingClientRect(),
      }));
      texts.forEach((a, i) => {
        if (a.box.left < -0.5 || a.box.right > innerWidth + 0.5) found.push(`${a.text} leaves the screen`);
        for (const b of texts.slice(i + 1)) {
          const apart =
            a.box.right <= b.box.left ||
            b.box.right <= a.box.left ||
            // Letters are lower than their boxes.
            a.box.bottom - 3 <= b.box.top ||
            b.box.bottom - 3 <= a.box.top;
          if (!apart) found.push(`${a.text} on ${b.text}`);
        }
      });
    }
    return found;
  });
}
