import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { Secondary } from '#app/parts/action.tsx';
import { Lines } from '#app/parts/figure.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { askToKeep, type Keeping, keeping, type Room, readKeeping, roomUsed } from '#app/platform/persist.ts';
import { opensWithoutNetwork, type WithoutNetwork } from '#app/platform/update.ts';
import { theStore } from '#app/state/shop.ts';
import { stored } from './backup-state.ts';
import { formatBytes } from './file-words.ts';

const promise: Record<Keeping, string> = {
  unknown: '',
  kept: 'This browser promises to keep it.',
  mayBeCleared: 'This browser may throw it away when the phone is full: back up.',
  unsupported: 'This browser promises nothing about keeping it: back up.',
};

const withoutNetwork: Record<WithoutNetwork, string> = {
  notYet: 'not yet',
  ready: 'yes',
  never: 'not on this browser',
};

function Promised() {
  const asked = useSignal(false);
  const ask = async () => {
    await askToKeep();
    asked.value = true;
  };
  return (
    <>
      <p>{promise[keeping.value]}</p>
      {keeping.value === 'mayBeCleared' && (
        <>
          <Secondary onPress={ask}>Ask the browser to keep it</Secondary>
          {asked.value && (
            <p class="small" role="status">
              It said no. It may say yes once the app is on the home screen, or after you have used it for
              some days.
            </p>
          )}
        </>
      )}
    </>
  );
}

/** What is kept on this phone, and how surely. */
export function Kept() {
  const room = useSignal<Room | undefined>(undefined);
  const isCompared = useSignal(false);
  useEffect(() => {
    readKeeping();
    roomUsed().then((r) => {
      room.value = r;
    });
    theStore().compared.then(() => {
      isCompared.value = true;
    });
  }, [room, isCompared]);
  const counts = stored.value;
  if (!counts) return null;
  const secondCopy = theStore().linesKept();
  const number = (n: number) => n.toLocaleString('en-US');
  return (
    <>
      <h2>On this phone</h2>
      {counts.unreadable > 0 && (
        <Warning kind="amber" title={`${number(counts.unreadable)} could not be read`}>
          They are set aside, not lost, and go into every backup as they are.
        </Warning>
      )}
      {isCompared.value && !secondCopy && (
        <Warning kind="amber" title="There is one copy only">
          {theStore().linesStopped()
            ? 'The second copy could not be written and has stopped. Open the app again: then it gets what it lacks.'
            : 'This browser gives the app no place for a second copy beside the record, as a private window may not. Save a backup after every tube.'}
        </Warning>
      )}
      <Lines
        rows={[
          ['Builds', number(counts.builds)],
          ['Oven loads', number(counts.ovenLoads)],
          ['Lines of their records', number(counts.entries)],
          ['Shelf and plans, all revisions', number(counts.revisions)],
          ...(counts.files > 0
            ? [
                [
                  'From loggers, in every backup',
                  `${number(counts.files)} ${counts.files === 1 ? 'file' : 'files'}, ${formatBytes(counts.fileBytes)}`,
                ],
              ]
            : []),
          ...(counts.photos > 0
            ? [
                [
                  'Photos',
                  `${number(counts.photos)} ${counts.photos === 1 ? 'photo' : 'photos'}, ${formatBytes(counts.photoBytes)}`,
                ],
              ]
            : []),
          ...(room.value
            ? [['Room taken', `${formatBytes(room.value.used)} of ${formatBytes(room.value.of)}`]]
            : []),
          ['Opens without a network', withoutNetwork[opensWithoutNetwork.value]],
          ['Second copy beside it', secondCopy ? 'kept' : isCompared.value ? 'none' : 'not looked at yet'],
        ]}
      />
      <Promised />
    </>
  );
}
