import type { Signal } from '@preact/signals';
import { Action, Secondary } from '#app/parts/action.tsx';
import { Keyed } from '#app/parts/keyed.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { useTypedFigure } from '#app/parts/typed-figure.ts';
import { goInstead } from '#app/router.ts';
import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import { recordUndoable } from '#app/state/undo.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { unitFor } from '#shared/units/quantity.ts';
import type { PlannedOfBuild } from './planned-of-build.ts';
import { expectedNarrower, type Squeezing, sectionAt, whyNot } from './squeezing.ts';
import { at } from './words.ts';

interface Props {
  state: BuildState;
  planned: PlannedOfBuild;
  squeezing: Signal<Squeezing>;
  onBack: () => void;
}

function Force({ state, squeezing, onBack }: Props) {
  const figure = useTypedFigure({ quantity: 'force', positive: true, max: 1e4 });
  const unit = unitFor('force', settings.value.units);
  const si = figure.si.value;
  const take = () => {
    if (si !== undefined) squeezing.value = { ...squeezing.value, force: { si, typed: figure.typed.value } };
  };
  return (
    <Screen
      keys
      kicker={`${state.header.name} no. ${state.header.number}`}
      title={`Squeezed at ${at(squeezing.value.station)} with`}
      actions={
        <>
          <Secondary onPress={onBack}>Not yet</Secondary>
          <Action onPress={take} not={si === undefined ? 'Type the force' : undefined}>
            {si === undefined ? '' : `With ${show(si, 'force')}`}
          </Action>
        </>
      }
    >
      <p class="quiet">What the scale shows, as a force.</p>
      <Keyed text={figure.text} unit={unit} label={`Force, ${unit}`} says={figure.problem.value} />
    </Screen>
  );
}

function Narrower({ state, planned, squeezing }: Props) {
  const now = squeezing.value;
  const { station, length, force } = now;
  const section = sectionAt(planned, station);
  const figure = useTypedFigure({ quantity: 'dial', positive: true, max: 1 });
  const unit = unitFor('dial', settings.value.units);
  const si = figure.si.value;
  const refused = figure.problem.value ?? (si === undefined ? undefined : whyNot(section, now, si));
  const expected = section && force && expectedNarrower(section, now, force.si);
  const save = async () => {
    if (si === undefined || !force) return;
    const draft = {
      kind: 'squeezeTest',
      subject: state.header.id,
      station,
      force: force.si,
      narrower: si,
      length,
      ...(section && { expected: section.ringStiffness }),
      typed: { force: force.typed, narrower: figure.typed.value },
    } as const;
    const said = `Squeezed with ${show(force.si, 'force')}: ${show(si, 'dial')} narrower`;
    if (await recordUndoable(draft, { said })) goInstead(`/proof/${state.header.id}`);
  };
  const back = () => {
    squeezing.value = { station, length };
  };
  return (
    <Screen
      keys
      kicker={`${state.header.name} no. ${state.header.number}, ${show(force?.si ?? 0, 'force')} at ${at(station)}`}
      title="Narrower by"
      actions={
        <>
          <Secondary onPress={back}>Another force</Secondary>
          <Action
            onPress={save}
            not={refused ? 'Look at the figure' : si === undefined ? 'Type how much it gave' : undefined}
          >
            {si === undefined ? '' : `It gave ${show(si, 'dial')}`}
          </Action>
        </>
      }
    >
      <p class="quiet">
        {expected ? `Expect ${show(expected, 'dial')}.` : 'How much it gave between the flats.'}
      </p>
      <Keyed text={figure.text} unit={unit} label={`Narrower by, ${unit}`} says={refused} />
    </Screen>
  );
}

/** With what force, and how much did it give? */
export function SqueezeFigure(props: Props) {
  return props.squeezing.value.force ? <Narrower {...props} /> : <Force {...props} />;
}
