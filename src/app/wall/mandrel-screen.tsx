import { type Signal, useSignal } from '@preact/signals';
import { Action, Beside, Secondary } from '#app/parts/action.tsx';
import { Choice, SelectField } from '#app/parts/field.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Sheet } from '#app/parts/sheet.tsx';
import { StepField, stepIn } from '#app/parts/step-field.tsx';
import { go, type Params } from '#app/router.ts';
import { docsOf, findDoc } from '#app/state/documents.ts';
import { show } from '#app/state/show.ts';
import type { ShapeRecord } from '#shared/record/piece.ts';
import {
  addDiameter,
  mandrelKind,
  removeDiameter,
  straightMandrel,
  taperedMandrel,
} from './mandrel-edits.ts';
import { NoPlan } from './no-plan.tsx';
import { Problem } from './problems.tsx';
import { type WallDraft, wallDraft } from './wall-draft.ts';
import { setLength, setMandrel, setMandrelId, stretchTo } from './wall-edits.ts';
import { theShelf } from './wall-model.ts';
import './wall.css';

interface Props {
  draft: WallDraft;
  wrong: Signal<ReadonlySet<string>>;
}

const inch = 0.0254;
const shortest = 0.05;
const longest = 15;

interface DiameterProps extends Props {
  index: number;
  label: string;
  /** One diameter throughout. */
  all?: boolean;
}

function DiameterField({ draft, wrong, index, label, all = false }: DiameterProps) {
  const { wall } = draft.state.value;
  const station = wall.mandrel.stations[index];
  if (!station) return null;
  const set = (value: number) => {
    const stations = wall.mandrel.stations.map((s, i) => (all || i === index ? { ...s, value } : s));
    draft.change(setMandrel(draft.state.value, { ...wall.mandrel, stations }), `diameter ${index}`);
  };
  return (
    <StepField
      label={label}
      quantity="diameter"
      value={station.value}
      step={stepIn(0.0005, inch / 64)}
      min={0.003}
      max={1}
      wrong={wrong}
      onSet={set}
    />
  );
}

function PlaceField({ draft, wrong, index, label }: Props & { index: number; label: string }) {
  const { wall } = draft.state.value;
  const { stations } = wall.mandrel;
  const station = stations[index];
  if (!station) return null;
  const [before, after] = [stations[index - 1], stations[index + 1]];
  const set = (at: number) => {
    const moved = stations.map((s, i) => (i === index ? { ...s, at } : s));
    draft.change(setMandrel(draft.state.value, { ...wall.mandrel, stations: moved }), `place ${index}`);
  };
  return (
    <StepField
      label={label}
      quantity="length"
      value={station.at}
      step={stepIn(0.05, 2 * inch)}
      min={before ? before.at + 0.001 : -longest}
      max={after ? after.at - 0.001 : longest}
      bounds="The diameters go in order from end 0 to the far end: keep this one between its neighbors."
      hint={index === 0 ? 'below 0 is bare mandrel before the tube' : undefined}
      wrong={wrong}
      onSet={set}
    />
  );
}

function Measured(props: Props) {
  const { draft } = props;
  const { mandrel } = draft.state.value.wall;
  const set = (next: ShapeRecord) => draft.change(setMandrel(draft.state.value, next));
  return (
    <>
      {mandrel.stations.map((_, i) => (
        <fieldset key={i} class="mandrel-place">
          <legend>Place {i + 1}</legend>
          <PlaceField {...props} index={i} label={`Place ${i + 1}, from end 0`} />
          <DiameterField {...props} index={i} label={`Bare diameter at place ${i + 1}`} />
          {mandrel.stations.length > 2 && (
            <Secondary onPress={() => set(removeDiameter(mandrel, i))}>Take place {i + 1} out</Secondary>
          )}
        </fieldset>
      ))}
      <Secondary onPress={() => set(addDiameter(mandrel))}>Add a place</Secondary>
    </>
  );
}

function Diameters(props: Props) {
  const { draft } = props;
  const kind = useSignal(mandrelKind(draft.state.value.wall.mandrel));
  const { mandrel } = draft.state.value.wall;
  const last = mandrel.stations.length - 1;
  const choose = (to: typeof kind.value) => {
    kind.value = to;
    if (to === 'straight') draft.change(setMandrel(draft.state.value, straightMandrel(mandrel)));
    if (to === 'tapered') draft.change(setMandrel(draft.state.value, taperedMandrel(mandrel)));
  };
  return (
    <>
      <Choice
        label="Mandrel"
        value={kind.value}
        options={[
          { value: 'straight', label: 'Straight' },
          { value: 'tapered', label: 'Tapered' },
          { value: 'measured', label: 'Measured' },
        ]}
        onChange={choose}
      />
      {kind.value === 'straight' && <DiameterField {...props} index={0} label="Bare diameter" all />}
      {kind.value === 'tapered' && (
        <>
          <DiameterField {...props} index={0} label="Bare diameter at end 0" />
          <DiameterField {...props} index={last} label="Bare diameter at its far end" />
        </>
      )}
      {kind.value === 'measured' ? (
        <Measured {...props} />
      ) : (
        <PlaceField {...props} index={last} label="Its far end, from end 0" />
      )}
    </>
  );
}

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

function StretchSheet({ draft, onClose }: { draft: WallDraft; onClose: () => void }) {
  const to = useSignal(draft.state.value.length);
  return (
    <Sheet
      title="Stretch the whole wall"
      onClose={onClose}
      actions={
        <Action
          onPress={() => {
            draft.change(stretchTo(draft.state.value, to.value));
            onClose();
          }}
        >
          Stretched to {show(to.value, 'length', 0)}
        </Action>
      }
    >
      <p>Every station moves along with the length. The mandrel stays as it is.</p>
      <StepField
        label="To a tube length of"
        quantity="length"
        value={to.value}
        step={stepIn(0.05, 2 * inch)}
        min={shortest}
        max={longest}
        onSet={(m) => (to.value = m)}
      />
      <Secondary onPress={onClose}>Leave it as it is</Secondary>
    </Sheet>
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
            <Secondary onPress={draft.undo}>{draft.canUndo.value ? 'Undo' : 'Nothing to undo'}</Secondary>
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
