import { Screen } from './screen.tsx';

/** The address names something that this phone does not have. */
export function Absent({ what }: { what: 'tube' | 'oven load' | 'plan' }) {
  return (
    <Screen title={`No such ${what}`} back={{ to: '/', label: 'Bench' }}>
      <p>
        This {what} is not on this phone. It may be on another one: restore its backup under Shelf, Data and
        backup.
      </p>
    </Screen>
  );
}
