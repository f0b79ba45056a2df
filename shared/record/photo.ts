import * as z from 'zod/mini';
import { id, positive, stamp } from './common.ts';
import type { Known } from './known.ts';
import { loggerFileType } from './logger-file.ts';

/** A picture or a logger's file, named by the SHA-256 of its bytes. The bytes stand beside it: a blob in the database, base64 in a backup. */
export const photoRecord = z.looseObject({
  record: z.literal('photo'),
  v: z.number(),
  hash: id,
  type: z.string(),
  bytes: positive,
  addedAt: stamp,
});
export type PhotoRecord = Known<z.infer<typeof photoRecord>>;

/** Readings are made from it: a backup without it would lose them. */
export const isLoggerFile = ({ type }: Pick<PhotoRecord, 'type'>): boolean => type === loggerFileType;
