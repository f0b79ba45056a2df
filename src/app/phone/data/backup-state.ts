import { type ReadonlySignal, signal } from '@preact/signals';
import { changeSettings, settings } from '#app/state/settings.ts';
import { shop, theStore } from '#app/state/shop.ts';
import type { Counts } from '#storage/reader.ts';

/** How many records the last backup held; nothing is ever taken out, so more now means new ones. */
const heldKey = 'lastBackupHeld';

const counted = signal<Counts | undefined>(undefined);
const fresh = signal(0);

/** What is stored here, as last counted. */
export const stored: ReadonlySignal<Counts | undefined> = counted;

/** Records that the last backup does not hold. */
export const unsavedRecords: ReadonlySignal<number> = fresh;

const total = (counts: Counts) => counts.builds + counts.ovenLoads + counts.entries + counts.revisions;

/** What the starter shelf brings is not the builder's work. */
const isWork = (counts: Counts) => counts.builds + counts.ovenLoads + counts.entries > 0;

export async function countStored(): Promise<void> {
  if (shop.value.phase !== 'open') return;
  const store = theStore();
  const [counts, held] = await Promise.all([store.counts(), store.phoneValue(heldKey)]);
  counted.value = counts;
  if (typeof held === 'number') fresh.value = Math.max(0, total(counts) - held);
  else fresh.value = isWork(counts) ? total(counts) : 0;
}

/** Remembers that what was counted at a time is in somebody's hands. */
export async function backedUp(at: number, counts: Counts): Promise<void> {
  await theStore().setPhoneValue(heldKey, total(counts));
  await changeSettings({ lastBackupAt: at });
  await countStored();
}

/** After a restore: when nothing but the backup is here, it is the backup of what is here. */
export async function sameAsBackup(at: number, records: number): Promise<void> {
  const counts = await theStore().counts();
  const newer = at > (settings.value.lastBackupAt ?? 0);
  if (newer && total(counts) === records) await backedUp(at, counts);
  else await countStored();
}

/** When the oldest of the newest builds was started, ms */
export async function firstBuildAt(): Promise<number | undefined> {
  const { summaries } = await theStore().summaries({ of: 'build', limit: 40 });
  return summaries.length === 0 ? undefined : Math.min(...summaries.map((s) => s.startedAt));
}
