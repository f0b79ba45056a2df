// Lives of the app that end by SIGKILL at a random moment, and what the next life finds.
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { launch } from './kill-browser.mjs';

/** Looking reads whole files; a new profile now and then keeps them short. */
const livesOfProfile = 25;
/** A share of the kills falls into the opening itself, with its refilling; the others into the work after it. */
const inOpening = 0.15;

/** What a browser can do without here, so that it is up sooner. */
const lean = ['--disable-gpu', '--disable-extensions', '--disable-features=MediaRouter,Translate'];

const none = () => ({
  kills: 0,
  killsInOpening: 0,
  acknowledgedWrites: 0,
  acknowledgedRecords: 0,
  acknowledgedFiles: 0,
  saidOnScreen: 0,
  lostRecords: 0,
  lostFiles: 0,
  tornWrites: 0,
  recordsWithoutFile: 0,
  spoiledFiles: 0,
  unreadable: 0,
  openingsFailed: 0,
  copiesDisagree: 0,
  withoutSecondCopy: 0,
  databaseCameBackEmpty: 0,
  refilledDatabase: 0,
  refilledLines: 0,
  refilledFiles: 0,
  launchesTriedAgain: 0,
  livesNotCounted: 0,
});

/** @typedef {ReturnType<typeof none>} Sums */

/**
 * What must be nought for a phone to be trusted.
 * @type {(keyof Sums)[]}
 */
export const faults = [
  'lostRecords',
  'lostFiles',
  'tornWrites',
  'recordsWithoutFile',
  'spoiledFiles',
  'unreadable',
  'openingsFailed',
  'copiesDisagree',
];

/** One profile: what was acknowledged in it, noted outside of the browser. */
class Phone {
  kept = new Set();
  hashes = new Set();
  tried = new Map();
  onTry = () => {};

  constructor(profile, address, sums, say) {
    Object.assign(this, { profile, address, sums, say });
  }

  /** Looks at what the lives before left, works on, and is killed; a last life only looks. */
  async live({ last = false } = {}) {
    const early = !last && Math.random() < inOpening;
    const { page, kill } = await this.browser();
    let over = false;
    const ends = (error) => {
      if (!over) throw error;
    };
    try {
      await this.listen(page, () => over);
      await page.goto(this.address);
      const opening = page.evaluate((reads) => window.bench.start(reads), !early);
      if (early) {
        await Promise.race([opening.catch(ends), pause(20 + Math.random() * 400)]);
        this.sums.killsInOpening += 1;
      } else {
        const looked = await this.look(page, opening);
        if (!last && looked) {
          const writing = new Promise((tried) => {
            this.onTry = tried;
          });
          page.evaluate(() => window.bench.work()).catch(ends);
          await Promise.race([writing, pause(5000)]);
          await pause(Math.random() * 1500);
        }
      }
    } finally {
      over = true;
      await kill();
    }
    if (!last) this.sums.kills += 1;
  }

  /** A busy machine may not get a browser up in time; that says nothing of the app. */
  async browser() {
    for (let left = 5; ; left--) {
      try {
        return await launch(this.profile, lean);
      } catch (error) {
        if (left === 0) throw error;
        this.sums.launchesTriedAgain += 1;
      }
    }
  }

  async listen(page, over) {
    const { sums, kept, hashes, tried } = this;
    await page.exposeBinding('tries', (_, write) => {
      this.onTry();
      if (write.keys.length > 1) tried.set(`${sums.kills} ${write.number}`, write.keys);
    });
    await page.exposeBinding('acknowledged', (_, write) => {
      if (over()) return;
      sums.acknowledgedWrites += 1;
      sums.acknowledgedRecords += write.keys.length;
      sums.acknowledgedFiles += write.hashes.length;
      for (const key of write.keys) kept.add(key);
      for (const hash of write.hashes) hashes.add(hash);
    });
    await page.exposeBinding('said', () => {
      sums.saidOnScreen += 1;
    });
  }

  /** Whether the app stood open. */
  async look(page, opening) {
    const { sums, kept, hashes, tried } = this;
    let left;
    try {
      await opening;
      left = await page.evaluate((known) => window.bench.look(known), {
        kept: [...kept],
        hashes: [...hashes],
        tried: [...tried.values()],
      });
    } catch (error) {
      sums.openingsFailed += 1;
      this.say(`an opening failed: ${error.message}`);
      return false;
    }
    tried.clear();
    sums.lostRecords += left.lost.length;
    sums.lostFiles += left.lostBytes.length;
    sums.tornWrites += left.torn;
    sums.recordsWithoutFile += left.bytesMissing;
    sums.spoiledFiles += left.spoiled;
    sums.unreadable += left.unreadable;
    // Where the worker of the second copy did not come up in time, the next opening compares.
    const apart = left.linesKept
      ? left.disagree + left.filesLackingSecondCopy + left.filesInSecondCopyOnly
      : 0;
    sums.copiesDisagree += apart;
    sums.withoutSecondCopy += left.linesKept ? 0 : 1;
    sums.databaseCameBackEmpty += left.wasEmpty ? 1 : 0;
    sums.refilledDatabase += left.compared.database;
    sums.refilledLines += left.compared.lines;
    sums.refilledFiles += left.compared.photos ?? 0;
    const wrong = { ...left, lost: left.lost.length, lostBytes: left.lostBytes.length };
    if (
      left.lost.length + left.lostBytes.length + left.torn + apart + left.bytesMissing > 0 ||
      left.wasEmpty
    ) {
      this.say(JSON.stringify(wrong));
    }
    // Told once: what is gone stays gone.
    for (const key of left.lost) kept.delete(key);
    for (const hash of left.lostBytes) hashes.delete(hash);
    return true;
  }
}

/**
 * Kills the app so many times, on several profiles side by side.
 * @param {{ address: string, kills: number, atOnce: number, say?: (what: string) => void, onLife?: (sums: Sums) => void }} options
 */
export async function runKills({ address, kills, atOnce, say = () => {}, onLife = () => {} }) {
  const sums = none();
  let begun = 0;
  const oneAfterTheOther = async () => {
    while (begun < kills) {
      const lives = Math.min(livesOfProfile, kills - begun, Math.ceil(kills / atOnce));
      begun += lives;
      const profile = await mkdtemp(join(tmpdir(), 'tubewright-kill-'));
      try {
        const phone = new Phone(profile, address, sums, say);
        for (let i = 0; i < lives; i++) {
          await phone.live().catch((error) => {
            // A machine too busy to bring the page up is no word on the app: such a life is left out of the count.
            sums.livesNotCounted += 1;
            say(`a life did not begin: ${error.message.split('\n')[0]}`);
          });
          onLife(sums);
        }
        await phone.live({ last: true }).catch(() => {
          sums.livesNotCounted += 1;
        });
      } finally {
        await rm(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
      }
    }
  };
  await Promise.all(Array.from({ length: atOnce }, oneAfterTheOther));
  return sums;
}
