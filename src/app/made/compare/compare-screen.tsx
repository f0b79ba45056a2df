import { useSignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import type { Made } from '#app/made/learned/made-facts.ts';
import { Pictures } from '#app/made/record/thumbnails.tsx';
import { Action, Beside, LinkButton, Secondary } from '#app/parts/action.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { go } from '#app/router.ts';
import { useAllSummaries } from '#app/state/all-summaries.ts';
import { settings } from '#app/state/settings.ts';
import { chosen, chosenIsThere, chosenOf, loadChosen } from './chosen.ts';
import { compareBuilds } from './rows.ts';
import { DifferTable, SameList } from './side-by-side.tsx';
import { sentencesOf } from './tellings.ts';
import './compare.css';

/** More columns than this nobody slides through; the picture of two figures takes all. */
const mostColumns = 50;

/** Photos are read as they are drawn: so many builds at once. */
const notedAtATime = 6;

function Noted({ made }: { made: readonly Made[] }) {
  const drawn = useSignal(notedAtATime);
  const noted = made.filter(({ build }) => build.notes.length + build.photos.length > 0);
  if (noted.length === 0) return null;
  return (
    <>
      <h2>Notes and photos</h2>
      {noted.slice(0, drawn.value).map(({ build, title }) => (
        <section class="compare-notes" key={build.subject} aria-label={title}>
          <h3>{title}</h3>
          {build.notes.map((note, i) => (
            <p key={i}>{note}</p>
          ))}
          <Pictures
            pictures={build.photos.map((hash, i) => ({
              hash,
              title: `${title}, photo ${i + 1}`,
              caption: build.captions?.[hash],
            }))}
          />
        </section>
      ))}
      {noted.length > drawn.value && (
        <Secondary onPress={() => (drawn.value += notedAtATime)}>
          Notes and photos of {noted.length - drawn.value} more
        </Secondary>
      )}
    </>
  );
}

function SideBySide({ made }: { made: readonly Made[] }) {
  const { units } = settings.value;
  const shown = useMemo(() => made.slice(-mostColumns), [made]);
  const { differ, same } = useMemo(() => compareBuilds(shown), [shown, units]);
  const sentences = useMemo(() => sentencesOf(made), [made, units]);
  return (
    <>
      {sentences.length > 0 && (
        <ul class="compare-says" aria-label="What these builds say">
          {sentences.map((s) => (
            <li key={s}>{s}</li>
          ))}
        </ul>
      )}
      {shown.length < made.length && (
        <p class="quiet">The newest {shown.length} stand here. The picture of two figures shows all.</p>
      )}
      {differ.length === 0 ? (
        <p>Nothing that was weighed, measured, read or rated tells these apart.</p>
      ) : (
        <DifferTable made={shown} rows={differ} />
      )}
      <SameList same={same} of={shown.length} />
      <Noted made={shown} />
    </>
  );
}

/** What tells these tubes apart? */
export function CompareScreen() {
  const all = useAllSummaries();
  useEffect(() => {
    loadChosen();
  }, []);
  const picked = chosen.value;
  const made = useMemo(() => all && chosenOf(all), [all, picked]);
  if (!made || !chosenIsThere.value) return null;
  const back = { to: '/record', label: 'Record' };
  if (made.length < 2) {
    return (
      <Screen
        title="Compare builds"
        back={back}
        actions={<Action onPress={() => go('/compare/choose')}>Choose the builds</Action>}
      >
        <p>Two builds or more are laid side by side here: what differs, and what is the same.</p>
      </Screen>
    );
  }
  return (
    <Screen
      kicker="Oldest first"
      title={`${made.length} builds side by side`}
      back={back}
      actions={
        <Beside>
          <LinkButton to="/compare/choose">Other builds</LinkButton>
          <LinkButton to="/compare/two">Two figures</LinkButton>
        </Beside>
      }
    >
      <SideBySide made={made} />
    </Screen>
  );
}
