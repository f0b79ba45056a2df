import { Row, Rows } from '#app/parts/rows.tsx';
import type { Doc } from '#app/state/documents.ts';
import { zoneAt } from '#app/state/now.ts';
import type { DocType } from '#shared/record/revision.ts';
import type { OvenSummary } from '#shared/record/summary.ts';
import { formatDay } from '#shared/units/time.ts';

/** More of them than this want another word. */
const most = 12;

const kinds: Record<DocType, string> = {
  plan: 'Plan',
  cloth: 'Cloth',
  resin: 'Resin system',
  release: 'Release system',
  tape: 'Shrink tape',
  mandrel: 'Mandrel',
  core: 'Core',
  checklist: 'Checklist',
  lot: 'Lot',
  structure: 'Structure',
};

function placeOf({ revision, doc }: Doc<DocType>): string {
  if (revision.type === 'plan') return `/plan/${doc}`;
  if (revision.type === 'structure') return `/ledger/${doc}`;
  if (revision.type === 'lot') return `/lots/${doc}`;
  return `/shelf/${revision.type}/${doc}`;
}

interface Props {
  docs: readonly Doc<DocType>[];
  ovens: readonly OvenSummary[];
  at: number;
}

/** Plans, things on the shelf and oven loads that were found. */
export function OtherRows({ docs, ovens, at }: Props) {
  const all = docs.length + ovens.length;
  if (all === 0) return null;
  return (
    <section>
      <h2>Plans, shelf and oven</h2>
      <Rows label="Plans, shelf and oven">
        {docs.slice(0, most).map((d) => (
          <Row key={d.doc} to={placeOf(d)} title={d.body.name} about={kinds[d.revision.type]} />
        ))}
        {ovens.slice(0, most).map((o) => (
          <Row
            key={o.subject}
            to={`/record/oven/${o.subject}`}
            title={`Oven load ${o.number}`}
            about={formatDay(o.startedAt, zoneAt(o.startedAt), at)}
          />
        ))}
      </Rows>
      {all > most && <p class="quiet small">{all} have these words. Another word narrows it.</p>}
    </section>
  );
}
