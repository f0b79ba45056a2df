import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { Absent } from '#app/parts/absent.tsx';
import { Screen } from '#app/parts/screen.tsx';
import type { Params } from '#app/router.ts';
import { buildState, loadJournals, ovenState } from '#app/state/journals.ts';
import { isKnown } from '#shared/record/entry.ts';
import { FixForm } from './fix-form.tsx';
import type { Subject } from './say-entry.ts';

/** The build or oven load of an address, read when it is not in memory. */
export function useSubject(id: string): Subject | 'absent' | undefined {
  const read = useSignal(false);
  useEffect(() => {
    loadJournals([id]).then(() => {
      read.value = true;
    });
  }, [id, read]);
  return buildState(id) ?? ovenState(id) ?? (read.value ? 'absent' : undefined);
}

/** What should this line have said? */
export function FixScreen({ params }: { params: Params }) {
  const subject = useSubject(params.subject ?? '');
  if (subject === undefined) return null;
  if (subject === 'absent') return <Absent what="tube" />;
  const fact = subject.facts.find((f) => f.root === params.root);
  const to = `/record/${subject.header.record === 'build' ? 'build' : 'oven'}/${subject.header.id}`;
  const back = { to, label: 'Time line' };
  if (!fact) {
    return (
      <Screen title="No such line" back={back}>
        <p>This line is not in the time line on this phone.</p>
      </Screen>
    );
  }
  const { entry } = fact;
  if (!isKnown(entry)) {
    return (
      <Screen title="From a newer version" back={back}>
        <p>
          This line was written by a newer version of the app. It is kept as it is and goes along in backups.
        </p>
      </Screen>
    );
  }
  return <FixForm subject={subject} fact={{ ...fact, entry }} back={back} />;
}
