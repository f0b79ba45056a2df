import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';

const main = (page: Page) => page.getByRole('main');
const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).tap();
const steps = (page: Page) => page.getByRole('list', { name: 'Steps' }).getByRole('button');
const expectNoViolations = async (page: Page) => {
  expect((await new AxeBuilder({ page }).analyze()).violations.map((v) => [v.id, v.nodes[0]?.html])).toEqual(
    [],
  );
};

test('a cloth written down in inches and ounces is the same cloth in metric', async ({ page }) => {
  await page.goto('./#/settings');
  await press(page, /^Inch-pound/);
  await page.goto('./#/shelf/cloth');
  await page.getByRole('button', { name: 'New cloth' }).tap();
  await page.getByLabel('Name').fill('Own twill');
  await page.getByLabel('Weight of the cloth').fill('5.7');
  await page.getByLabel('Density of the fiber').fill('1.78 g/cc');
  await page.getByLabel('Width of the roll').fill('4 ft 2 in');
  await press(page, 'Put it on the shelf');

  const row = page.getByRole('link', { name: /Own twill/ });
  await expect(row).toContainText(/5\.7\soz\/yd²/);
  await expect(row).not.toContainText('Typical');
  await press(page, /^Units/);
  await expect(row).toContainText(/193\sg\/m²/);
  await page.reload();
  await row.tap();
  await expect(page.getByLabel('Weight of the cloth')).toHaveValue(/^193\sg\/m²$/);
  await expect(page.getByLabel('Width of the roll')).toHaveValue(/^1270\smm$/);
  await expectNoViolations(page);
});

test('a starter resin is marked typical until own values are saved, and always says grams', async ({
  page,
}) => {
  await page.goto('./#/shelf/resin');
  const row = page.getByRole('link', { name: /Laminating epoxy with FAST/ });
  await expect(row).toContainText('Typical: check your data sheet');
  await row.tap();
  await expect(main(page)).toContainText('100 g resin : 28.1 g hardener');
  await press(page, 'By weight');
  await page.getByLabel('Hardener to 100 of resin').fill('27');
  await expect(main(page)).toContainText('100 g resin : 27.0 g hardener');
  await press(page, 'Add a time at a temperature');
  await page.getByLabel('For (3)').fill('3 h');
  await press(page, 'Save as a new revision');
  await expect(page.getByLabel('At (3)')).toHaveAttribute('aria-invalid', 'true');
  await press(page, 'Take out line 3');
  // One that was added and never written on is no line.
  await press(page, 'Add a time at a temperature');
  await page.waitForTimeout(400);
  await press(page, 'Save as a new revision');
  await expect(page.getByRole('heading', { name: 'Resin systems' })).toBeVisible();
  await expect(row).not.toContainText('Typical');
  await expect(row).toContainText('100 g resin : 27.0 g hardener');
});

test('a bad figure gets one sentence at its field, and nothing typed is lost', async ({ page }) => {
  await page.goto('./#/shelf/tape/new');
  await page.getByLabel('Width').fill('12 apples');
  await page.getByLabel('Thickness').fill('-1');
  await page.getByLabel('Begins to shrink at').fill('100');
  await page.getByLabel('Pulls hardest from').fill('65');
  await page.getByLabel('Stands up to').fill('150');
  await press(page, 'Put it on the shelf');
  await expect(main(page)).toContainText('apples is not a length');
  await expect(main(page)).toContainText('cannot be below zero');
  await expect(main(page)).toContainText('It cannot pull hardest before it begins to shrink');
  await expect(main(page)).toContainText('Write something here, like Polyester shrink tape, 25 mm.');
  await page.getByRole('link', { name: 'Record' }).tap();
  await expect(page.getByRole('heading', { name: 'Record' })).toBeVisible();
  await page.goto('./#/shelf/tape/new');
  await expect(page.getByLabel('Width')).toHaveValue('12 apples');
});

