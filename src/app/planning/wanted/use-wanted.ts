import { type Signal, useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { beside, NotOnThePhone } from '#app/platform/beside.ts';
import type { WantedInput } from '#calc';
import type { Wanted } from './wanted-worker.ts';

export interface Searching {
  /** Of the last search that came to an end, with what it was asked. */
  found: Signal<{ wanted: Wanted; input: WantedInput } | undefined>;
  /** Why the last one gave nothing. */
  refused: Signal<'tooFar' | 'notOnThePhone' | undefined>;
  busy: Signal<boolean>;
}

/** Stepping goes on for about so long between two presses, ms */
const pause = 250;

function start(input: WantedInput, { found, refused, busy }: Searching): () => void {
  const script = new Worker(new URL('./wanted-worker.ts', import.meta.url), { type: 'module' });
  const searcher = beside<WantedInput, Wanted>(script);
  busy.value = true;
  let given = false;
  searcher
    .ask(input)
    .then((wanted) => {
      found.value = { wanted, input };
      refused.value = undefined;
    })
    .catch((error: Error) => {
      if (!given) refused.value = error instanceof NotOnThePhone ? 'notOnThePhone' : 'tooFar';
    })
    .finally(() => {
      if (!given) busy.value = false;
      searcher.stop();
    });
  return () => {
    given = true;
    searcher.stop();
  };
}

/** The fewest plies, searched anew when what is asked changes. */
export function useWanted(input: WantedInput | undefined): Searching {
  const searching: Searching = {
    found: useSignal<{ wanted: Wanted; input: WantedInput } | undefined>(undefined),
    refused: useSignal<'tooFar' | 'notOnThePhone' | undefined>(undefined),
    busy: useSignal(true),
  };
  useEffect(() => {
    if (!input) return;
    let stop = () => {};
    const waiting = setTimeout(
      () => {
        stop = start(input, searching);
      },
      searching.found.peek() ? pause : 0,
    );
    return () => {
      clearTimeout(waiting);
      stop();
    };
  }, [input]);
  return searching;
}
