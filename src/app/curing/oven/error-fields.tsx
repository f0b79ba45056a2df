import { buildName } from '#app/laying-up/clocks/clock-list.ts';
import { QuantityField } from '#app/parts/field.tsx';
import { show } from '#app/state/show.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { celsius } from '#shared/reference/quantities.ts';
import { CheckRow } from './check-row.tsx';
import { type ErrorDraft, offsetInput } from './error-draft.ts';

interface Props {
  draft: ErrorDraft;
  /** Those with a sensor on them. */
  read: readonly BuildState[];
}

/** How far off its sensors and the oven itself are: kept as a margin from every limit. */
export function ErrorFields({ draft, read }: Props) {
  const last = draft.from.value;
  return (
    <details class="more">
      <summary>How far off sensors and oven are</summary>
      <p>
        In ice water a sensor should read {show(celsius(0), 'temperature', 0)}. Write what it reads above
        that; with a minus, what it reads below. It is kept as a margin from every limit; readings stay as
        read.
        {last !== undefined && ` Filled in from oven load ${last}.`}
      </p>
      <ul class="oven-rows">
        <CheckRow
          checked={draft.element.value}
          about="in view of the heater, where a black tube gets hottest"
          onChange={() => {
            draft.element.value = !draft.element.value;
          }}
        >
          A sensor at the element
        </CheckRow>
      </ul>
      <QuantityField label="Air sensor reads too high by" input={offsetInput(draft, 'air')} />
      {read.map((b, i) => (
        <QuantityField
          key={b.header.id}
          label={`Sensor of ${buildName(b)} reads too high by`}
          input={offsetInput(draft, b.header.id, draft.partOffsets.value[i])}
        />
      ))}
      {draft.element.value && (
        <QuantityField label="Element sensor reads too high by" input={offsetInput(draft, 'element')} />
      )}
      <QuantityField
        label="Hottest corner above the sensors"
        input={draft.unevenness}
        hint="measure it empty, in five places"
      />
    </details>
  );
}
