/** Why a backup is refused. Words for people are made in the app. */
export type BackupFault =
  | 'empty'
  /** The phone would not let it be read. */
  | 'unreadable'
  /** Not a backup of this app. */
  | 'foreign'
  | 'newerVersion'
  /** The last line is missing: the file ends too soon. */
  | 'cutShort'
  | 'notJson'
  | 'notARecord'
  | 'tooLong'
  | 'tooDeep'
  /** A photo's bytes are not what its line says. */
  | 'photo'
  /** One id, two contents: in the file, or in the file and on this phone. */
  | 'conflict'
  /** A correction that corrects a correction. */
  | 'correction'
  | 'count'
  | 'checksum'
  /** The file is not what it was when it was checked. */
  | 'changed';

export interface Fault {
  ok: false;
  reason: BackupFault;
  /** Counted from 1. */
  line: number;
  detail: string;
}

/** Thrown where a fault is found, and made a `Fault` at the door. */
export class Refusal extends Error {
  constructor(
    readonly reason: BackupFault,
    readonly line: number,
    message: string,
  ) {
    super(message);
  }
}

/** Runs `work`; a refusal inside it is its outcome. */
export async function orFault<T>(work: () => Promise<T>): Promise<T | Fault> {
  try {
    return await work();
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { ok: false, reason: error.reason, line: error.line, detail: error.message };
  }
}
