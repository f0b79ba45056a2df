import { Screen } from '#app/parts/screen.tsx';

/** The address names something that this shelf does not have. */
export function NotOnShelf() {
  return (
    <Screen title="Not on this shelf" back={{ to: '/shelf', label: 'Shelf' }}>
      <p>
        It is not on this phone. It may be on another one: restore its backup under Shelf, Data and backup.
      </p>
    </Screen>
  );
}
