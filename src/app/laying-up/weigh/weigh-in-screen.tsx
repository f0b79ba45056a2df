import { Absent } from '#app/parts/absent.tsx';
import { Action } from '#app/parts/action.tsx';
import { HoldAction } from '#app/parts/hold-action.tsx';
import { Keyed } from '#app/parts/keyed.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { useTypedFigure } from '#app/parts/typed-figure.ts';
import { goInstead, type Params } from '#app/router.ts';
import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import { recordUndoable } from '#app/state/undo.ts';
import { useBuild } from '#app/state/use-journal.ts';
import { unitFor } from '#shared/units/quantity.ts';
import { doubtAbout, weighingOf, weightDrafts } from './weights.ts';

/** 20 kg: more than any scale on this bench. */
const most = 20;

/** What does the scale show? */
export function WeighInScreen({ params }: { params: Params }) {
  const state = useBuild(params.id);
  const weighing = weighingOf(params.what);
  const figure = useTypedFigure({ quantity: 'mass', min: 0, max: most });
  if (state === undefined) return null;
  if (state === 'absent' || !weighing) return <Absent what="tube" />;
  const mass = figure.si.value;
  const doubt = mass === undefined ? undefined : doubtAbout(state, weighing.what, mass);
  const planned = weighing.what === 'cutCloth' ? `Planned ${show(state.header.clothMass, 'mass')}. ` : '';
  const before = state.weights.get(weighing.what)?.entry;
  const save = async () => {
    if (mass === undefined) return;
    const said = `${weighing.title}: ${show(mass, 'mass')}`;
    if (await recordUndoable(weightDrafts(state, weighing, mass, figure.typed.value), { said })) {
      goInstead(`/weigh/${state.header.id}`);
    }
  };
  const unit = unitFor('mass', settings.value.units);
  return (
    <Screen
      keys
      kicker={`${state.header.name} no. ${state.header.number}`}
      title={weighing.title}
      back={{ to: `/weigh/${state.header.id}`, label: 'Weights' }}
      actions={
        doubt && mass !== undefined ? (
          <HoldAction onHeld={save}>
            Record {show(mass, 'mass')} as it is <small aria-hidden="true">press and hold</small>
          </HoldAction>
        ) : (
          <Action onPress={save} not={mass === undefined ? `${planned}Type what the scale shows` : undefined}>
            {weighing.done} {mass === undefined ? '' : show(mass, 'mass')}
          </Action>
        )
      }
    >
      <p class="quiet">
        {before ? `Last weighed ${show(before.mass, 'mass')}. ` : ''}
        {weighing.hint}
      </p>
      <Keyed
        text={figure.text}
        unit={unit}
        label={`${weighing.title}, ${unit}`}
        says={figure.problem.value ?? doubt}
      />
    </Screen>
  );
}
