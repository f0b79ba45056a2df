import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { Beside, LinkButton, Secondary } from '#app/parts/action.tsx';
import { TextField } from '#app/parts/field.tsx';
import { Empty, Row, Rows } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { journals } from '#app/state/journals.ts';
import { now, zoneAt } from '#app/state/now.ts';
import type { BuildSummary } from '#shared/record/summary.ts';
import { formatDay } from '#shared/units/time.ts';
import { type Found, findBuilds } from './find-builds.ts';
import { resultWords } from './result-words.ts';
import { outcomeWords } from './say-entry.ts';

const pageSize = 40;

function BuildRow({ build }: { build: BuildSummary }) {
  const { weight, ratio } = resultWords(build);
  const state =
    build.outcome !== undefined ? outcomeWords[build.outcome] : build.open ? 'on the bench' : 'done';
  return (
    <Row
      to={`/record/build/${build.subject}`}
      title={`${build.name} no. ${build.number}`}
      about={`${formatDay(build.startedAt, zoneAt(build.startedAt), now.value)} · ${state}`}
      value={
        weight && (
          <>
            {weight}
            <br />
            <span class="quiet small">{ratio}</span>
          </>
        )
      }
    />
  );
}

function ListOf({ found, words }: { found: Found; words: string }) {
  if (found.builds.length > 0) {
    return (
      <Rows label="Builds, newest first">
        {found.builds.map((b) => (
          <BuildRow key={b.subject} build={b} />
        ))}
      </Rows>
    );
  }
  return words ? (
    <Empty>
      Nothing has all of these words. Fewer words find more: a name, a cloth, a release, a word of a note.
    </Empty>
  ) : (
    <Empty>
      No tubes yet. The first one appears here as soon as it is started on the bench, with everything that is
      entered.
    </Empty>
  );
}

/** What has been made here, and how did it come out? */
export function RecordScreen() {
  const words = useSignal('');
  const wanted = useSignal(pageSize);
  const found = useSignal<Found | undefined>(undefined);
  // Whatever is entered elsewhere changes the list.
  const changes = journals.value;
  useEffect(() => {
    let current = true;
    findBuilds(words.value, wanted.value).then((f) => {
      if (current) found.value = f;
    });
    return () => {
      current = false;
    };
  }, [words.value, wanted.value, changes]);
  return (
    <Screen title="Record">
      <TextField label="Find" text={words} hint="Name, cloth, resin, release, note" />
      <Beside>
        <LinkButton to="/compare/choose">Compare builds</LinkButton>
        <LinkButton to="/factors">What this shop does</LinkButton>
      </Beside>
      <a href="#/record/ovens">Oven loads</a>
      {found.value && <ListOf found={found.value} words={words.value} />}
      {found.value?.more && (
        <Secondary
          onPress={() => {
            wanted.value += pageSize;
          }}
        >
          Show older ones
        </Secondary>
      )}
    </Screen>
  );
}
