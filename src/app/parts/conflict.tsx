import { Secondary } from '#app/parts/action.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { type Doc, saveDoc } from '#app/state/documents.ts';
import { now, zoneAt } from '#app/state/now.ts';
import type { Body, DocType } from '#shared/record/revision.ts';
import { formatClockTime, formatDay } from '#shared/units/time.ts';

function differing(a: object, b: object): string {
  const one = a as Record<string, unknown>;
  const two = b as Record<string, unknown>;
  const keys = [...new Set([...Object.keys(one), ...Object.keys(two)])];
  const changed = keys.filter((k) => JSON.stringify(one[k]) !== JSON.stringify(two[k]));
  return changed.map((k) => k.replace(/([A-Z])/g, ' $1').toLowerCase()).join(', ');
}

/** Two phones changed the same thing since they last agreed: both are kept, and the builder says which holds. */
export function Conflict<T extends DocType>({ type, doc }: { type: T; doc: Doc<T> }) {
  if (doc.others.length === 0) return null;
  const versions = [doc.revision, ...doc.others];
  return (
    <Warning kind="amber" title="Changed on two phones">
      <p>
        Both versions are kept. They differ in: {differing(versions[0]?.body ?? {}, versions[1]?.body ?? {})}.
      </p>
      {versions.map((v) => (
        <Secondary key={v.id} onPress={() => saveDoc(type, v.body as Body<T>, { doc: doc.doc })}>
          Keep the one of {formatDay(v.at, zoneAt(v.at), now.value)}, {formatClockTime(v.at, zoneAt(v.at))}
        </Secondary>
      ))}
    </Warning>
  );
}
