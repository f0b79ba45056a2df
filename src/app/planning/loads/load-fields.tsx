import { Secondary } from '#app/parts/action.tsx';
import { Choice, QuantityField, SelectField } from '#app/parts/field.tsx';
import { type LoadDraft, type LoadKind, reachProblem, stationDraft } from './load-draft.ts';

const kinds: readonly { value: LoadKind; label: string }[] = [
  { value: 'point', label: 'A force at one place' },
  { value: 'even', label: 'Spread evenly' },
  { value: 'growing', label: 'Spread, more at one end' },
  { value: 'table', label: 'Spread, as a table says' },
  { value: 'torque', label: 'A twist at one place' },
  { value: 'spreadTorque', label: 'A twist spread evenly' },
  { value: 'axial', label: 'A pull or a press along it' },
];

function Way({ draft }: { draft: LoadDraft }) {
  const along = draft.kind.value === 'axial';
  return (
    <Choice
      label="Which way"
      value={draft.against.value ? 'against' : 'with'}
      options={
        along
          ? [
              { value: 'with', label: 'To the far end' },
              { value: 'against', label: 'To end 0' },
            ]
          : [
              { value: 'with', label: 'Down in the picture' },
              { value: 'against', label: 'Up' },
            ]
      }
      onChange={(to) => (draft.against.value = to === 'against')}
    />
  );
}

const minus = 'a minus goes up in the picture';

function Table({ draft, length }: { draft: LoadDraft; length: number }) {
  const stations = draft.stations.value;
  return (
    <>
      {stations.map((s, i) => (
        <div key={s.key} class="field-pair load-station">
          <QuantityField label={`Place ${i + 1}`} input={s.at} />
          <QuantityField label={`Load ${i + 1}`} input={s.value} hint={i === 0 ? minus : undefined} />
          {stations.length > 2 && (
            <Secondary onPress={() => (draft.stations.value = stations.filter((o) => o !== s))}>
              Take place {i + 1} out
            </Secondary>
          )}
        </div>
      ))}
      <Secondary
        onPress={() => (draft.stations.value = [...stations, stationDraft(undefined, undefined, length)])}
      >
        Add a place
      </Secondary>
    </>
  );
}

function Reach({ draft }: { draft: LoadDraft }) {
  const problem = reachProblem(draft);
  return (
    <>
      <div class="field-pair">
        <QuantityField label="Begins at" input={draft.from} hint="from end 0 of the tube" />
        <QuantityField label="Ends at" input={draft.to} />
      </div>
      {problem && (
        <p class="field-problem" role="alert">
          {problem}
        </p>
      )}
    </>
  );
}

function OfKind({ draft, length }: { draft: LoadDraft; length: number }) {
  switch (draft.kind.value) {
    case 'point':
    case 'axial':
      return (
        <>
          <div class="field-pair">
            <QuantityField label="Force" input={draft.force} />
            <QuantityField label="At" input={draft.at} hint="from end 0 of the tube" />
          </div>
          <Way draft={draft} />
        </>
      );
    case 'torque':
      return (
        <div class="field-pair">
          <QuantityField label="Twist" input={draft.torque} hint="a minus twists it the other way" />
          <QuantityField label="At" input={draft.at} hint="from end 0 of the tube" />
        </div>
      );
    case 'spreadTorque':
      return (
        <>
          <QuantityField label="Twist in all" input={draft.torque} hint="a minus twists it the other way" />
          <Reach draft={draft} />
        </>
      );
    case 'even':
      return (
        <>
          <QuantityField label="Load for each length" input={draft.even} hint={minus} />
          <Reach draft={draft} />
        </>
      );
    case 'growing':
      return (
        <>
          <div class="field-pair">
            <QuantityField label="Load at its start" input={draft.atFrom} hint={minus} />
            <QuantityField label="Load at its end" input={draft.atTo} />
          </div>
          <Reach draft={draft} />
        </>
      );
    case 'table':
      return <Table draft={draft} length={length} />;
  }
}

/** What one load is told by, in any unit of force and length. */
export function LoadFields({ draft, length }: { draft: LoadDraft; length: number }) {
  return (
    <>
      <SelectField
        label="What it is"
        value={draft.kind.value}
        options={kinds}
        onChange={(kind) => (draft.kind.value = kind)}
      />
      <OfKind draft={draft} length={length} />
    </>
  );
}
