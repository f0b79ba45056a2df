import { signal, useSignal } from '@preact/signals';
import type { ComponentType } from 'preact';
import { useEffect } from 'preact/hooks';
import { Beside, LinkButton } from '#app/parts/action.tsx';
import { TextField } from '#app/parts/field.tsx';
import { Empty } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { useAllSummaries } from '#app/state/all-summaries.ts';
import { anyDocs } from '#app/state/documents.ts';
import { now } from '#app/state/now.ts';
import type { BuildSummary } from '#shared/record/summary.ts';
import { BuildRows } from './build-rows.tsx';
import { askedWords, findAll } from './find-all.ts';
import { useBuildsSoon } from './first-builds.ts';
import { OtherRows } from './other-rows.tsx';

const foundWords = signal<{ Found: ComponentType<{ words: string }> } | undefined>(undefined);

/** The words of the trade, once they are fetched; the record is searched without them all the same. */
function useFoundWords() {
  useEffect(() => {
    import('#app/phone/words/words-screen.tsx').then(
      ({ FoundWords }) => {
        foundWords.value ??= { Found: FoundWords };
      },
      () => {},
    );
  }, []);
  return foundWords.value?.Found;
}

function Results({ words, builds }: { words: string; builds: readonly BuildSummary[] }) {
  const ovens = useAllSummaries()?.ovens ?? [];
  const found = findAll(words, { builds, ovens, docs: anyDocs() });
  const Found = useFoundWords();
  const none = found.builds.length + found.ovens.length + found.docs.length === 0;
  return (
    <>
      {none && (
        <Empty>
          Nothing has all of these words. Fewer words find more: a name, a cloth, a release, a word of a note.
        </Empty>
      )}
      {found.builds.length > 0 && <BuildRows key={words} builds={found.builds} />}
      <OtherRows docs={found.docs} ovens={found.ovens} at={now.peek()} />
      {Found && <Found words={words} />}
    </>
  );
}

/** What has been made here, and how did it come out? */
export function RecordScreen() {
  const words = useSignal('');
  const builds = useBuildsSoon();
  return (
    <Screen title="Record">
      <TextField label="Find" text={words} hint="Any words: a name, a cloth, a note, a plan, a month" />
      <Beside>
        <LinkButton to="/compare/choose">Compare builds</LinkButton>
        <LinkButton to="/factors">What this shop does</LinkButton>
      </Beside>
      <a href="#/record/ovens">Oven loads</a>
      {builds && askedWords(words.value).length > 0 && <Results words={words.value} builds={builds} />}
      {builds && askedWords(words.value).length === 0 && builds.length > 0 && <BuildRows builds={builds} />}
      {builds?.length === 0 && words.value.trim() === '' && (
        <Empty>
          No tubes yet. The first one appears here as soon as it is started on the bench, with everything that
          is entered.
        </Empty>
      )}
    </Screen>
  );
}
