import { useSignal } from '@preact/signals';
import { Fragment } from 'preact';
import { act } from '#app/build/act.ts';
import { StepLine } from '#app/build/step-line.tsx';
import { retractDrafts, roleTick } from '#app/build/ticks.ts';
import { UndoBar } from '#app/build/undo-bar.tsx';
import { Absent } from '#app/parts/absent.tsx';
import { Action, Beside, Secondary } from '#app/parts/action.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Caution, Warning } from '#app/parts/warning.tsx';
import { go, type Params } from '#app/router.ts';
import { record } from '#app/state/record.ts';
import { theStore } from '#app/state/shop.ts';
import { show } from '#app/state/show.ts';
import { useBuild } from '#app/state/use-journal.ts';
import { turnWords } from '#app/wall/template-marks.ts';
import type { WalledPlan } from '#app/wall/wall-model.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { buildShelf, walledPlanOf } from './build-shelf.ts';
import { ClothChecks } from './cloth-check.tsx';
import { CutDimensions, usualSpacing } from './cut-dimensions.tsx';
import { type CutLine, clothChecks, cutDraft, cutLines, sumOfPieces } from './cut-list.ts';
import { type CutPiece, piecesOrProblem } from './cut-pieces.ts';
import { dimension } from './dimensions.ts';
import { Spacing } from './spacing.tsx';
import '#app/build/route.css';
import './cutting.css';

function aboutLine({ piece, byArea, weighed }: CutLine): string {
  const size = `${dimension(piece.length)} × ${dimension(piece.width)}`;
  const reckoned = byArea === undefined ? '' : `, ${show(byArea, 'mass', 0)} by area`;
  return `${size}${weighed === undefined ? reckoned : `, weighed ${show(weighed, 'mass')}`}`;
}

function toggle(state: BuildState, line: CutLine): Promise<boolean> {
  const { done } = line.step;
  return done
    ? record(retractDrafts(state.header.id, [done.root]))
    : act(state, [cutDraft(state, line)], { said: `Cut: ${line.piece.name}` });
}

/** The pieces weighed one by one are all the cloth there is: their sum is its weight. */
function takeSum(state: BuildState, mass: number): Promise<boolean> {
  const subject = state.header.id;
  const ticks = roleTick(state, 'weighCloth', { newId: () => theStore().newId() });
  return act(state, [{ kind: 'weight', subject, what: 'cutCloth', mass }, ...ticks], {
    said: `Cut cloth: ${show(mass, 'mass')}`,
  });
}

function Main({ state, lines }: { state: BuildState; lines: readonly CutLine[] }) {
  const { id } = state.header;
  const next = lines.find((l) => !l.step.done);
  const sum = sumOfPieces(lines);
  if (next) return <Action onPress={() => toggle(state, next)}>{next.piece.name} is cut</Action>;
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
  return (
    <Beside>
      {weigh && (
        <Secondary onPress={() => go(`/cut/${id}/weigh/${weigh.piece.id}`)}>
          Weigh {weigh.piece.name}
        </Secondary>
      )}
      <Secondary onPress={() => go(`/cut/${id}/weigh/all`)}>Weigh all</Secondary>
    </Beside>
  );
}

interface ListProps {
  state: BuildState;
  plan: WalledPlan;
  pieces: readonly CutPiece[];
}

function CutList({ state, plan, pieces }: ListProps) {
  const { header } = state;
  const shelf = buildShelf(header, plan);
  const lines = cutLines(state, pieces);
  const next = lines.find((l) => !l.step.done);
  const every = useSignal(usualSpacing(Math.max(...pieces.map((p) => p.length))));
  return (
    <Screen
      kicker={`${header.name} no. ${header.number}`}
      title="Cut list"
      back={{ to: `/build/${header.id}`, label: 'Route' }}
      actions={
        <>
          <UndoBar state={state} />
          <Nearby state={state} lines={lines} />
          <Main state={state} lines={lines} />
        </>
      }
    >
      <ClothChecks checks={clothChecks(state, plan, lines, shelf)} />
      <Spacing every={every} />
      <ol class="steps">
        {lines.map((line) => (
          <Fragment key={line.piece.id}>
            <StepLine
              step={line.step}
              isNow={line === next}
              wait={undefined}
              about={aboutLine(line)}
              onPress={() => toggle(state, line)}
            />
            <li>
              <details class="more" open={line === next}>
                <summary>Dimensions of {line.piece.name}</summary>
                <CutDimensions piece={line.piece} every={every.value} />
              </details>
            </li>
          </Fragment>
        ))}
      </ol>
      <Caution>Mark on each: warp, datum edge, end 0, inside face, the way it rolls. {turnWords}.</Caution>
    </Screen>
  );
}

/** What is cut, and does it weigh what it should? */
export function CutListScreen({ params }: { params: Params }) {
  const state = useBuild(params.id);
  if (state === undefined) return null;
  if (state === 'absent') return <Absent what="tube" />;
  const plan = walledPlanOf(state.header);
  const pieces = plan ? piecesOrProblem(plan, buildShelf(state.header, plan)) : undefined;
  if (!plan || !pieces || typeof pieces === 'string') {
    return (
      <Screen title="No cut list" back={{ to: `/build/${state.header.id}`, label: 'Route' }}>
        <Warning kind="amber" title={pieces ? 'Its pieces cannot be reckoned' : 'Its plan has no pieces'}>
          {pieces ?? 'Weigh the cloth instead.'}
        </Warning>
      </Screen>
    );
  }
  return <CutList state={state} plan={plan} pieces={pieces} />;
}
