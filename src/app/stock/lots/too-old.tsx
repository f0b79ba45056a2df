import { Warning } from '#app/parts/warning.tsx';
import { now } from '#app/state/now.ts';
import type { Lot } from '#shared/record/lot.ts';
import { pastSentence } from './lot-words.ts';

/** A can past its date: since when, and what to do now. */
export function TooOld({ lot }: { lot: Lot }) {
  const past = pastSentence(lot, now.value);
  return past ? (
    <Warning kind="amber" title={`${lot.name}: too old`} announce>
      {past} Set a small sample first and see it go hard, or take another.
    </Warning>
  ) : null;
}
