import { Absent } from '#app/parts/absent.tsx';
import { Action } from '#app/parts/action.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { go, type Params } from '#app/router.ts';
import { useBuild } from '#app/state/use-journal.ts';
import { ClosedBuild } from './closed-build.tsx';
import { presentStage, stageAt } from './position.ts';
import { StageView } from './stage-view.tsx';
import './route.css';

/** A build at the bench: the stage it stands at, or the one asked for. */
export function RouteScreen({ params }: { params: Params }) {
  const state = useBuild(params.id);
  if (state === undefined) return <div class="screen" />;
  if (state === 'absent') return <Absent what="tube" />;
  if (state.closedAt !== undefined) return <ClosedBuild state={state} closedAt={state.closedAt} />;
  const stage = stageAt(state, params.stage) ?? presentStage(state) ?? state.stages.at(-1);
  if (!stage) {
    return (
      <Screen title="No route" actions={<Action onPress={() => go('/')}>Back to the bench</Action>}>
        <p>This tube was started with an empty checklist, so there is nothing to tick.</p>
      </Screen>
    );
  }
  return <StageView state={state} stage={stage} />;
}
