import { useSignal } from '@preact/signals';
import { stageWords } from '#app/laying-up/build/stage-words.ts';
import { Action, Secondary } from '#app/parts/action.tsx';
import { Conflict } from '#app/parts/conflict.tsx';
import { TextField } from '#app/parts/field.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { go, type Params } from '#app/router.ts';
import { type Doc, findDoc, saveDoc } from '#app/state/documents.ts';
import { ArrangeKeys, ArrangeList, PutBack } from './arrange.tsx';
import {
  type ChecklistDraft,
  checklistDraft,
  checklistOf,
  dropDraft,
  moveStage,
  removeStage,
} from './checklist-draft.ts';
import { AddStage, StartFrom } from './checklist-stages.tsx';
import { NotOnShelf } from './not-on-shelf.tsx';
import './shelf.css';

const list = '/shelf/checklist';

function ShelfLife({ draft, found }: { draft: ChecklistDraft; found: Doc<'checklist'> }) {
  const copy = async () => {
    const body = checklistOf(draft);
    const doc = await saveDoc('checklist', { ...body, name: `${body.name}, copy` });
    if (doc) go(`${list}/${doc}`);
  };
  const move = async (retired: boolean) => {
    if (await saveDoc('checklist', found.body, { doc: found.doc, retired })) go(list);
  };
  return (
    <>
      <Secondary onPress={copy}>Copy it to a new one</Secondary>
      <Secondary onPress={() => move(!found.retired)}>
        {found.retired ? 'Put it back on the shelf' : 'Take it off the shelf'}
      </Secondary>
    </>
  );
}

interface Props {
  doc: string;
  draft: ChecklistDraft;
  found: Doc<'checklist'> | undefined;
}

function Editor({ doc, draft, found }: Props) {
  const chosen = useSignal<string | undefined>(undefined);
  const pressed = useSignal(false);
  const { stages } = draft.list.value;
  const at = stages.findIndex((s) => s.stage === chosen.value);
  const one = stages[at];
  const unnamed = draft.name.value.trim() === '';
  const changed = found && (draft.list.value !== found.body || draft.name.value !== found.body.name);
  const save = async () => {
    pressed.value = true;
    if (unnamed) return;
    const saved = await saveDoc('checklist', checklistOf(draft), found ? { doc: found.doc } : {});
    if (!saved) return;
    dropDraft(draft);
    go(list);
  };
  return (
    <Screen
      kicker={changed && 'Changed, not saved yet'}
      title={found?.body.name ?? 'New checklist'}
      back={{ to: list, label: 'Checklists' }}
      actions={
        <>
          <PutBack draft={draft} />
          {one && (
            <ArrangeKeys
              onMove={(by) => moveStage(draft, at, by)}
              open="Its steps"
              onOpen={() => go(`${list}/${doc}/${one.stage}`)}
              onRemove={() => removeStage(draft, at, stageWords[one.stage])}
            />
          )}
          <Action onPress={save} not={stages.length === 0 ? 'No stages yet' : undefined}>
            {found ? 'Save as a new revision' : 'Put it on the shelf'}
          </Action>
        </>
      }
    >
      {found && <Conflict type="checklist" doc={found} />}
      {!found && <StartFrom draft={draft} />}
      <TextField
        label="Name"
        text={draft.name}
        problem={pressed.value && unnamed ? 'Give it a name, like Tube on a film sleeve.' : undefined}
      />
      <ArrangeList
        label="Stages"
        chosen={chosen}
        items={stages.map((s) => ({
          key: s.stage,
          text: stageWords[s.stage],
          value: `${s.steps.length} ${s.steps.length === 1 ? 'step' : 'steps'}`,
        }))}
      />
      <p class="quiet small">Touch a stage to move it, see its steps, or remove it.</p>
      <AddStage draft={draft} />
      {found && <ShelfLife draft={draft} found={found} />}
      <p class="quiet small">
        Mix to cure may be repeated in a build. A build keeps the route it started with.
      </p>
    </Screen>
  );
}

/** In which order is a tube made here? */
export function ChecklistScreen({ params }: { params: Params }) {
  const doc = params.doc ?? 'new';
  const draft = checklistDraft(doc);
  const found = findDoc('checklist', params.doc);
  if (!draft) return <NotOnShelf />;
  return <Editor key={found?.revision.id ?? 'new'} doc={doc} draft={draft} found={found} />;
}
