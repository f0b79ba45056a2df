import type { StoredPhoto } from './schema.ts';

/** The end of one lines file, as found on opening. */
export interface Tail {
  slot: number;
  size: number;
  /** Whole records at the end of the file, oldest first. */
  records: string[];
  /** The file holds more than these. */
  more: boolean;
  /** A whole line in the tail has a wrong checksum. */
  damaged: boolean;
}

export interface Chunk {
  records: string[];
  /** Where to read on; absent at the end. */
  next?: number;
}

/** What the page asks of the worker, and what it gets. */
export interface Calls {
  open: { ask: { name: string }; answer: { slot: number; tails: Tail[] } };
  append: { ask: { records: string[] }; answer: Record<string, never> };
  read: { ask: { slot: number; offset: number }; answer: Chunk };
  /** Whether there was room for it. */
  keepPhoto: { ask: { photo: StoredPhoto }; answer: boolean };
  photoNames: { ask: Record<string, never>; answer: string[] };
  readPhoto: { ask: { hash: string }; answer: StoredPhoto | undefined };
  close: { ask: Record<string, never>; answer: Record<string, never> };
}
export type CallName = keyof Calls;
export type Ask = { [N in CallName]: { call: N; ticket: number } & Calls[N]['ask'] }[CallName];
export type Answer =
  | { ticket: number; ok: true; answer: unknown }
  /** `full`: there was no room for it, and the file is as it was. */
  | { ticket: number; ok: false; why: string; full: boolean };

export function linesFileName(name: string, slot: number): string {
  return `${name}-${slot}.lines`;
}

/** The folder with the second copy of photos and of loggers' files. */
export const photoFolder = (name: string): string => `${name}-photos`;

/** The slot of a lines file of this database, or undefined for any other file. */
export function slotOf(name: string, file: string): number | undefined {
  const digits = file.startsWith(`${name}-`) && /^(\d{1,3})\.lines$/.exec(file.slice(name.length + 1));
  return digits ? Number(digits[1]) : undefined;
}
