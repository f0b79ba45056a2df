import { show } from '#app/state/show.ts';
import type { EntryOf } from '#shared/record/entry.ts';

/** '3 mm further round', 'on the mark' */
export function offWords(off: number): string {
  if (Math.abs(off) < 0.000_05) return 'on the mark';
  return `${show(Math.abs(off), 'length')} ${off > 0 ? 'further round' : 'short of it'}`;
}

export const edgeSays = (mark: EntryOf<'edgeMark'> | undefined): string =>
  mark ? offWords(mark.off) : 'read it';
