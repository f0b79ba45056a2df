import { backupOf as textOf } from '#storage/backup-text.ts';

/** A backup file of these records, as another phone would have saved it. */
export function backupOf(records: readonly { record: string }[], at: number): string {
  return textOf(records, { app: 'another phone', at });
}
