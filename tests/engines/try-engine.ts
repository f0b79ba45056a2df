import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, test } from 'vitest';
import { backUpAndRestore, readRecord, survive } from './after-the-job.ts';
import type { Engine } from './engine.ts';
import { expectNoTroubles, Hands } from './hands.ts';
import {
  type Bench,
  cure,
  demoldAndWeigh,
  keepTheApp,
  mix,
  prepare,
  startTube,
  wetOutWrapAndTape,
  workInTwoTabs,
} from './main-path.ts';
import { Host } from './offline-server.ts';

/** The job in one engine, step after step, all of it after the host has gone. */
export function tryJobIn(engine: Engine): void {
  describe.skipIf(!engine.found)(`in ${engine.name}`, { timeout: 60_000 }, () => {
    let bench: Bench;
    beforeAll(async () => {
      const folder = await mkdtemp(join(tmpdir(), 'tubewright-'));
      const host = await Host.start();
      const browser = await engine.start(folder);
      bench = { engine, host, folder, browser, hands: new Hands(browser.page, host.address) };
    }, 60_000);
    afterAll(async () => {
      await bench.browser.close();
      await bench.host.stop();
      await rm(bench.folder, { recursive: true, force: true });
    });
    afterEach(async ({ task }) => {
      const shots = process.env.ENGINE_PICTURES;
      if (task.result?.state === 'fail')
        await writeFile(
          join(shots ?? tmpdir(), `${engine.name}-failed.png`),
          await bench.hands.page.picture(),
        );
    });

    const steps: [string, (bench: Bench) => Promise<void>][] = [
      ['the app opens after its host has gone', keepTheApp],
      ['a first tube is started', startTube],
      ['a step is ticked by thumb, by its line, and by a foot switch', prepare],
      ['a cup is mixed to the gram over a reload', mix],
      ['two tabs work at one tube', workInTwoTabs],
      ['the cloth is wetted out, wrapped and taped', wetOutWrapAndTape],
      ['the cure is logged to its end', cure],
      ['the tube is demolded, weighed and judged', demoldAndWeigh],
      ['the record has it after a reload, and prints', readRecord],
      ['the record has it after the browser was killed, where anything outlives it', survive],
      ['a backup is saved, and brings everything back', backUpAndRestore],
    ];
    let broken = false;
    for (const [name, step] of steps) {
      test(name, async (context) => {
        if (step === survive && !engine.keepsProfile) context.skip('its storage ends with it');
        if (broken) context.skip('an earlier step failed');
        broken = true;
        await step(bench);
        await expectNoTroubles(bench.browser.troubles());
        broken = false;
      });
    }
  });
}
