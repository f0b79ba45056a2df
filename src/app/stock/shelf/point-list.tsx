import { Secondary } from '#app/parts/action.tsx';
import { QuantityField, SelectField } from '#app/parts/field.tsx';
import type { PointsField } from './fields.ts';
import type { ItemDraft } from './item-draft.ts';
import { type PointRow, pointRow } from './point-rows.ts';

function Line({ field, row, number }: { field: PointsField; row: PointRow; number: number }) {
  return (
    <>
      {field.of.map(({ key, label }) => {
        const input = row.numbers.get(key);
        return input && <QuantityField key={key} label={`${label} (${number})`} input={input} />;
      })}
      {field.ends && (
        <SelectField
          label={`It ends when (${number})`}
          value={row.ends.value}
          options={field.ends}
          onChange={(value) => {
            row.ends.value = value;
          }}
        />
      )}
    </>
  );
}

/** As many points of a kind as the data sheet gives. */
export function PointList({ draft, field }: { draft: ItemDraft; field: PointsField }) {
  const list = draft.lists.get(field.path);
  if (!list) return null;
  return (
    <fieldset class="cure-points">
      <legend>{field.label}</legend>
      {field.hint && <p class="field-hint">{field.hint()}</p>}
      {list.value.map((row, i) => (
        <div key={i} class="cure-point">
          <Line field={field} row={row} number={i + 1} />
          <Secondary
            onPress={() => {
              list.value = list.value.filter((r) => r !== row);
            }}
          >
            Take out line {i + 1} of {field.label.toLowerCase()}
          </Secondary>
        </div>
      ))}
      <Secondary
        onPress={() => {
          list.value = [...list.value, pointRow(field)];
        }}
      >
        {field.add}
      </Secondary>
    </fieldset>
  );
}
