import { isLoggerFile } from '#shared/record/photo.ts';
import type { BackupFault, Checked } from '#storage/backup-check.ts';
import { countOf } from './file-words.ts';

/** Why a file is not taken in, as one sentence. */
export const faultWords: Record<BackupFault, string> = {
  empty: 'There is nothing in it.',
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
    'It was changed after it was made: its checksum does not fit. Copy it again from where it was made.',
};

type Good = Checked & { ok: true };

const howMany = (checked: Good, record: string) =>
  checked.records.filter(({ value }) => value.record === record).length;

/** '9 builds, 5 oven loads, 1,074 lines of their records, 29 revisions of shelf and plans, 3 photos' */
export function holdsWords(checked: Good): string {
  const files = checked.photos.filter((p) => isLoggerFile(p.record)).length;
  const photos = checked.photos.length - files;
  return [
    countOf(howMany(checked, 'build'), 'build'),
    countOf(howMany(checked, 'ovenLoad'), 'oven load'),
    `${countOf(howMany(checked, 'entry'), 'line')} of their records`,
    `${countOf(howMany(checked, 'revision'), 'revision')} of shelf and plans`,
    ...(files > 0 ? [countOf(files, 'logger’s file', 'logger’s files')] : []),
    ...(photos > 0 ? [countOf(photos, 'photo')] : []),
  ].join(', ');
}
