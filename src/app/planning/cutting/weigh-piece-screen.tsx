import { weighingOf, weightDrafts } from '#app/laying-up/weigh/weights.ts';
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
import type { BuildState } from '#shared/record/build-state.ts';
import type { EntryDraft } from '#shared/record/entry.ts';
import { unitFor } from '#shared/units/quantity.ts';
import { buildShelf, walledPlanOf } from './build-shelf.ts';
import { type CutLine, cutDraft, cutLines, sumOfPieces } from './cut-list.ts';
import { piecesOrProblem } from './cut-pieces.ts';
import { sumAsWeight } from './sum-as-weight.ts';

/** 20 kg: more than any scale on this bench. */
const most = 20;
/** Farther off its area than this, it is a slip or not that piece at all. */
const doubtful = 0.3;

/** What lies on the scale: one piece, or all cloth together. */
interface OnScale {
  title: string;
  byArea: number;
  /** Pieces that take no resin as cloth does, and stay off the scale. */
  without?: string;
  drafts: (mass: number, typed: string) => EntryDraft[];
}

const uncut = (state: BuildState, lines: readonly CutLine[]) =>
  lines.filter((l) => !l.step.done).map((l) => cutDraft(state, l));

/** With the last piece weighed all cloth is: its sum is the weight that resin is mixed for. */
function sumDrafts(state: BuildState, lines: readonly CutLine[], weighed: CutLine): EntryDraft[] {
  const sum = sumOfPieces(lines.map((l) => (l.piece.id === weighed.piece.id ? weighed : l)));
  return sum === undefined ? [] : sumAsWeight(state, sum);
}

function onScale(
  state: BuildState,
  lines: readonly CutLine[],
  which: string | undefined,
): OnScale | undefined {
  const line = lines.find((l) => l.piece.id === which);
  if (line) {
    return {
      title: line.piece.name,
      byArea: line.byArea ?? 0,
      drafts: (mass, typed) => [
        { kind: 'weight', subject: state.header.id, what: 'cutCloth', mass, typed, piece: line.piece.id },
        ...uncut(state, [line]),
        ...sumDrafts(state, lines, { ...line, weighed: mass }),
      ],
    };
  }
  const weighing = weighingOf('cutCloth');
  const cloth = lines.filter((l) => l.piece.piece.kind === 'cloth');
  if (which !== 'all' || !weighing) return undefined;
  const without = lines.filter((l) => l.piece.piece.kind !== 'cloth').map((l) => l.piece.name);
  return {
    title: weighing.title,
    byArea: cloth.reduce((sum, l) => sum + (l.byArea ?? 0), 0),
    ...(without.length > 0 && { without: without.join(' and ') }),
    drafts: (mass, typed) => [...weightDrafts(state, weighing, mass, typed), ...uncut(state, cloth)],
  };
}

function linesOf(state: BuildState): CutLine[] {
  const plan = walledPlanOf(state.header);
  const pieces = plan ? piecesOrProblem(plan, buildShelf(state.header, plan)) : [];
  return typeof pieces === 'string' ? [] : cutLines(state, pieces);
}

const doubtWords = (byArea: number) =>
  `By its area ${show(byArea, 'mass', 0)}. Is it all on the scale, and nothing else? If so, press and hold.`;

function Weighing({ state, what }: { state: BuildState; what: OnScale }) {
  const figure = useTypedFigure({ quantity: 'mass', positive: true, max: most });
  const mass = figure.si.value;
  const { title, byArea, without } = what;
  const { header } = state;
  const doubt = mass !== undefined && byArea > 0 && Math.abs(mass / byArea - 1) > doubtful;
  const save = async () => {
    if (mass === undefined) return;
    const said = `${title}: ${show(mass, 'mass')}`;
    if (await recordUndoable(what.drafts(mass, figure.typed.value), { said })) goInstead(`/cut/${header.id}`);
  };
  const planned = byArea > 0 ? `Planned ${show(byArea, 'mass')}. ` : '';
  const unit = unitFor('mass', settings.value.units);
  const problem = figure.problem.value;
  const says = problem ?? (doubt ? doubtWords(byArea) : undefined);
  return (
    <Screen
      keys
      kicker={`${header.name} no. ${header.number}`}
      title={title}
      back={{ to: `/cut/${header.id}`, label: 'Cut list' }}
      actions={
        doubt && mass !== undefined ? (
          <HoldAction onHeld={save}>
            Record {show(mass, 'mass')} as it is <small aria-hidden="true">press and hold</small>
          </HoldAction>
        ) : (
          <Action onPress={save} not={mass === undefined ? `${planned}Type what the scale shows` : undefined}>
            It weighs {mass === undefined ? '' : show(mass, 'mass')}
          </Action>
        )
      }
    >
      <p class="quiet">
        {without && `Cloth alone, without ${without}. `}Trimmed to shape, masking off; aramid dried first.
      </p>
      <Keyed text={figure.text} unit={unit} label={`${title}, ${unit}`} says={says} />
    </Screen>
  );
}

/** What does this piece weigh? */
export function WeighPieceScreen({ params }: { params: Params }) {
  const state = useBuild(params.id);
  if (state === undefined) return null;
  const what = state === 'absent' ? undefined : onScale(state, linesOf(state), params.piece);
  if (state === 'absent' || !what) return <Absent what="tube" />;
  return <Weighing state={state} what={what} />;
}
