import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { Choice } from '#app/parts/field.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { countStored, stored } from './backup-state.ts';
import { countOf } from './file-words.ts';
import { HandOver } from './hand-over.tsx';

type Table = 'builds' | 'readings';

const about: Record<Table, string> = {
  builds:
    'One row a build: what it was made of, what it weighed, resin and fiber by weight and by thickness.',
  readings:
    'One row a reading of every oven load, by hand or out of a logger’s file: time, channel, temperature, and which of the two.',
};

async function make(table: Table): Promise<File> {
  const { buildsFile, readingsFile } = await import('./make-table.ts');
  return table === 'builds' ? buildsFile() : readingsFile();
}

/** Which table for a spreadsheet? */
export function TablesScreen() {
  const table = useSignal<Table>('builds');
  useEffect(() => {
    countStored();
  }, []);
  const counts = stored.value;
  const chosen = table.value;
  return (
    <Screen
      title="Tables for a spreadsheet"
      back={{ to: '/data', label: 'Data and backup' }}
      actions={<HandOver key={chosen} what={`table of ${chosen}`} make={() => make(chosen)} />}
    >
      <Choice
        label="Table of"
        value={chosen}
        options={[
          { value: 'builds', label: 'Builds' },
          { value: 'readings', label: 'Oven readings' },
        ]}
        onChange={(value) => {
          table.value = value;
        }}
      />
      <p>{about[chosen]}</p>
      {counts && (
        <p>
          {chosen === 'builds'
            ? `${countOf(counts.builds, 'build')} so far.`
            : `From ${countOf(counts.ovenLoads, 'oven load')}.`}{' '}
          In the units chosen above, each named in the head of its column; decimals with a point.
        </p>
      )}
      <p class="quiet">A table is for reading elsewhere. It is no backup: it cannot be restored.</p>
    </Screen>
  );
}