test('a mandrel taken off the shelf can be put back', async ({ page }) => {
  await page.goto('./#/shelf/mandrel');
  await page.getByRole('link', { name: /Ground steel bar/ }).tap();
  await press(page, 'Take it off the shelf');
  await expect(page.getByRole('list', { name: 'Mandrels' })).not.toContainText('Ground steel bar');
  await page.getByText('Taken off the shelf (1)').tap();
  await page.getByRole('link', { name: /Ground steel bar/ }).tap();
  await press(page, 'Put it back on the shelf');
  await expect(page.getByRole('list', { name: 'Mandrels' })).toContainText('Ground steel bar');
});

test('the steps of a checklist are moved, changed, added, removed and put back by touch', async ({
  page,
}) => {
  await page.goto('./#/shelf/checklist');
  await page.getByRole('link', { name: /Tube on wax and PVA/ }).tap();
  await press(page, /^Release/);
  await press(page, 'Its steps');
  await expect(page.getByRole('heading', { name: 'Release' })).toBeVisible();
  const [first, second] = await steps(page).allTextContents();
  await steps(page).first().tap();
  await press(page, 'Down');
  await expect(steps(page).first()).toHaveText(second ?? '');
  await expect(steps(page).nth(1)).toHaveText(first ?? '');

  await press(page, 'Change');
  await page.getByLabel('What is done').fill('Wax coat on, thin');
  await page.getByLabel('Then wait').fill('45');
  await press(page, 'The step says this');
  await expect(steps(page).nth(1)).toContainText('Wax coat on, thin');
  await expect(steps(page).nth(1)).toContainText(/45\smin/);

  await press(page, 'Add a step after it');
  await page.getByLabel('What is done').fill('Gloves changed');
  await press(page, 'Add the step');
  await expect(steps(page).nth(2)).toContainText('Gloves changed');
  const count = await steps(page).count();
  await press(page, 'Remove');
  await expect(steps(page)).toHaveCount(count - 1);
  await press(page, 'Put back: Gloves changed');
  await expect(steps(page)).toHaveCount(count);

  await page.getByRole('link', { name: 'Checklist', exact: false }).first().tap();
  await expect(main(page)).toContainText('Changed, not saved yet');
  await press(page, 'Save as a new revision');
  await expect(page.getByRole('heading', { name: 'Checklists' })).toBeVisible();
  await page.reload();
  await page.getByRole('link', { name: /Tube on wax and PVA/ }).tap();
  await press(page, /^Release/);
  await press(page, 'Its steps');
  await expect(steps(page).nth(2)).toContainText('Gloves changed');
  await expectNoViolations(page);
});

test('a checklist copied to a new one changes without the first', async ({ page }) => {
  await page.goto('./#/shelf/checklist');
  await page.getByRole('link', { name: /Tube on a film sleeve/ }).tap();
  await press(page, 'Copy it to a new one');
  await expect(page.getByRole('heading', { name: 'Tube on a film sleeve, copy' })).toBeVisible();
  await press(page, /^Trim/);
  await press(page, 'Remove');
  await press(page, 'Save as a new revision');
  const rows = page.getByRole('list', { name: 'Checklists' }).getByRole('link', { name: /film sleeve/ });
  await expect(rows).toHaveCount(2);
  await expect(rows.first()).toContainText('13 stages');
  await expect(rows.last()).toContainText('12 stages');
});

test('what this phone is set to holds after a reload', async ({ page }) => {
  await page.goto('./#/settings');
  await press(page, /^Dark$/);
  await press(page, /^Other$/);
  await page.getByLabel('Its smallest step').fill('0.5 g');
  await press(page, 'Zeroed between');
  await press(page, 'Test the alarm');
  await expect(main(page)).toContainText('Due now: three even beeps');
  await page.reload();
  await expect(page.getByRole('button', { name: 'Dark' })).toHaveAttribute('aria-pressed', 'true');
  await expect(page.getByLabel('Its smallest step')).toHaveValue(/^0\.5\sg$/);
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark');
  await expectNoViolations(page);
});
