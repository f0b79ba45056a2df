import { useSignal } from '@preact/signals';
import { Fragment } from 'preact';
import { stageWords } from '#app/laying-up/build/stage-words.ts';
import { buildName } from '#app/laying-up/clocks/clock-list.ts';
import { Secondary } from '#app/parts/action.tsx';
import { Caution } from '#app/parts/warning.tsx';
import { openOvenLoads } from '#app/state/journals.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { CheckRow } from './check-row.tsx';
import { type LoadDraft, loadOf, nothingWet, toggled } from './load-draft.ts';

interface Props {
  draft: LoadDraft;
  builds: readonly BuildState[];
}

const standsAt = ({ next }: BuildState): string => (next ? `at ${stageWords[next.stage]}` : 'route done');

/** Asked once, under its row: an oven load is told in the record of the tube too. */
function NothingWet({ state, onPress }: { state: BuildState; onPress: () => void }) {
  return (
    <li class="oven-asked">
      <p role="alert">
        {buildName(state)} is {standsAt(state)}: nothing wet is on it.
      </p>
      <Secondary onPress={onPress}>Put it in all the same</Secondary>
    </li>
  );
}

/** Which tubes go in. */
export function TubeRows({ draft, builds }: Props) {
  const chosen = draft.builds.value;
  const asked = useSignal<string | undefined>(undefined);
  const toggle = (b: BuildState, sure: boolean) => {
    const { id } = b.header;
    const asks = !sure && !chosen.has(id) && nothingWet(b);
    asked.value = asks ? id : undefined;
    if (!asks) draft.builds.value = toggled(chosen, id);
  };
  return (
    <section>
      <h2>Which tubes go in?</h2>
      <ul class="oven-rows">
        {builds.map((b) => {
          const { id } = b.header;
          const load = loadOf(b, openOvenLoads.value);
          return (
            <Fragment key={id}>
              <CheckRow
                checked={chosen.has(id) && !load}
                about={standsAt(b)}
                not={load && `in oven load ${load.header.number} already`}
                onChange={() => toggle(b, false)}
              >
                {buildName(b)}
              </CheckRow>
              {asked.value === id && <NothingWet state={b} onPress={() => toggle(b, true)} />}
            </Fragment>
          );
        })}
      </ul>
      {![...chosen].some((id) => builds.some((b) => b.header.id === id)) && (
        <p>An oven load needs a tube: tick the one that goes in.</p>
      )}
    </section>
  );
}

/** What is read: the air, and each tube that has a sensor on it. */
export function SensorRows({ draft, builds }: Props) {
  const unread = draft.unread.value;
  const none = builds.every((b) => unread.has(b.header.id));
  return (
    <section>
      <h2>What do you read?</h2>
      <ul class="oven-rows">
        <CheckRow checked not="always read" onChange={() => undefined}>
          Air
        </CheckRow>
        {builds.map((b) => {
          const { id } = b.header;
          return (
            <CheckRow
              key={id}
              checked={!unread.has(id)}
              about={unread.has(id) ? 'no part sensor' : 'a sensor on its thickest part'}
              onChange={() => {
                draft.unread.value = toggled(unread, id);
              }}
            >
              {buildName(b)}
            </CheckRow>
          );
        })}
      </ul>
      {none && (
        <Caution>
          With no sensor on a part the hold can only be judged by the air, and a mandrel follows the air by 5
          to 10 minutes when it is thin aluminum, by 20 to 40 when it is a steel bar. Hold that much longer.
        </Caution>
      )}
    </section>
  );
}
