import { QuantityField, SelectField } from '#app/parts/field.tsx';
import { docsOf, findDoc } from '#app/state/documents.ts';
import type { MakingDraft } from './draft.ts';

/** What the first ply sees, off the shelf or measured, and how long the tube gets. */
export function MandrelFields({ draft }: { draft: MakingDraft }) {
  return (
    <>
      <SelectField
        label="Mandrel"
        value={draft.mandrel.value}
        options={[
          { value: '', label: 'Not on the shelf' },
          ...docsOf('mandrel').map((m) => ({ value: m.doc, label: m.body.name })),
        ]}
        onChange={(doc) => {
          draft.mandrel.value = doc;
          const mandrel = findDoc('mandrel', doc);
          if (mandrel) draft.mandrelDiameter.set(mandrel.body.diameter);
        }}
      />
      <div class="field-pair">
        <QuantityField
          label="Mandrel diameter"
          input={draft.mandrelDiameter}
          hint="where the first ply lies"
        />
        <QuantityField label="Tube length" input={draft.tubeLength} />
      </div>
    </>
  );
}
