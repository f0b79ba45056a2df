import { backupOf } from '#storage/backup-text.ts';
import { loggerBytes } from './logged.ts';
import { demoShop } from './make-shop.ts';
import { anchor } from './shop-time.ts';

/** The demo shop as the backup file that is committed beside this. */
export function demoBackup(): string {
  // `madeAt` is the moment the shop stands at: whoever loads it moves all times by now less that.
  return backupOf([...demoShop(anchor), loggerBytes], { app: 'demo shop', at: anchor, madeAt: anchor });
}
