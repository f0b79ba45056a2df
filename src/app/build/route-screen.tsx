import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { Action } from '#app/parts/action.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { go, type Params } from '#app/router.ts';
import { buildState, journals, loadJournals } from '#app/state/journals.ts';
import { ClosedBuild } from './closed-build.tsx';
import { presentStage, stageAt } from './position.ts';
import { StageView } from './stage-view.tsx';
import './route.css';

function NoBuild({ why }: { why: string }) {
  return (
    <Screen title="No build here" actions={<Action onPress={() => go('/')}>Back to the bench</Action>}>
      <p>{why}</p>
    </Screen>
  );
}

/** A build at the bench: the stage it stands at, or the one asked for. */
export function RouteScreen({ params }: { params: Params }) {
  const id = params.id ?? '';
  const failed = useSignal(false);
  useEffect(() => {
    loadJournals([id]).catch(() => {
      failed.value = true;
    });
  }, [id]);
  const state = buildState(id);
  if (!state) {
    if (failed.value)
      return <NoBuild why="Its record could not be read just now. Open it again from the bench." />;
    if (!journals.value.has(id)) return <div class="screen" />;
    return <NoBuild why="This phone has no build at this address. It may stand in another phone's record." />;
  }
  if (state.closedAt !== undefined) return <ClosedBuild state={state} closedAt={state.closedAt} />;
  const stage = stageAt(state, params.stage) ?? presentStage(state) ?? state.stages.at(-1);
  if (!stage) return <NoBuild why="This build was started with an empty checklist, so it has no route." />;
  return <StageView state={state} stage={stage} />;
}
