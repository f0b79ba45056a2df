import { useSignal } from '@preact/signals';
import { Secondary } from '#app/parts/action.tsx';
import { Empty, Row, Rows } from '#app/parts/rows.tsx';
import { show } from '#app/state/show.ts';
import { type EntryOf, isKnown } from '#shared/record/entry.ts';
import type { Fact } from '#shared/record/journal.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
import { formatClockTime } from '#shared/units/time.ts';

/** Shown at first; the rest on asking, so many more at a time */
const first = 8;
const more = 100;

const isReading = (fact: Fact): fact is Fact<EntryOf<'reading'>> =>
  !fact.retracted && fact.entry.kind === 'reading' && isKnown(fact.entry);

function newest({ facts }: OvenState, count: number): Fact<EntryOf<'reading'>>[] {
  const found: Fact<EntryOf<'reading'>>[] = [];
  for (let i = facts.length - 1; i >= 0 && found.length < count; i -= 1) {
    const fact = facts[i];
    if (fact && isReading(fact)) found.push(fact);
  }
  return found;
}

/** Readings, newest first; each leads to where it is put right. */
export function ReadingsList({ state }: { state: OvenState }) {
  const shown = useSignal(first);
  const total = state.readings.reduce((sum, r) => sum + r.at.length, 0);
  const name = (id: string) => state.header.channels.find((c) => c.id === id)?.name ?? 'A sensor';
  return (
    <section>
      <h2>Readings</h2>
      {total === 0 && <Empty>Nothing read yet. The first reading says where the oven starts from.</Empty>}
      {total > 0 && (
        <Rows label="Readings, newest first">
          {newest(state, shown.value).map(({ entry, root, earlier }) => (
            <Row
              key={root}
              to={`/record/fix/${state.header.id}/${root}`}
              title={show(entry.temperature, 'temperature')}
              about={`${name(entry.channel)}${earlier.length > 0 ? ' · corrected' : ''}`}
              value={formatClockTime(entry.happenedAt, entry.zone)}
            />
          ))}
        </Rows>
      )}
      {total > shown.value && (
        <Secondary
          onPress={() => {
            shown.value += more;
          }}
        >
          Earlier readings
        </Secondary>
      )}
    </section>
  );
}
