import { describe, expect, it } from 'vitest';
import { type BackupFacts, backupDue } from '#app/phone/data/backup-due.ts';

const hour = 3600_000;
const now = Date.UTC(2026, 4, 16, 20);
const due: BackupFacts = { now, lastBackupAt: now - 21 * hour, unsaved: 3, wet: false };

describe('a reminder of the backup', () => {
  it('comes after a day’s work that no backup holds', () => {
    expect(backupDue(due)).toBe(true);
  });

  it('comes for a first day that never was backed up', () => {
    expect(backupDue({ now, firstAt: now - 21 * hour, unsaved: 40, wet: false })).toBe(true);
  });

  it('stays away while resin is wet', () => {
    expect(backupDue({ ...due, wet: true })).toBe(false);
  });

  it('stays away when nothing was recorded since the last backup', () => {
    expect(backupDue({ ...due, unsaved: 0 })).toBe(false);
  });

  it('stays away for 20 hours after a backup or after the first build', () => {
    expect(backupDue({ ...due, lastBackupAt: now - 20 * hour })).toBe(false);
    expect(backupDue({ ...due, lastBackupAt: now - 20 * hour - 1 })).toBe(true);
    expect(backupDue({ now, firstAt: now - hour, unsaved: 40, wet: false })).toBe(false);
  });

  it('counts from the last backup, not from the first build', () => {
    expect(backupDue({ ...due, firstAt: now - 900 * hour, lastBackupAt: now - hour })).toBe(false);
  });

  it('stays away in an empty shop, and when the phone’s clock was set back', () => {
    expect(backupDue({ now, unsaved: 1, wet: false })).toBe(false);
    expect(backupDue({ ...due, lastBackupAt: now + 50 * hour })).toBe(false);
  });
});
