import * as z from 'zod/mini';
import { id, positive, stamp } from './common.ts';
import type { Known } from './known.ts';

/** A picture, named by the SHA-256 of its bytes. The bytes stand beside it: a blob in the database, base64 in a backup. */
export const photoRecord = z.looseObject({
  record: z.literal('photo'),
  v: z.number(),
  hash: id,
  type: z.string(),
  bytes: positive,
  addedAt: stamp,
});
export type PhotoRecord = Known<z.infer<typeof photoRecord>>;
