import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { BuildSummary } from '#shared/record/summary.ts';
import { journals } from './journals.ts';
import { theStore } from './shop.ts';

const pageSize = 500;

/** Every build's summary, newest first. */
export async function readAllBuilds(): Promise<BuildSummary[]> {
  const all: BuildSummary[] = [];
  let after: string | undefined;
  do {
    const page = await theStore().summaries({
      of: 'build',
      limit: pageSize,
      ...(after !== undefined && { after }),
    });
    for (const s of page.summaries) if (s.of === 'build') all.push(s);
    after = page.next;
  } while (after !== undefined);
  return all;
}

/** Every build's summary for as long as a screen lives, read again with whatever is entered; undefined until read. */
export function useAllBuilds(): readonly BuildSummary[] | undefined {
  const all = useSignal<readonly BuildSummary[] | undefined>(undefined);
  const changes = journals.value;
  useEffect(() => {
    let current = true;
    readAllBuilds().then((read) => {
      if (current) all.value = read;
    });
    return () => {
      current = false;
    };
  }, [changes, all]);
  return all.value;
}
