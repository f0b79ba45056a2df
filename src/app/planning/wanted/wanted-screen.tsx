import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { Action } from '#app/parts/action.tsx';
import { Row, Rows } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { Assumed, PlanningCaution } from '#app/planning/carry/assumed.tsx';
import { wallBefore } from '#app/planning/loads/just-taken.tsx';
import { type CheckedPlan, marginsOfPlan } from '#app/planning/loads/margins-of-plan.ts';
import { leastOf } from '#app/planning/loads/ruling.ts';
import type { Trouble } from '#app/planning/loads/troubles.ts';
import { Troubles } from '#app/planning/loads/troubles-list.tsx';
import { type LoadedPlan, loadedPlan } from '#app/planning/loads/use-plan.ts';
import { NoPlan } from '#app/planning/wall/no-plan.tsx';
import { type WallDraft, wallDraft } from '#app/planning/wall/wall-draft.ts';
import { hasWall } from '#app/planning/wall/wall-model.ts';
import { go, type Params } from '#app/router.ts';
import { AskingFields } from './asking-fields.tsx';
import { Found } from './found.tsx';
import { useTaking } from './use-taking.ts';
import { useWanted } from './use-wanted.ts';
import { type Asking, firstAsking, wantedInput } from './wanted-input.ts';

interface Props {
  of: LoadedPlan;
  checked: CheckedPlan;
  draft: WallDraft;
}

const frameOf = ({ found, home }: LoadedPlan) => ({
  kicker: found.body.name,
  title: 'Wanted plies',
  back: { to: home, label: 'Loads' },
});

const refusals = {
  tooFar: 'These loads and this wall are too far apart: check the figures of the loads and their units.',
  notOnThePhone:
    'What goes through the plies is not on the phone yet: with a network, come back to this screen.',
};

function Search({ of, checked, draft, first }: Props & { first: Asking }) {
  const { found: doc } = of;
  const { tube, loads } = checked;
  const asking = useSignal(first);
  const wrong = useSignal<ReadonlySet<string>>(new Set());
  const input = useMemo(() => wantedInput(tube, loads, asking.value), [tube, loads, asking.value]);
  const { found, refused, busy } = useWanted(input);
  const answer = found.value;
  const state = draft.state.value;
  const { taking, kept } = useTaking({ doc, checked, state, asking: asking.value, wanted: answer?.wanted });
  const take = async () => {
    if (!taking) return;
    draft.change(taking.next);
    if (!(await draft.save())) return;
    const margin = leastOf(checked.checks)?.margin;
    if (margin !== undefined) wallBefore.value = { doc: doc.doc, margin, mass: taking.masses.today };
    go(`${of.home}/margins`);
  };
  const unsaved = hasWall(doc.body) && draft.changed.value;
  const allKept = taking !== undefined && kept.value.size === taking.stretches.length;
  const not = unsaved
    ? 'Its wall is changed and not saved'
    : busy.value || wrong.value.size > 0
      ? 'Not reckoned yet'
      : refused.value || !taking
        ? 'Nothing to take'
        : !taking.wanted.met
          ? 'Not met: nothing to take'
          : allKept
            ? 'Every step is kept as it is'
            : undefined;
  const some = kept.value.size > 0;
  return (
    <Screen
      {...frameOf(of)}
      actions={
        <Action onPress={take} not={not}>
          {some ? 'Take the steps you chose into the wall' : 'Take these plies into the wall'}
        </Action>
      }
    >
      {!answer && !refused.value && (
        <p class="quiet">Going through plies station by station. It may take some seconds.</p>
      )}
      {refused.value && (
        <Warning kind="amber" title="Cannot be reckoned">
          {refusals[refused.value]}
        </Warning>
      )}
      {answer && taking && <Found length={tube.length} input={answer.input} taking={taking} kept={kept} />}
      <AskingFields tube={tube} asking={asking} wrong={wrong} />
      <Assumed tube={tube} />
      <Rows label="Further">
        <Row to={`${of.home}/margins`} title="Margins" about="What it bears, and where least" />
        <Row to={`/plan/${doc.doc}/wall`} title="Its wall" about="Drawn by hand, piece by piece" />
      </Rows>
      <PlanningCaution />
    </Screen>
  );
}

function NotYet({ of, troubles }: { of: LoadedPlan; troubles: readonly Trouble[] }) {
  const [first] = troubles;
  return (
    <Screen
      {...frameOf(of)}
      actions={<Action onPress={() => go(first?.to ?? of.home)}>{first?.act ?? 'Look at the loads'}</Action>}
    >
      <Troubles troubles={troubles} />
    </Screen>
  );
}

/** How few plies bear it? */
export function WantedScreen({ params }: { params: Params }) {
  const of = loadedPlan(params.doc);
  const draft = of && wallDraft(of.found.doc);
  if (!of || !draft) return <NoPlan />;
  const margins = marginsOfPlan(of.found.doc, of.found.body);
  if (!margins.ok) return <NotYet of={of} troubles={margins.troubles} />;
  const first = firstAsking(margins.checked.tube, of.found.body.cloth);
  if (!first) {
    const says =
      'No piece of cloth runs along the whole tube, so that none can be given other plies anywhere.';
    const to = `/plan/${of.found.doc}/wall`;
    return <NotYet of={of} troubles={[{ says, to, act: 'Look at its wall' }]} />;
  }
  return <Search of={of} checked={margins.checked} draft={draft} first={first} />;
}
