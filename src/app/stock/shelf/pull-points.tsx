import { Secondary } from '#app/parts/action.tsx';
import { QuantityField } from '#app/parts/field.tsx';
import { type ItemDraft, pairProblem, pullPointInput } from './item-draft.ts';

/** What the tape pulls for each width of it when it is hot, as often as somebody measured it. */
export function PullPoints({ draft }: { draft: ItemDraft }) {
  const points = draft.pullPoints;
  const problem = pairProblem(draft, 'shrinkForce');
  return (
    <fieldset class="cure-points">
      <legend>Pull when hot, by the data sheet or a test of your own</legend>
      <p class="field-hint">
        Hang a strip in the oven with a spring scale: its pull over its width. May stay empty: then what such
        tapes usually pull is shown.
      </p>
      {points.value.map((point, i) => (
        <div key={i} class="cure-point">
          <div class="field-pair">
            <QuantityField label={`At (${i + 1})`} input={point.temperature} />
            <QuantityField label={`Pulls (${i + 1})`} input={point.force} />
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
      {problem && (
        <p class="field-problem" role="alert">
          {problem}
        </p>
      )}
      <Secondary
        onPress={() => {
          points.value = [...points.value, pullPointInput()];
        }}
      >
        Add a pull at a temperature
      </Secondary>
    </fieldset>
  );
}
