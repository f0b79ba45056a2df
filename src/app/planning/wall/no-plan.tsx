import { Screen } from '#app/parts/screen.tsx';

export function NoPlan() {
  return (
    <Screen title="No such plan" back={{ to: '/plans', label: 'Plans' }}>
      <p>
        This plan is not on this phone. It may be on another one: restore its backup under Shelf, Data and
        backup.
      </p>
    </Screen>
  );
}
