import * as z from 'zod/mini';
import { stamp } from '#shared/record/common.ts';

export const backupFormat = 'tubewright backup';
export const backupVersion = 1;

/** Lines between the first and the last, by what they hold. */
export interface LineCounts {
  headers: number;
  revisions: number;
  entries: number;
  photos: number;
  /** Records that the app which wrote the backup could not read itself; they are not restored. */
  setAside: number;
}

export function countLines(): LineCounts {
  return { headers: 0, revisions: 0, entries: 0, photos: 0, setAside: 0 };
}

export const firstLine = z.looseObject({
  format: z.literal(backupFormat),
  version: z.literal(backupVersion),
  /** Version of the app that wrote it. */
  app: z.string(),
  at: stamp,
});

const count = z.int().check(z.gte(0));

export const endLine = z.looseObject({
  end: z.literal(backupFormat),
  counts: z.looseObject({
    headers: count,
    revisions: count,
    entries: count,
    photos: count,
    setAside: count,
  }),
  /** Of the UTF-8 bytes of all lines before, each with one line feed. */
  crc32: z.string(),
});
