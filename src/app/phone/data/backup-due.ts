/** A day's work: this long after the last backup the builder is reminded, ms */
const dayOfWork = 20 * 3600_000;

export interface BackupFacts {
  /** ms */
  now: number;
  lastBackupAt?: number | undefined;
  /** When anything was first made here, ms */
  firstAt?: number | undefined;
  /** Records that no backup holds. */
  unsaved: number;
  /** Resin is wet somewhere: hands are not free, and nerves neither. */
  wet: boolean;
}

/** Whether to say that a backup is due. */
export function backupDue({ now, lastBackupAt, firstAt, unsaved, wet }: BackupFacts): boolean {
  const since = lastBackupAt ?? firstAt;
  return !wet && unsaved > 0 && since !== undefined && now - since > dayOfWork;
}
