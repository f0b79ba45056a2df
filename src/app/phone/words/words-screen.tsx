import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { Secondary } from '#app/parts/action.tsx';
import { TextField } from '#app/parts/field.tsx';
import { Empty, Row, Rows } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Sheet } from '#app/parts/sheet.tsx';
import type { Params } from '#app/router.ts';
import type { Term } from './term.ts';
import { TermView } from './term-view.tsx';
import { allTerms, findTerms, termGroups } from './terms.ts';

function One({ term }: { term: Term }) {
  return (
    <section class="word" id={`word-${term.id}`} aria-labelledby={`word-${term.id}-name`}>
      <h3 id={`word-${term.id}-name`} tabIndex={-1}>
        {term.name}
      </h3>
      <TermView term={term} />
    </section>
  );
}

/** One word, in front of the screen that used it; what was typed there stays. */
export function TermSheet({ term, onClose }: { term: string; onClose: () => void }) {
  const found = allTerms.find((t) => t.id === term);
  if (!found) return null;
  return (
    <Sheet title={found.name} onClose={onClose} actions={<Secondary onPress={onClose}>Close</Secondary>}>
      <TermView term={found} />
      <p class="quiet small">All words are under Shelf, Words.</p>
    </Sheet>
  );
}

const mostFound = 3;

/** Words called like what the record is searched for. */
export function FoundWords({ words }: { words: string }) {
  const found = findTerms(words, 'name').slice(0, mostFound);
  if (found.length === 0) return null;
  return (
    <>
      <h2>Words</h2>
      <Rows label="Words">
        {found.map((term) => (
          <Row key={term.id} to={`/words/${term.id}`} title={term.name} about="What it means" />
        ))}
      </Rows>
    </>
  );
}

/** What does that word mean? */
export function WordsScreen({ params }: { params: Params }) {
  const asked = useSignal('');
  const term = params.term;
  useEffect(() => {
    if (!term) return;
    // A tick later: every new address begins at its top.
    const timer = setTimeout(() => {
      const name = document.getElementById(`word-${term}-name`);
      name?.scrollIntoView();
      name?.focus({ preventScroll: true });
    });
    return () => clearTimeout(timer);
  }, [term]);
  const looking = asked.value.trim() !== '';
  const found = looking ? findTerms(asked.value) : [];
  return (
    <Screen title="Words" back={{ to: '/shelf', label: 'Shelf' }}>
      <TextField label="Find" text={asked} hint="Also what else it is called: gsm, kick, datum" />
      <p class="visually-hidden" role="status">
        {looking && (found.length === 1 ? '1 word' : `${found.length} words`)}
      </p>
      {looking && found.length === 0 && (
        <Empty>No word here has that in it. Try a shorter one, or clear the field to see all of them.</Empty>
      )}
      {looking
        ? found.map((t) => <One key={t.id} term={t} />)
        : termGroups.map((group) => (
            <div class="word-group" key={group.title}>
              <h2>{group.title}</h2>
              {group.terms.map((t) => (
                <One key={t.id} term={t} />
              ))}
            </div>
          ))}
    </Screen>
  );
}
