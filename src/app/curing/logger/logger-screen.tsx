import { useSignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import { Absent } from '#app/parts/absent.tsx';
import { Action, LinkButton } from '#app/parts/action.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { goInstead, type Params } from '#app/router.ts';
import { loadJournals, ovenState } from '#app/state/journals.ts';
import { theStore } from '#app/state/shop.ts';
import { ChooseLoggerFile } from './choose-file.tsx';
import { keep, takeFile } from './file-kept.ts';
import { type Draft, newDraft, openAgain } from './logger-draft.ts';
import { PreviewView, whyNot } from './preview-view.tsx';
import type { Subject } from './subject.ts';
import './logger.css';

const refusedWords: Record<(Draft & { step: 'refused' })['why'], string> = {
  empty: 'There is nothing in it.',
  tooBig: 'It is bigger than 40 MB. Let the logger write a shorter run, or a row every few seconds.',
  noColumns:
    'It has no columns: nothing separates one figure from the next. Save it as CSV from the logger’s program.',
  noReadings: 'No rows of readings were found in it. Save it as CSV from the logger’s program.',
  noTime: 'No column of it says when. A logger’s file needs a date, a time or a count in every row.',
  noHeat: 'No column of it looks like temperatures.',
  failed: 'It could not be read. Copy it to this phone again, then choose it once more.',
};

const says = (n: number) => n.toLocaleString('en-US');

function Before({ at }: { at: Draft }) {
  switch (at.step) {
    case 'choose':
      return (
        <p>
          A file that a temperature logger wrote, as CSV or as text with columns. Its columns, its clock and
          its faults are shown before anything is taken in, and the file itself is kept, in every backup too.
        </p>
      );
    case 'reading':
      return <p role="status">{at.name} is being read.</p>;
    case 'refused':
      return (
        <Warning kind="stop" title={`${at.name} was not taken in`} announce>
          {refusedWords[at.why]}
        </Warning>
      );
    case 'again':
      return (
        <p role="status">
          {at.broughtBack
            ? `${at.name} was known here, and its readings are back.`
            : `${at.name} is in this oven load already: nothing was added.`}
        </p>
      );
    default:
      return null;
  }
}

function LoggerFor({ subject }: { subject: Subject }) {
  const draft = useMemo(newDraft, [subject.state.header.id, subject.fact?.root]);
  const { state, fact } = subject;
  const oven = `/oven/${state.header.id}`;
  useEffect(() => {
    if (!fact) return;
    const { name, hash } = fact.entry;
    draft.value = { step: 'reading', name };
    theStore()
      .photo(hash)
      .then(async (blob) => {
        if (!blob) draft.value = { step: 'choose' };
        else await openAgain(draft, { name, hash, bytes: await blob.arrayBuffer() }, subject);
      })
      .catch(() => {
        draft.value = { step: 'refused', name, why: 'failed' };
      });
  }, [draft]);
  const at = draft.value;
  const choose = (file: File) => takeFile(draft, file, subject);
  const back = { to: oven, label: `Oven load ${state.header.number}` };
  if (at.step !== 'preview') {
    return (
      <Screen
        kicker={`Oven load ${state.header.number}`}
        title="A logger’s file"
        back={back}
        actions={
          at.step === 'again' ? (
            <>
              <LinkButton to={`${oven}/logger/${at.root}`}>How it is read</LinkButton>
              <Action onPress={() => goInstead(oven)}>Back to the oven load</Action>
            </>
          ) : (
            <ChooseLoggerFile again={at.step === 'refused'} onFile={choose} isBusy={at.step === 'reading'} />
          )
        }
      >
        {fact && at.step === 'choose' ? (
          <Warning kind="amber" title={`${fact.entry.name} is not on this phone`}>
            Its readings are made from the file. Choose it again, or restore a backup that holds it.
          </Warning>
        ) : (
          <Before at={at} />
        )}
      </Screen>
    );
  }
  const { preview } = at;
  const total = preview.tried?.series.reduce((sum, s) => sum + s.readings, 0) ?? 0;
  const save = async () => {
    if (await keep(preview, subject)) goInstead(oven);
  };
  return (
    <Screen
      kicker={`Oven load ${state.header.number} · ${preview.file.name}`}
      title={fact ? 'How this file is read' : 'Is it read right?'}
      back={back}
      actions={
        <Action onPress={save} not={whyNot(preview)}>
          {fact ? `Read it like this: ${says(total)} readings` : `Take in ${says(total)} readings`}
        </Action>
      }
    >
      <PreviewView draft={draft} preview={preview} subject={subject} />
      {!fact && <ChooseLoggerFile again onFile={choose} isBusy={false} />}
    </Screen>
  );
}

/** What does this logger's file say of the oven load? */
export function LoggerScreen({ params }: { params: Params }) {
  const id = params.id ?? '';
  const looked = useSignal(false);
  useEffect(() => {
    loadJournals([id]).finally(() => {
      looked.value = true;
    });
  }, [id, looked]);
  const state = ovenState(id);
  if (!state) return looked.value ? <Absent what="oven load" /> : <div class="screen" />;
  const fact = state.loggerFiles.find((f) => f.root === params.root);
  return <LoggerFor subject={{ state, fact }} />;
}
