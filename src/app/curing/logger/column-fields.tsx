import { Choice, SelectField } from '#app/parts/field.tsx';
import type { OvenState } from '#shared/record/oven-state.ts';
import { type ColumnChoice, choicesOf } from './channel-choices.ts';
import type { Degrees } from './columns.ts';
import type { Preview } from './logger-draft.ts';

interface Props {
  preview: Preview;
  state: OvenState;
  onChange: (columns: ColumnChoice[]) => void;
}

const units: readonly { value: Degrees; label: string }[] = [
  { value: 'C', label: '°C' },
  { value: 'F', label: '°F' },
  { value: 'K', label: 'K' },
];

/** What did each column see? */
export function ColumnFields({ preview, state, onChange }: Props) {
  const { columns, look } = preview;
  const options = choicesOf(state);
  const isSaid = columns.every((c) => c.unitSaid);
  return (
    <section class="logger-fields">
      <h2>What each column saw</h2>
      {columns.map((column) => (
        <SelectField
          key={column.column}
          label={`Column ${column.column + 1}: ${column.name}, ${look.sample[0]?.[column.column]?.trim() || 'empty'} at first`}
          value={column.to}
          options={options}
          onChange={(to) => onChange(columns.map((c) => (c.column === column.column ? { ...c, to } : c)))}
        />
      ))}
      <Choice
        label={
          isSaid ? 'Temperatures are in, as its heads say' : 'Temperatures are in, as far as can be told'
        }
        value={columns[0]?.unit}
        options={units}
        onChange={(unit) => onChange(columns.map((c) => ({ ...c, unit })))}
      />
    </section>
  );
}
