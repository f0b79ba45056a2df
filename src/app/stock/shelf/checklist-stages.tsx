import { stageWords } from '#app/laying-up/build/stage-words.ts';
import { SelectField } from '#app/parts/field.tsx';
import { docsOf, findDoc } from '#app/state/documents.ts';
import { stageNames } from '#shared/record/checklist.ts';
import { addStage, type ChecklistDraft } from './checklist-draft.ts';

/** A new checklist begins as a copy of one that works. */
export function StartFrom({ draft }: { draft: ChecklistDraft }) {
  if (draft.list.value.stages.length > 0) return null;
  return (
    <SelectField
      label="Start from a copy of"
      value=""
      options={[
        { value: '', label: 'None: choose stages below' },
        ...docsOf('checklist').map((d) => ({ value: d.doc, label: d.body.name })),
      ]}
      onChange={(doc) => {
        const found = findDoc('checklist', doc);
        if (found) draft.list.value = found.body;
      }}
    />
  );
}

/** The stages that it does not have yet. */
export function AddStage({ draft }: { draft: ChecklistDraft }) {
  const missing = stageNames.filter((name) => !draft.list.value.stages.some((s) => s.stage === name));
  if (missing.length === 0) return null;
  return (
    <SelectField
      label="Add a stage"
      value=""
      options={[
        { value: '', label: 'Choose one' },
        ...missing.map((name) => ({ value: name, label: stageWords[name] })),
      ]}
      onChange={(name) => {
        if (name) addStage(draft, name);
      }}
    />
  );
}
