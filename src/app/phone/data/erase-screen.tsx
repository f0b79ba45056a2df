import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { LinkButton } from '#app/parts/action.tsx';
import { HoldAction } from '#app/parts/hold-action.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { dropExports } from '#app/platform/file-sink.ts';
import { settings } from '#app/state/settings.ts';
import { shop } from '#app/state/shop.ts';
import { deleteStore } from '#storage/open-store.ts';
import { countStored, stored, unsavedRecords } from './backup-state.ts';
import { countOf } from './file-words.ts';

async function eraseAll(): Promise<boolean> {
  if (shop.value.phase === 'open') await shop.value.store.close();
  try {
    await deleteStore('tubewright');
    await dropExports();
    return true;
  } catch {
    return false;
  }
}

function SaveFirst() {
  const fresh = unsavedRecords.value;
  return (
    <Warning kind="amber" title="Save a backup first">
      {settings.value.lastBackupAt === undefined
        ? 'No backup was ever saved from this phone.'
        : `${countOf(fresh, 'line')} came in since the last backup.`}{' '}
      Only a backup brings back what is erased.
    </Warning>
  );
}

/** Really everything? */
export function EraseScreen() {
  const held = useSignal(false);
  useEffect(() => {
    countStored();
  }, []);
  const counts = stored.value;
  const demo = shop.value.phase === 'open' && shop.value.demo;
  const safe = counts && settings.value.lastBackupAt !== undefined && unsavedRecords.value === 0;
  const erase = async () => {
    if (await eraseAll()) {
      history.replaceState(null, '', '#/');
      location.reload();
    } else held.value = true;
  };
  const way = safe ? (
    <HoldAction onHeld={erase}>Hold to erase everything on this phone</HoldAction>
  ) : (
    <LinkButton to="/data">Save a backup</LinkButton>
  );
  return (
    <Screen
      title="Erase everything here"
      back={{ to: '/data', label: 'Data and backup' }}
      actions={demo ? <LinkButton to="/data">Leave the demo first</LinkButton> : way}
    >
      {held.value && (
        <Warning kind="stop" title="Not all of it could be erased" announce>
          Another tab still has it open. Close every other tab of this app, then hold again.
        </Warning>
      )}
      {counts && !demo && !safe && <SaveFirst />}
      {counts && (
        <p>
          This takes away {countOf(counts.builds, 'build')}, {countOf(counts.ovenLoads, 'oven load')}, the
          plans, the shelf, the photos, the logger’s files and the settings of this phone, in both copies. The
          starter shelf comes back.
        </p>
      )}
      <p>A backup brings all of it back, but for the settings.</p>
    </Screen>
  );
}
