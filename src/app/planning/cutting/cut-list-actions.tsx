import { act } from '#app/laying-up/build/act.ts';
import { retractDrafts } from '#app/laying-up/build/ticks.ts';
import { UndoBar } from '#app/laying-up/build/undo-bar.tsx';
import { Action, Beside, Secondary } from '#app/parts/action.tsx';
import { go } from '#app/router.ts';
import { record } from '#app/state/record.ts';
import { show } from '#app/state/show.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { type CutLine, cutDraft, sumOfPieces } from './cut-list.ts';
import { sumAsWeight } from './sum-as-weight.ts';

/** Cut, or not cut after all. */
export function toggleCut(state: BuildState, line: CutLine): Promise<boolean> {
  const { done } = line.step;
  return done
    ? record(retractDrafts(state.header.id, [done.root]))
    : act([cutDraft(state, line)], { said: `Cut: ${line.piece.name}` });
}

function takeSum(state: BuildState, mass: number): Promise<boolean> {
  return act(sumAsWeight(state, mass), { said: `Cut cloth: ${show(mass, 'mass')}` });
}

function Main({ state, lines }: { state: BuildState; lines: readonly CutLine[] }) {
  const { id } = state.header;
  const next = lines.find((l) => !l.step.done);
  const sum = sumOfPieces(lines);
  if (next) return <Action onPress={() => toggleCut(state, next)}>{next.piece.name} is cut</Action>;
  if (state.weights.has('cutCloth'))
    return <Action onPress={() => go(`/build/${id}`)}>On with the route</Action>;
  if (sum !== undefined) {
    return <Action onPress={() => takeSum(state, sum)}>All cut: {show(sum, 'mass')} of cloth</Action>;
  }
  return <Action onPress={() => go(`/cut/${id}/weigh/all`)}>Weigh all the cloth</Action>;
}

function Nearby({ state, lines }: { state: BuildState; lines: readonly CutLine[] }) {
  const { id } = state.header;
  const cut = lines.filter((l) => l.step.done);
  const weigh = cut.find((l) => l.weighed === undefined) ?? lines.find((l) => l.weighed === undefined);
  // Once all is cut the main action weighs it all.
  const all = cut.length < lines.length || state.weights.has('cutCloth') || sumOfPieces(lines) !== undefined;
  return (
    <Beside>
      {weigh && (
        <Secondary onPress={() => go(`/cut/${id}/weigh/${weigh.piece.id}`)}>
          Weigh {weigh.piece.name}
        </Secondary>
      )}
      {all && <Secondary onPress={() => go(`/cut/${id}/weigh/all`)}>Weigh all</Secondary>}
    </Beside>
  );
}

/** The next piece to cut, then the scale, then the way back. */
export function CutListActions(props: { state: BuildState; lines: readonly CutLine[] }) {
  return (
    <>
      <UndoBar state={props.state} />
      <Nearby {...props} />
      <Main {...props} />
    </>
  );
}
