import { Screen } from '#app/parts/screen.tsx';
import type { LoadedPlan } from './use-plan.ts';

/** It was taken out meanwhile, here or on another phone. */
export function NotThere({
  of,
  what,
}: {
  of: LoadedPlan;
  what: 'support' | 'load' | 'load case' | 'fitting';
}) {
  return (
    <Screen title={`No such ${what}`} kicker={of.found.body.name} back={{ to: of.home, label: 'Loads' }}>
      <p>This {what} is not in the plan any more.</p>
    </Screen>
  );
}
