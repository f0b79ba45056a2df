import { chooseShop } from '#app/state/chosen-shop.ts';
import { zoneAt } from '#app/state/now.ts';
import { settings } from '#app/state/settings.ts';
import { shop } from '#app/state/shop.ts';
import { summarize } from '#app/state/summarize.ts';
import { moveTimes } from '#shared/record/move-times.ts';
import type { RawRecord } from '#storage/admit.ts';
import { checkBackup, type Good } from '#storage/backup-check.ts';
import { backupOf } from '#storage/backup-text.ts';
import { deleteStore, openStore } from '#storage/open-store.ts';
import shopUrl from '../../../../demo/shop.txt?url';

const demoStore = 'tubewright-demo';

/** Why the demo did not open. */
export type DemoFailure = 'notFetched' | 'notKept';

export const demoFailureWords: Record<DemoFailure, string> = {
  notFetched: 'The demo is not on this phone yet. Open the app once with a network, then try again.',
  notKept: 'This phone would not keep the demo. Free some space, or close the other tabs of this app.',
};

/** When the shop in the file stood as it is told there, ms. */
function madeAt(text: string): number {
  const first: unknown = JSON.parse(text.slice(0, text.indexOf('\n')));
  const at = typeof first === 'object' && first !== null && 'madeAt' in first ? first.madeAt : undefined;
  if (typeof at !== 'number') throw new Error('the demo shop does not say when it was made');
  return at;
}

/** The demo's records as if its now were this one. */
export async function demoRecords(text: string, at: number, zone: number): Promise<RawRecord[]> {
  const checked = await checkBackup(new Blob([text]));
  if (!checked.ok) throw new Error(`the demo shop is damaged in line ${checked.line}: ${checked.detail}`);
  const by = at - madeAt(text);
  const lines = text.trimEnd().split('\n').slice(1, -1);
  return lines.map((line) => moveTimes(JSON.parse(line) as RawRecord, by, zone));
}

async function movedDemo(text: string, at: number): Promise<Good> {
  const records = await demoRecords(text, at, zoneAt(at));
  const checked = await checkBackup(new Blob([backupOf(records, { app: 'demo shop', at })]));
  if (!checked.ok) throw new Error(`the demo shop cannot be moved to now: ${checked.detail}`);
  return checked;
}

async function fetchShop(): Promise<string | undefined> {
  try {
    const response = await fetch(shopUrl);
    return response.ok ? await response.text() : undefined;
  } catch {
    return undefined;
  }
}

/** Fills the demo's own database; the builder's is neither opened nor written. */
async function fillDemo(text: string): Promise<boolean> {
  await deleteStore(demoStore);
  const opened = await openStore({ name: demoStore, summarize: async () => summarize });
  if (!opened.ok) return false;
  const { store } = opened;
  try {
    const at = Date.now();
    const restored = await store.restore(await movedDemo(text, at));
    const { lastBackupAt: _, ...phone } = settings.value;
    await store.setPhoneValue('settings', phone);
    return restored.ok;
  } finally {
    await store.close();
  }
}

function reloadAtBench(): void {
  history.replaceState(null, '', '#/');
  location.reload();
}

/** Opens the demo shop in place of the builder's own. Says why when it cannot; otherwise the page starts anew. */
export async function openDemo(): Promise<DemoFailure | undefined> {
  const text = await fetchShop();
  if (text === undefined) return 'notFetched';
  const filled = await fillDemo(text).catch(() => false);
  if (!filled) return 'notKept';
  chooseShop('demo');
  reloadAtBench();
  return undefined;
}

/** Back to the builder's own shop; the demo's database and its second copy are deleted. */
export async function leaveDemo(): Promise<void> {
  // First, so that a page killed halfway opens on the builder's own record.
  chooseShop('own');
  if (shop.value.phase === 'open') await shop.value.store.close();
  // What another tab holds fast is deleted when the demo is opened again.
  await deleteStore(demoStore).catch(() => {});
  reloadAtBench();
}
