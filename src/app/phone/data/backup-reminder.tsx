import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { resinIsWet } from '#app/laying-up/clocks/running.ts';
import { now } from '#app/state/now.ts';
import { settings } from '#app/state/settings.ts';
import { shop } from '#app/state/shop.ts';
import { formatAgo } from '#shared/units/time.ts';
import { backupDue } from './backup-due.ts';
import { countStored, firstBuildAt, unsavedRecords } from './backup-state.ts';

const whenIdle = (job: () => void) =>
  'requestIdleCallback' in window ? requestIdleCallback(job) : setTimeout(job, 300);

/** After a day's work without a backup, and never while resin is wet. */
export function BackupReminder() {
  const firstAt = useSignal<number | undefined>(undefined);
  const demo = shop.value.phase === 'open' && shop.value.demo;
  useEffect(() => {
    if (demo) return;
    whenIdle(async () => {
      await countStored();
      firstAt.value = await firstBuildAt();
    });
  }, [demo, firstAt]);
  const { lastBackupAt } = settings.value;
  const facts = {
    now: now.value,
    lastBackupAt,
    firstAt: firstAt.value,
    unsaved: unsavedRecords.value,
    wet: resinIsWet.value,
  };
  if (demo || !backupDue(facts)) return null;
  return (
    <div class="quiet-line">
      <p>
        {lastBackupAt === undefined
          ? 'What you made here is on this phone only.'
          : `The last backup was ${formatAgo((now.value - lastBackupAt) / 1000)}.`}
      </p>
      <a href="#/data">Back up</a>
    </div>
  );
}
