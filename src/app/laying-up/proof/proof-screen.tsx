import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { Absent } from '#app/parts/absent.tsx';
import { Action, Beside, LinkButton, Secondary } from '#app/parts/action.tsx';
import { Empty } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { go, type Params } from '#app/router.ts';
import { theStore } from '#app/state/shop.ts';
import { useBuild } from '#app/state/use-journal.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { type PlannedOfBuild, plannedOfBuild } from './planned-of-build.ts';
import { ProofResults } from './proof-results.tsx';
import { ReadDial } from './read-dial.tsx';
import { isTested } from './results.ts';
import { begun, runningOf, setRunning } from './running.ts';
import { SetupView } from './setup-view.tsx';
import { type Planning, usePlanning } from './use-planning.ts';

/** Off the mandrel: nothing is hung on a tube that still lies on it. */
const isMade = ({ weights, closedAt }: BuildState): boolean =>
  closedAt !== undefined || weights.has('cured') || weights.has('trimmed');

interface Props {
  state: BuildState;
  planned: PlannedOfBuild;
}

const frameOf = ({ header }: BuildState) => ({
  kicker: `${header.name} no. ${header.number}`,
  title: 'Proof test',
  back: { to: `/weigh/${header.id}`, label: 'Weights' },
});

function Planned({ state, planned, planning }: Props & { planning: Planning }) {
  const setup = planning.setup.value;
  const { id } = state.header;
  return (
    <Screen
      {...frameOf(state)}
      actions={
        <Action
          not={setup.dials.length === 0 ? 'Choose where a dial stands' : planning.wrong.value}
          onPress={() => setRunning(id, begun(theStore().newId(), setup))}
        >
          Ready: read before the weight
        </Action>
      }
    >
      <SetupView planned={planned} planning={planning} />
      <LinkButton to={`/proof/${id}/squeeze`}>Squeeze an end instead</LinkButton>
    </Screen>
  );
}

function Results({ state, onMore }: { state: BuildState; onMore: () => void }) {
  const { id } = state.header;
  return (
    <Screen
      {...frameOf(state)}
      actions={
        state.closedAt === undefined ? (
          <Action onPress={() => go(`/build/${id}`)}>On with the route</Action>
        ) : (
          <Action onPress={() => go(`/record/build/${id}`)}>Back to its record</Action>
        )
      }
    >
      <ProofResults state={state} />
      <Beside>
        <LinkButton to={`/proof/${id}/squeeze`}>Squeeze an end</LinkButton>
        <Secondary onPress={onMore}>Hang a weight</Secondary>
      </Beside>
      <LinkButton to="/factors">What the shop learns of it</LinkButton>
    </Screen>
  );
}

function Proof({ state, planned }: Props) {
  const { id, tubeLength } = state.header;
  const planning = usePlanning(state, planned);
  const more = useSignal(false);
  const running = runningOf(id).value;
  if (running) {
    const done = () => {
      more.value = false;
    };
    return <ReadDial state={state} planned={planned} running={running} onDone={done} />;
  }
  if (isTested(state) && !more.value) return <Results state={state} onMore={() => (more.value = true)} />;
  if (tubeLength === undefined || !planning) {
    return (
      <Screen {...frameOf(state)}>
        <Empty>
          This tube was started without its length: where it would be held and where a weight would hang
          cannot be said.
        </Empty>
      </Screen>
    );
  }
  return <Planned state={state} planned={planned} planning={planning} />;
}

function NotYet({ state }: { state: BuildState }) {
  return (
    <Screen
      {...frameOf(state)}
      actions={<Action onPress={() => go(`/build/${state.header.id}`)}>Back to the route</Action>}
    >
      <Empty>Not off the mandrel yet. Weigh the cured tube, and it can be tested.</Empty>
    </Screen>
  );
}

/** How stiff did it come out? */
export function ProofScreen({ params }: { params: Params }) {
  const state = useBuild(params.id);
  const header = typeof state === 'object' ? state.header : undefined;
  const planned = useMemo(() => header && plannedOfBuild(header), [header]);
  if (state === undefined) return null;
  if (state === 'absent' || !planned) return <Absent what="tube" />;
  return isMade(state) ? <Proof state={state} planned={planned} /> : <NotYet state={state} />;
}
