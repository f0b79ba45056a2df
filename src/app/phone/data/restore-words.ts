import type { Holds } from '#storage/backup-check.ts';
import type { BackupFault } from '#storage/backup-faults.ts';
import { countOf } from './file-words.ts';

/** Why a file is not taken in, as one sentence. */
export const faultWords: Record<BackupFault, string> = {
  empty: 'There is nothing in it.',
  unreadable:
    'The phone stopped reading it here. Choose it again, or copy it to the phone’s own storage first.',
  foreign: 'It is not a backup of this app: those begin with a line that says ‘tubewright backup’.',
  newerVersion: 'A newer version of the app made it. Bring this one up to date, then restore again.',
  cutShort: 'It ends too soon: the last line is missing. Copy it again from where it was made.',
  notJson: 'This line is damaged. Copy the file again from where it was made, or take an earlier backup.',
  notARecord: 'This line is nothing that this app records. It was damaged, or changed by hand.',
  tooLong: 'This line is longer than anything this app writes.',
  tooDeep: 'This line is built unlike anything this app writes.',
  photo:
    'The photo or the logger’s file in this line is damaged. Copy the backup again from where it was made, or take another one.',
  conflict: 'This line says something else than what is known under the same name. It was changed by hand.',
  correction: 'This line corrects a correction, which this app never writes. It was changed by hand.',
  count: 'Lines are missing, or were added: the last line counts what should be there.',
  checksum:
    'It was changed after it was made: what it holds no longer adds up. Copy it again from where it was made.',
  changed: 'It was changed after it was checked. Choose it again.',
};

/** '9 builds, 5 oven loads, 1,074 lines of their records, 29 revisions of shelf and plans, 3 photos' */
export function holdsWords(holds: Holds): string {
  return [
    countOf(holds.builds, 'build'),
    countOf(holds.ovenLoads, 'oven load'),
    `${countOf(holds.entries, 'line')} of their records`,
    `${countOf(holds.revisions, 'revision')} of shelf and plans`,
    ...(holds.files > 0 ? [countOf(holds.files, 'logger’s file', 'logger’s files')] : []),
    ...(holds.photos > 0 ? [countOf(holds.photos, 'photo')] : []),
  ].join(', ');
}
