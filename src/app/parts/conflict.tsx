import { Secondary } from '#app/parts/action.tsx';
import { Lines } from '#app/parts/figure.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { type Doc, saveDoc } from '#app/state/documents.ts';
import { now, zoneAt } from '#app/state/now.ts';
import type { Body, DocType } from '#shared/record/revision.ts';
import { formatClockTime, formatDay } from '#shared/units/time.ts';

/** Parts of a plan or a cloth whose own name says little. */
const called: Record<string, string> = {
  lamina: 'stiffness and strength',
  goal: 'fiber volume and losses',
  loads: 'what it carries',
  schedule: 'cure',
};

function differing(a: object, b: object): string {
  const one = a as Record<string, unknown>;
  const two = b as Record<string, unknown>;
  const keys = [...new Set([...Object.keys(one), ...Object.keys(two)])];
  const changed = keys.filter((k) => JSON.stringify(one[k]) !== JSON.stringify(two[k]));
  return changed.map((k) => called[k] ?? k.replace(/([A-Z])/g, ' $1').toLowerCase()).join(', ');
}

interface Props<T extends DocType> {
  type: T;
  doc: Doc<T>;
  /** Rows of what differs: its name, and what each version says. Without it only names are told. */
  table?: (bodies: readonly object[]) => string[][];
}

/** Two phones changed the same thing since they last agreed: both are kept, and the builder says which holds. */
export function Conflict<T extends DocType>({ type, doc, table }: Props<T>) {
  if (doc.others.length === 0) return null;
  const versions = [doc.revision, ...doc.others];
  const bodies = versions.map((v) => v.body as object);
  const rows = table?.(bodies) ?? [];
  const said = (at: number) => `${formatDay(at, zoneAt(at), now.value)}, ${formatClockTime(at, zoneAt(at))}`;
  return (
    <Warning kind="amber" title="Changed on two phones">
      {rows.length > 0 ? (
        <>
          <p>Both versions are kept. They differ in:</p>
          <Lines head={['', ...versions.map((v) => said(v.at))]} rows={rows} />
        </>
      ) : (
        <p>Both versions are kept. They differ in: {differing(bodies[0] ?? {}, bodies[1] ?? {})}.</p>
      )}
      {versions.map((v) => (
        <Secondary key={v.id} onPress={() => saveDoc(type, v.body as Body<T>, { doc: doc.doc })}>
          Keep the one of {said(v.at)}
        </Secondary>
      ))}
    </Warning>
  );
}
