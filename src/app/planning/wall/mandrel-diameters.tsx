import { type Signal, useSignal } from '@preact/signals';
import { Secondary } from '#app/parts/action.tsx';
import { Choice } from '#app/parts/field.tsx';
import { StepField, stepIn } from '#app/parts/step-field.tsx';
import type { ShapeRecord } from '#shared/record/piece.ts';
import {
  addDiameter,
  mandrelKind,
  removeDiameter,
  straightMandrel,
  taperedMandrel,
} from './mandrel-edits.ts';
import type { WallDraft } from './wall-draft.ts';
import { setMandrel } from './wall-edits.ts';

interface Props {
  draft: WallDraft;
  wrong: Signal<ReadonlySet<string>>;
}

const inch = 0.0254;
/** Nobody turns a mandrel longer than this, nor leaves more of it bare, m */
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

/** The bare mandrel: one diameter, two, or as measured. */
export function Diameters(props: Props) {
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
          <DiameterField
            {...props}
            index={0}
            label={mandrel.stations[0]?.at === 0 ? 'Bare diameter at end 0' : 'Bare diameter at its near end'}
          />
          <PlaceField {...props} index={0} label="Its near end, from end 0" />
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
