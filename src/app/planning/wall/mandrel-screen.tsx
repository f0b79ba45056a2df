import { type Signal, useSignal } from '@preact/signals';
import { Action, Beside, Secondary } from '#app/parts/action.tsx';
import { SelectField } from '#app/parts/field.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { StepField, stepIn } from '#app/parts/step-field.tsx';
import { go, type Params } from '#app/router.ts';
import { docsOf, findDoc } from '#app/state/documents.ts';
import { show } from '#app/state/show.ts';
import { Diameters } from './mandrel-diameters.tsx';
import { straightMandrel } from './mandrel-edits.ts';
import { NoPlan } from './no-plan.tsx';
import { Problem } from './problems.tsx';
import { StretchSheet } from './stretch-sheet.tsx';
import { type WallDraft, wallDraft } from './wall-draft.ts';
import { longest, setLength, setMandrel, setMandrelId, shortest } from './wall-edits.ts';
import { theShelf } from './wall-model.ts';
import './wall.css';

interface Props {
  draft: WallDraft;
  wrong: Signal<ReadonlySet<string>>;
}

const inch = 0.0254;

function FromShelf({ draft }: { draft: WallDraft }) {
  const mandrels = docsOf('mandrel');
  const state = draft.state.value;
  if (mandrels.length === 0) return null;
  return (
    <SelectField
      label="From the shelf"
      value={state.mandrelId ?? ''}
      options={[
        { value: '', label: 'Not on the shelf' },
        ...mandrels.map((m) => ({ value: m.doc, label: m.body.name })),
      ]}
      onChange={(doc) => {
        const body = findDoc('mandrel', doc)?.body;
        const length = Math.max(state.length, body?.length ?? 0);
        const straight = straightMandrel(state.wall.mandrel, body?.diameter, length);
        draft.change(setMandrelId(body ? setMandrel(state, straight) : state, doc || undefined));
      }}
    />
  );
}

function MandrelBody({ draft, wrong }: Props) {
  const stretching = useSignal(false);
  const plan = draft.plan.value;
  const release = theShelf.release(plan?.release);
  return (
    <>
      <StepField
        label="Tube length"
        quantity="length"
        value={draft.state.value.length}
        step={stepIn(0.05, 2 * inch)}
        min={shortest}
        max={longest}
        hint="pieces that reach its end follow it"
        wrong={wrong}
        onSet={(m) => draft.change(setLength(draft.state.peek(), m), 'length')}
      />
      <Secondary onPress={() => (stretching.value = true)}>
        Stretch the whole wall to another length
      </Secondary>
      <Problem problem={draft.problem.value} />
      <FromShelf draft={draft} />
      <Diameters draft={draft} wrong={wrong} />
      <p class="quiet">
        {release
          ? `${release.name} adds ${show(release.buildUp, 'thickness')} to the diameter.`
          : 'No release is chosen in the plan: nothing is added to the diameter.'}
      </p>
      {stretching.value && <StretchSheet draft={draft} onClose={() => (stretching.value = false)} />}
    </>
  );
}

/** What is the tube rolled on, and how long is it? */
export function MandrelScreen({ params }: { params: Params }) {
  const doc = params.doc ?? '';
  const draft = wallDraft(doc);
  const plan = draft?.plan.value;
  const wrong = useSignal<ReadonlySet<string>>(new Set());
  if (!draft || !plan) return <NoPlan />;
  return (
    <Screen
      kicker={plan.name}
      title="Mandrel and length"
      back={{ to: `/plan/${doc}/wall`, label: 'Wall' }}
      actions={
        <>
          <Beside>
            <Secondary onPress={draft.undo} not={draft.canUndo.value ? undefined : 'Nothing to undo'}>
              Undo
            </Secondary>
          </Beside>
          <Action
            onPress={() => go(`/plan/${doc}/wall`)}
            not={wrong.value.size > 0 ? 'A figure above is still wrong' : undefined}
          >
            Mandrel is set: back to the wall
          </Action>
        </>
      }
    >
      <MandrelBody draft={draft} wrong={wrong} />
    </Screen>
  );
}
