import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Hands } from './hands.ts';
import type { Bench } from './main-path.ts';
import { until } from './until.ts';

async function seeRecord(hands: Hands): Promise<void> {
  await hands.seeLink(/^Sprit no\. 1.*126 g/);
}

/** After a new page it stands there as before, and on the sheet to be printed. */
export async function readRecord({ hands }: Bench): Promise<void> {
  await hands.open('#/record');
  await seeRecord(hands);
  await hands.follow(/^Sprit no\. 1/);
  await hands.seeText('74.6 g');
  const build = await hands.page.run(() => location.hash);
  await hands.goTo(`${build}/paper`);
  await hands.seeButton(/Print/);
  await hands.seeText('Twisted loose');
}

/** The browser is gone between two strokes of the clock, and comes back on the same profile. */
export async function survive(bench: Bench): Promise<void> {
  const { engine, folder, browser, hands } = bench;
  await browser.kill();
  bench.browser = await engine.start(folder);
  bench.hands = hands.beside(bench.browser.page);
  await bench.hands.open('#/record');
  await seeRecord(bench.hands);
}

/** A backup goes out as a file and everything comes back from it. */
export async function backUpAndRestore({ engine, hands, folder }: Bench): Promise<void> {
  await hands.open('#/data');
  await hands.seeText(engine.hasLinesFile ? 'Second copy beside it kept' : 'There is one copy only');
  await hands.press('Save the backup');
  const backup = await downloaded(join(folder, 'downloads'));
  await hands.goTo('#/data/erase');
  await hands.holdDown(/^Hold to erase everything/);
  await hands.seeHeading('Your bench is clear');
  await hands.goTo('#/data/restore');
  await hands.takeFile('backup.txt', backup);
  await hands.press('Merge it in');
  await hands.seeText('records added');
  await hands.open('#/record');
  await seeRecord(hands);
}

async function downloaded(folder: string): Promise<string> {
  let text = '';
  await until('the backup lies in the downloads', async () => {
    const [file] = await readdir(folder);
    text = file ? await readFile(join(folder, file), 'utf8') : '';
    return text.includes('Sprit') && text.endsWith('\n');
  });
  return text;
}
