import { Action } from '#app/parts/action.tsx';
import { Empty, Row, Rows } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { go } from '#app/router.ts';
import { useAllSummaries } from '#app/state/all-summaries.ts';
import { type Doc, docsOf, retiredOf } from '#app/state/documents.ts';
import type { BuildSummary } from '#shared/record/summary.ts';
import { grams, leftLabel } from './ledger-words.ts';
import { allFacts } from './part-facts.ts';
import { reckonStructure } from './reckon.ts';

export function sumOf({ body }: Doc<'structure'>, builds: readonly BuildSummary[]) {
  const { budget } = body;
  return reckonStructure({ ...(budget !== undefined && { budget }), parts: allFacts(body, builds) });
}

function StructureRow({ found, builds }: { found: Doc<'structure'>; builds: readonly BuildSummary[] }) {
  const sum = sumOf(found, builds);
  const { left } = sum;
  return (
    <Row
      to={`/ledger/${found.doc}`}
      title={found.body.name}
      about={
        found.others.length > 0
          ? 'Changed on two phones: open it to choose'
          : left === undefined
            ? 'No budget yet'
            : `${grams(Math.abs(left))} ${leftLabel(sum)}`
      }
      value={grams(sum.expected)}
    />
  );
}

/** What are the tubes for, and is it light enough? */
export function LedgerScreen() {
  const all = useAllSummaries();
  const found = docsOf('structure');
  const retired = retiredOf('structure');
  return (
    <Screen
      title="Structures"
      back={{ to: '/plans', label: 'Plans' }}
      actions={<Action onPress={() => go('/ledger/new')}>Write a new structure</Action>}
    >
      {found.length === 0 && (
        <Empty>
          No structures yet. A structure is what tubes are made for: a mast set, a frame. It keeps a budget
          and says how many grams of it are left.
        </Empty>
      )}
      {all && (
        <Rows label="Structures">
          {found.map((one) => (
            <StructureRow key={one.doc} found={one} builds={all.builds} />
          ))}
        </Rows>
      )}
      {retired.length > 0 && (
        <details class="more">
          <summary>Put away ({retired.length})</summary>
          <Rows label="Put away">
            {retired.map(({ doc, body }) => (
              <Row key={doc} to={`/ledger/${doc}`} title={body.name} />
            ))}
          </Rows>
        </details>
      )}
    </Screen>
  );
}
