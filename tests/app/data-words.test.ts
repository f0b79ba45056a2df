import { describe, expect, it } from 'vitest';
import { countOf, fileStamp, formatBytes } from '#app/phone/data/file-words.ts';
import { faultWords, holdsWords } from '#app/phone/data/restore-words.ts';
import { checkBackup } from '#storage/backup-check.ts';
import { demoBackup } from '../../demo/backup-text.ts';

describe('what a file is called and how big it is', () => {
  it('carries the day and the time of the place where it was made', () => {
    expect(fileStamp(Date.UTC(2026, 4, 16, 1, 5), -240)).toBe('2026-05-15-2105');
  });

  it('is said in the unit that keeps it short', () => {
    const said = [0, 999, 1000, 412_300, 1_240_000, 3_000_000_000].map((n) =>
      formatBytes(n).replace('\u00a0', ' '),
    );
    expect(said).toEqual(['0 B', '999 B', '1 KB', '412 KB', '1.2 MB', '3 GB']);
  });

  it('counts one as one', () => {
    expect([countOf(0, 'build'), countOf(1, 'build'), countOf(1074, 'line')]).toEqual([
      '0 builds',
      '1 build',
      '1,074 lines',
    ]);
  });
});

describe('what is said of a backup', () => {
  it('names everything it holds', async () => {
    const checked = await checkBackup(new Blob([demoBackup()]));
    expect(checked.ok && holdsWords(checked.holds)).toMatch(
      /^9 builds, 5 oven loads, [\d,]+ lines of their records, \d+ revisions of shelf and plans, 1 logger’s file$/,
    );
  });

  it('is one plain sentence or two for every reason to refuse it', () => {
    for (const words of Object.values(faultWords)) {
      expect(words).toMatch(/^[A-Z].*\.$/);
      expect(words).not.toMatch(/JSON|schema|parse|null|undefined/);
    }
  });
});
