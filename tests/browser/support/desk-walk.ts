import { expect, type Page } from '@playwright/test';
import type { BenchScreen } from './bench-walk.ts';

// Of the demo shop, whose ids are written once.
const mast = '/plan/demo-plan-lower-mast';
const build = '019dedbd-eb60-7000-8000-00000000023c';
const open = '019e3039-92a0-7000-8000-00000000046a';
const oven = '019df3d5-1000-7000-8000-00000000023e';
const cloth = '/shelf/cloth/starter-cloth-carbon-plain-193';
const spars = '/ledger/demo-structure-spars';

const screens = (at: Record<string, string>): BenchScreen[] =>
  Object.entries(at).map(([name, to]) => ({ name, at: to }));

/** Where tubes are planned, looked up and told of: everything that is not the bench. */
export const deskScreens: readonly BenchScreen[] = screens({
  plans: '/plans',
  'new plan': '/plan/new',
  plan: mast,
  'change a plan': `${mast}/edit`,
  'change a plan without a wall': '/plan/demo-plan-boom/edit',
  cure: `${mast}/cure`,
  wall: `${mast}/wall`,
  'a piece of the wall': `${mast}/wall/demo-lower-skin`,
  'mandrel of the wall': `${mast}/wall/mandrel`,
  cutting: `${mast}/cutting`,
  template: `${mast}/template`,
  'tape of a plan': `${mast}/tape`,
  structures: '/ledger',
  structure: spars,
  'change a structure': `${spars}/edit`,
  'part of a structure': `${spars}/part/lower-mast`,
  'change a part': `${spars}/part/lower-mast/edit`,
  record: '/record',
  'oven loads': '/record/ovens',
  'record of a build': `/record/build/${build}`,
  'record on paper': `/record/build/${build}/paper`,
  'record of an oven load': `/record/oven/${oven}`,
  'chart of an oven load': `/oven/${oven}/chart`,
  compare: '/compare',
  'choose what to compare': '/compare/choose',
  'what the shop learned': '/factors',
  'give a tube to another phone': `/hand/build/${build}`,
  'start a tube': '/start',
  'start a tube of a plan': '/start/demo-plan-lower-mast',
  'lots of a build': `/lots/build/${open}`,
  shelf: '/shelf',
  cloths: '/shelf/cloth',
  cloth,
  'a cloth in the wall': `${cloth}/strength`,
  'new resin': '/shelf/resin/new',
  resin: '/shelf/resin/starter-resin-laminating-slow',
  tape: '/shelf/tape/starter-tape-polyester-25',
  checklist: '/shelf/checklist/starter-checklist-film-sleeve',
  'stage of a checklist': '/shelf/checklist/starter-checklist-film-sleeve/setUp',
  lots: '/lots',
  lot: '/lots/demo-lot-slow-3',
  'change a lot': '/lots/demo-lot-slow-3/edit',
  'count a lot': '/lots/demo-lot-slow-3/count',
  settings: '/settings',
  data: '/data',
  restore: '/data/restore',
  'take from a phone': '/data/take',
  tables: '/data/tables',
  erase: '/data/erase',
  words: '/words',
});

/** The demo shop, with all its screens in memory. */
export async function openDemo(page: Page): Promise<void> {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.goto('./');
  await page.getByRole('button', { name: 'Load the demo shop' }).click();
  await expect(page.getByText('Demo shop, not your record')).toBeVisible({ timeout: 60_000 });
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('On the bench');
}
