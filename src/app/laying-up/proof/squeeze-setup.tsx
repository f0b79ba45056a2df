import type { Signal } from '@preact/signals';
import { useSignal } from '@preact/signals';
import { Action } from '#app/parts/action.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { StepField, stepIn } from '#app/parts/step-field.tsx';
import { Caution } from '#app/parts/warning.tsx';
import { show } from '#app/state/show.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { PlannedOfBuild } from './planned-of-build.ts';
import { SqueezePicture } from './squeeze-picture.tsx';
import { expectedNarrower, gentleForce, type Squeezing, sectionAt } from './squeezing.ts';

interface Props {
  state: BuildState;
  planned: PlannedOfBuild;
  squeezing: Signal<Squeezing>;
  onReady: () => void;
}

/** Round figures to pull on a scale, N */
const round = (force: number) => Math.max(1, Math.round(force));

export function SqueezeSetup({ state, planned, squeezing, onReady }: Props) {
  const { id, name, number, tubeLength } = state.header;
  const wrong = useSignal<ReadonlySet<string>>(new Set());
  const now = squeezing.value;
  const section = sectionAt(planned, now.station);
  const force = section && round(gentleForce(section, now));
  const place = { quantity: 'length', wrong } as const;
  return (
    <Screen
      kicker={`${name} no. ${number}`}
      title="Squeeze an end"
      back={{ to: `/proof/${id}`, label: 'Proof test' }}
      actions={
        <Action onPress={onReady} not={wrong.value.size > 0 ? 'Look at the figure that is wrong' : undefined}>
          Squeezed: type the force
        </Action>
      }
    >
      <SqueezePicture />
      <p>
        Between two flats, a scale under one of them. A soft ring buckles early: this tells how thin the end
        is around.
      </p>
      {section && force !== undefined ? (
        <p>
          About <strong>{show(force, 'force', 0)}</strong> should make it{' '}
          <strong>{show(expectedNarrower(section, now, force), 'dial')}</strong> narrower.
        </p>
      ) : (
        <p class="quiet">What to expect is not known: the plan does not say its wall.</p>
      )}
      <Caution>A little is enough: a hundredth of its width. A crack in the ring stays.</Caution>
      <StepField
        {...place}
        label="At, from end 0"
        value={now.station}
        step={stepIn(0.01, 0.0127)}
        digits={0}
        min={0}
        max={tubeLength ?? 15}
        onSet={(station) => (squeezing.value = { ...now, station })}
      />
      <StepField
        {...place}
        label="Width of the flats, along the tube"
        value={now.length}
        step={stepIn(0.005, 0.00635)}
        min={0.002}
        max={1}
        onSet={(length) => (squeezing.value = { ...now, length })}
      />
    </Screen>
  );
}
