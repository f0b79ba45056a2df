import { Secondary } from '#app/parts/action.tsx';
import { QuantityField } from '#app/parts/field.tsx';
import { curePointInput, type ItemDraft } from './item-draft.ts';

/** Times at temperature for full cure, as many as the data sheet gives. */
export function CurePoints({ draft }: { draft: ItemDraft }) {
  const points = draft.curePoints;
  return (
    <fieldset class="cure-points">
      <legend>Full cure, by the data sheet</legend>
      <p class="field-hint">
        Two or more tell how the cure runs at every temperature between them. With none, cure time is not
        reckoned.
      </p>
      {points.value.map((point, i) => (
        <div key={i} class="cure-point">
          <div class="field-pair">
            <QuantityField label={`At (${i + 1})`} input={point.temperature} />
            <QuantityField
              label={`For (${i + 1})`}
              input={point.time}
              hint={i === 0 ? '48 h, 3 h' : undefined}
            />
          </div>
          <Secondary
            onPress={() => {
              points.value = points.value.filter((p) => p !== point);
            }}
          >
            Take out line {i + 1}
          </Secondary>
        </div>
      ))}
      <Secondary
        onPress={() => {
          points.value = [...points.value, curePointInput()];
        }}
      >
        Add a time at a temperature
      </Secondary>
    </fieldset>
  );
}
