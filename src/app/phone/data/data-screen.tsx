import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { Choice } from '#app/parts/field.tsx';
import { BigFigure } from '#app/parts/figure.tsx';
import { Row, Rows } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { now, zoneAt } from '#app/state/now.ts';
import { settings } from '#app/state/settings.ts';
import { shop } from '#app/state/shop.ts';
import { formatAgo, formatClockTime, formatDay } from '#shared/units/time.ts';
import { BackupActions } from './backup-actions.tsx';
import { countStored, stored, unsavedRecords } from './backup-state.ts';
import { DemoData } from './demo-data.tsx';
import { countOf } from './file-words.ts';
import { Kept } from './kept.tsx';
import { LoadDemo } from './load-demo.tsx';

const shelf = { to: '/shelf', label: 'Shelf' };

function LastBackup() {
  const at = settings.value.lastBackupAt;
  const fresh = unsavedRecords.value;
  if (at === undefined) {
    return (
      <>
        <BigFigure figure="None" unit="yet" label="Last backup" />
        <p>
          A phone that is lost, broken or wiped takes the record with it. A backup is one file you keep
          elsewhere.
        </p>
      </>
    );
  }
  const ago = formatAgo((now.value - at) / 1000);
  const [figure = '', ...unit] = /^\d/.test(ago) ? ago.split(/\s/) : ['Now'];
  return (
    <>
      <BigFigure figure={figure} unit={unit.join(' ')} label="Last backup" />
      <p>
        {formatDay(at, zoneAt(at), now.value)}, {formatClockTime(at, zoneAt(at))}.{' '}
        {fresh === 0 ? 'Everything here is in it.' : `${countOf(fresh, 'line')} since then.`}
      </p>
    </>
  );
}

function OwnData() {
  const photos = useSignal<'with' | 'without'>('with');
  return (
    <Screen title="Data and backup" back={shelf} actions={<BackupActions photos={photos.value === 'with'} />}>
      <LastBackup />
      {(stored.value?.photos ?? 0) > 0 && (
        <Choice
          label="Photos"
          value={photos.value}
          options={[
            { value: 'with', label: 'With photos' },
            { value: 'without', label: 'Without: a smaller file' },
          ]}
          onChange={(value) => {
            photos.value = value;
          }}
        />
      )}
      <Rows label="More with the data">
        <Row to="/data/restore" title="Restore a backup" about="Merges a file into what is here" />
        <Row to="/data/take" title="Take from another phone" about="Its codes, read by the camera" />
        <Row
          to="/data/tables"
          title="Tables for a spreadsheet"
          about="Readings, and builds with their results"
        />
        <Row to="/data/erase" title="Erase everything here" about="After a backup" />
      </Rows>
      <Kept />
      <LoadDemo />
    </Screen>
  );
}

/** Is the record safe? */
export function DataScreen() {
  useEffect(() => {
    countStored();
  }, []);
  return shop.value.phase === 'open' && shop.value.demo ? <DemoData /> : <OwnData />;
}
