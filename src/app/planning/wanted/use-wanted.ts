import { type Signal, useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { WantedInput } from '#calc';
import { wantedAside } from './wanted-aside.ts';
import type { Wanted } from './wanted-worker.ts';

export interface Searching {
  /** Of the last search that came to an end, with what it was asked. */
  found: Signal<{ wanted: Wanted; input: WantedInput } | undefined>;
  refused: Signal<boolean>;
  busy: Signal<boolean>;
}

/** Stepping goes on for about so long between two presses, ms */
const pause = 250;

function start(input: WantedInput, { found, refused, busy }: Searching): () => void {
  const aside = wantedAside();
  busy.value = true;
  let given = false;
  aside
    .search(input)
    .then((wanted) => {
      found.value = { wanted, input };
      refused.value = false;
    })
    .catch(() => {
      if (!given) refused.value = true;
    })
    .finally(() => {
      if (!given) busy.value = false;
      aside.stop();
    });
  return () => {
    given = true;
    aside.stop();
  };
}

/** The fewest plies, searched anew when what is asked changes. */
export function useWanted(input: WantedInput | undefined): Searching {
  const searching: Searching = {
    found: useSignal<{ wanted: Wanted; input: WantedInput } | undefined>(undefined),
    refused: useSignal(false),
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
