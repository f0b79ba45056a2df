import { SelectField } from '#app/parts/field.tsx';
import { starterSchedules } from '#shared/reference/starter-schedules.ts';
import type { CureDraft } from './cure-draft.ts';
import { fillCure } from './cure-edits.ts';

/** Starts the cure over from one of the usual schedules; undone like any other change. */
export function StarterPick({ draft }: { draft: CureDraft }) {
  const entries = Object.entries(starterSchedules);
  const at = entries.find(([, s]) => s.schedule === draft.base.value)?.[0] ?? '';
  return (
    <SelectField
      label="Begin with"
      value={at}
      options={[
        ...(at === '' ? [{ value: '', label: 'The plan’s own' }] : []),
        ...entries.map(([value, { name }]) => ({ value, label: name })),
      ]}
      onChange={(value) => {
        const chosen = entries.find(([id]) => id === value)?.[1];
        if (chosen) fillCure(draft, chosen.schedule);
      }}
    />
  );
}
