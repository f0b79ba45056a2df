import { useSignal } from '@preact/signals';
import { Fragment } from 'preact';
import { StepLine } from '#app/laying-up/build/step-line.tsx';
import { Absent } from '#app/parts/absent.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Caution, Warning } from '#app/parts/warning.tsx';
import { turnWords } from '#app/planning/wall/template-marks.ts';
import { clothOf, type WalledPlan } from '#app/planning/wall/wall-model.ts';
import type { Params } from '#app/router.ts';
import { show } from '#app/state/show.ts';
import { useBuild } from '#app/state/use-journal.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { buildShelf, walledPlanOf } from './build-shelf.ts';
import { ClothChecks } from './cloth-check.tsx';
import { CutDimensions } from './cut-dimensions.tsx';
import { type CutLine, clothChecks, cutLines } from './cut-list.ts';
import { CutListActions, toggleCut } from './cut-list-actions.tsx';
import { type CutPiece, piecesOrProblem } from './cut-pieces.ts';
import { dimension } from './dimensions.ts';
import { Spacing, spacingsFor } from './spacing.tsx';
import '#app/laying-up/build/route.css';
import './cutting.css';

/** What it is cut from, how long and wide, and how heavy. */
function aboutLine({ piece, byArea, weighed }: CutLine, cloth: string | undefined): string {
  const size = `${dimension(piece.length)} × ${dimension(piece.width)}`;
  const reckoned = byArea === undefined ? '' : `, ${show(byArea, 'mass', 0)} by area`;
  const of = cloth === undefined ? '' : `${cloth}: `;
  return `${of}${size}${weighed === undefined ? reckoned : `, weighed ${show(weighed, 'mass')}`}`;
}

interface PiecesProps {
  state: BuildState;
  lines: readonly CutLine[];
  every: number;
  /** Of the cloth that a piece is cut from. */
  nameOf: (piece: CutPiece) => string | undefined;
}

function Pieces({ state, lines, every, nameOf }: PiecesProps) {
  const next = lines.find((l) => !l.step.done);
  return (
    <ol class="steps">
      {lines.map((line) => (
        <Fragment key={line.piece.id}>
          <StepLine
            step={line.step}
            isNow={line === next}
            wait={undefined}
            about={aboutLine(line, nameOf(line.piece))}
            onPress={() => toggleCut(state, line)}
          />
          <li>
            <details class="more" open={line === next}>
              <summary>Dimensions of {line.piece.name}</summary>
              <CutDimensions piece={line.piece} every={every} />
            </details>
          </li>
        </Fragment>
      ))}
    </ol>
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
  const longest = Math.max(...pieces.map((p) => p.length));
  const chosen = useSignal<number | undefined>(undefined);
  const { usual, choices } = spacingsFor(longest);
  // Chosen in millimeters it is no even figure in inches.
  const every = choices.find((m) => m === chosen.value) ?? usual;
  return (
    <Screen
      kicker={`${header.name} no. ${header.number}`}
      title="Cut list"
      back={{ to: `/build/${header.id}`, label: 'Route' }}
      actions={<CutListActions state={state} lines={lines} />}
    >
      <ClothChecks checks={clothChecks(state, plan, lines, shelf)} />
      <Spacing
        length={longest}
        every={every}
        onChange={(m) => {
          chosen.value = m;
        }}
      />
      <Pieces
        state={state}
        lines={lines}
        every={every}
        nameOf={({ piece }) => clothOf(plan, piece, shelf)?.name}
      />
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
