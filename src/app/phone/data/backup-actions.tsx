import { Action, Secondary } from '#app/parts/action.tsx';
import { Rule } from '#app/parts/rule.tsx';
import { countOf } from './file-words.ts';
import { HandFile } from './hand-file.tsx';
import { handed, type Making, makeBackup, making, stopMaking } from './making-backup.ts';

function HowFar({ done, of }: Making & { step: 'making' }) {
  const percent = of === 0 ? 100 : Math.floor((100 * done) / of);
  return (
    <>
      <p class="small">
        {done.toLocaleString('en-US')} of {countOf(of, 'record')} written. You may go on working.
      </p>
      <Rule label={`${percent} % written`} from={0} to={100} value={percent} unit="%" slim />
      <Secondary onPress={stopMaking}>Stop</Secondary>
      <Action key="making" onPress={() => {}} not="Writing the backup">
        Save the backup
      </Action>
    </>
  );
}

/** The backup out of the app: made, seen on its way, stopped, handed over. */
export function BackupActions({ photos }: { photos: boolean }) {
  const at = making.value;
  if (at.step === 'making') return <HowFar {...at} />;
  return (
    <>
      {at.says && (
        <p class="small" role="status">
          {at.says}
        </p>
      )}
      {at.step === 'made' ? (
        <HandFile
          what="backup"
          file={at.file}
          onHow={(says, out) => {
            if (out) return handed(at.taken, says);
            making.value = { ...at, says };
          }}
        />
      ) : (
        <Action key="make" onPress={() => makeBackup(photos)}>
          Save the backup
        </Action>
      )}
    </>
  );
}
