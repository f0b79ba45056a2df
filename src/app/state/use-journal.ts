import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { BuildState } from '#shared/record/build-state.ts';
import { buildState, loadJournals } from './journals.ts';

/** The build as it stands; undefined until it is read, 'absent' when this phone has none by that id. */
export function useBuild(id: string | undefined): BuildState | 'absent' | undefined {
  const read = useSignal(false);
  useEffect(() => {
    let current = true;
    if (id === undefined) return;
    loadJournals([id]).then(() => {
      if (current) read.value = true;
    });
    return () => {
      current = false;
    };
  }, [id, read]);
  const state = id === undefined ? undefined : buildState(id);
  return state ?? (read.value ? 'absent' : undefined);
}
