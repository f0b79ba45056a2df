import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';

const main = (page: Page) => page.getByRole('main');
const press = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name, exact: typeof name === 'string' }).tap();
const figure = (page: Page) => main(page).locator('.big-figure');
const picture = (page: Page) => page.getByRole('img', { name: /along the tube$/ });

async function expectNoViolations(page: Page): Promise<void> {
  expect((await new AxeBuilder({ page }).analyze()).violations.map((v) => [v.id, v.nodes[0]?.html])).toEqual(
    [],
  );
}

/** The big figure as a number. */
const shown = async (page: Page): Promise<number> =>
  Number((await figure(page).locator('.big-figure-number').textContent())?.replace('−', '-'));

async function openLowerMast(page: Page): Promise<void> {
  await page.goto('./');
  await page.getByRole('button', { name: 'Load the demo shop' }).tap();
  await expect(page.getByRole('link', { name: 'Leave' })).toBeVisible({ timeout: 30_000 });
  await page.goto('./#/plans');
  await page.getByRole('link', { name: /^Lower mast/ }).tap();
  await page.getByRole('link', { name: /^Along the tube/ }).tap();
  await expect(page.getByRole('heading', { name: 'Along the tube' })).toBeVisible();
}

test('from its plan a mast is drawn along its length, and a thumb picks a place', async ({ page }) => {
  await openLowerMast(page);
  await expect(main(page)).toContainText('Stiffness in bending, EI, at 510 mm');
  const atPartners = await shown(page);
  await expectNoViolations(page);

  await picture(page).evaluate((drawn) => drawn.scrollIntoView({ block: 'center' }));
  const box = await picture(page).boundingBox();
  if (!box) throw new Error('no picture');
  await page.touchscreen.tap(box.x + box.width * 0.85, box.y + box.height / 2);
  await expect(main(page)).not.toContainText('EI, at 510 mm');
  expect(await shown(page)).toBeLessThan(atPartners / 2);

  await page.getByLabel('Cut at', { exact: true }).fill('400 mm');
  await expect(main(page)).toContainText('EI, at 400 mm');
  const row = (name: string) => page.getByRole('row', { name: new RegExp(`^${name}`) });
  await expect(row('Bending, EI')).toContainText('N·m²');
  await expect(row('Twist, GJ')).toContainText('N·m²');
  // 3 plies of 193 g/m2 carbon and one of 100 g/m2 glass, at the shop's own plies
  await expect(row('Wall')).toContainText(/1\.\d\d.mm/);
  await expect(row('Weight 6')).toContainText('g');

  for (const [key, says] of [
    ['Twist', 'Stiffness in twist, GJ'],
    ['Wall', 'Wall, where it is thinnest'],
    ['Weight', 'Weight of a length'],
    ['Area', 'Area of its wall'],
    ['Squeeze', 'Softness when squeezed'],
  ] as const) {
    await press(page, key);
    await expect(main(page)).toContainText(`${says}`);
    await expect(picture(page)).toBeVisible();
  }
  await press(page, 'What was assumed?');
  const sheet = page.getByRole('dialog', { name: 'What was assumed' });
  await expect(sheet).toContainText('typical, not for design');
  await expect(sheet).toContainText('rule of mixtures');
  await expect(sheet).toContainText('Halpin and Tsai');
  await expect(sheet).toContainText(/65.% is kept/);
  await expect(sheet).toContainText(/92.% along the fibers/);
  await expectNoViolations(page);
});

test('the same figures stand there in pounds and inches', async ({ page }) => {
  await openLowerMast(page);
  const metric = await shown(page);
  await press(page, /^Units/);
  await expect(figure(page)).toContainText('lbf·in²');
  // 1 N m2 is 348.46 lbf in2: 1/(4.448222 x 0.0254^2), NIST SP 811
  expect((await shown(page)) / (metric * 348.46)).toBeCloseTo(1, 2);
});

test('a stiffer cloth on the shelf makes a stiffer tube, and is no longer called typical', async ({
  page,
}) => {
  await openLowerMast(page);
  const before = await shown(page);
  await page.getByRole('link', { name: /^Carbon, plain weave, 193/ }).tap();
  await expect(main(page)).toContainText('typical, not for design');
  await press(page, 'Take the handbook’s figures');
  await expect(page.getByLabel('Along the fibers, E1')).toHaveValue(/^181.GPa$/);
  await page.getByLabel('Along the fibers, E1').fill('300');
  await expectNoViolations(page);
  await press(page, 'Save as a new revision');
  await expect(page.getByRole('link', { name: 'Stiffness and strength: your own' })).toBeVisible();

  await page.goto('./#/plan/demo-plan-lower-mast/along');
  await expect(main(page)).toContainText('Stiffness in bending, EI, at 510 mm');
  // Of fibers along, as good as all stiffness comes: 300 over 181, less what glass and crossed fibers give
  expect((await shown(page)) / before).toBeGreaterThan(1.4);
  expect((await shown(page)) / before).toBeLessThan(300 / 181);
});

test('figures that cannot be are refused, each with a sentence, and nothing typed is lost', async ({
  page,
}) => {
  await page.goto('./#/shelf/cloth');
  await page.getByRole('link', { name: /^Glass, plain weave, 163/ }).tap();
  await page.getByLabel('Price of a square meter').fill('31');
  await page.getByRole('link', { name: /^Stiffness and strength: handbook’s, typical/ }).tap();
  await expect(page.getByRole('button', { name: 'Nothing written yet' })).toBeVisible();
  await page.getByLabel('Along the fibers, E1').fill('8');
  await page.getByLabel('Across the fibers, E2').fill('38');
  await page.getByLabel('In shear, G12').fill('0');
  await page.getByLabel('Poisson’s ratio, nu12').fill('0.5');
  await page.getByLabel('Fiber volume of the sheet').fill('45');
  await page.getByLabel('Pulled along the fibers').fill('1062');
  await press(page, 'Save as a new revision');
  await expect(main(page)).toContainText(
    'it lies below 0.458: check it, and whether along and across are mixed up',
  );
  await expect(main(page)).toContainText('Zero will not do here');
  await expect(page.getByText('leave all five strengths empty')).toHaveCount(4);
  await expect(page.getByLabel('In shear, G12')).toBeFocused();

  await page.getByLabel('Along the fibers, E1').fill('38');
  await page.getByLabel('Across the fibers, E2').fill('8');
  await page.getByLabel('In shear, G12').fill('4');
  await page.getByLabel('Poisson’s ratio, nu12').fill('0.26');
  await page.getByLabel('Pulled along the fibers').fill('');
  await page.waitForTimeout(400);
  await press(page, 'Save as a new revision');
  await expect(page.getByRole('link', { name: 'Stiffness only: your own' })).toBeVisible();
  await expect(page.getByLabel('Price of a square meter')).toHaveValue('31');
});
