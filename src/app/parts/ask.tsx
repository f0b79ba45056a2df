import { signal, useSignal } from '@preact/signals';
import type { ComponentType } from 'preact';
import { go } from '#app/router.ts';
import './ask.css';

interface Props {
  /** The term's id, as in '/words/seam'. */
  term: string;
  /** 'What is fiber volume?' */
  asks: string;
  /** At the bench, or where no field is beside it: a line of its own, for a gloved thumb. */
  line?: boolean;
}

type TermSheet = ComponentType<{ term: string; onClose: () => void }>;

const loaded = signal<{ Sheet: TermSheet } | undefined>(undefined);

/** A small question beside a word where it first bites; what it means comes up in front, with its picture. */
export function Ask({ term, asks, line }: Props) {
  const open = useSignal(false);
  const ask = async () => {
    try {
      loaded.value ??= { Sheet: (await import('#app/phone/words/words-screen.tsx')).TermSheet };
      open.value = true;
    } catch {
      // No network, and not cached yet: that screen says so, and opens once it is here.
      go(`/words/${term}`);
    }
  };
  const Sheet = loaded.value?.Sheet;
  return (
    <>
      <button type="button" class={line ? 'ask-line' : 'ask'} onClick={ask}>
        {!line && <span aria-hidden="true">?</span>}
        <span class={line ? undefined : 'visually-hidden'}>{asks}</span>
      </button>
      {open.value && Sheet && <Sheet term={term} onClose={() => (open.value = false)} />}
    </>
  );
}
