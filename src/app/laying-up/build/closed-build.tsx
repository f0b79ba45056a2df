import { useEffect } from 'preact/hooks';
import { curedByWeight } from '#app/made/results/by-weight.ts';
import { Action, Secondary } from '#app/parts/action.tsx';
import { Row, Rows } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { go } from '#app/router.ts';
import { now, zoneAt } from '#app/state/now.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { formatClockTime, formatDay } from '#shared/units/time.ts';
import { act } from './act.ts';
import { outcomeWords } from './stage-words.ts';
import { UndoBar } from './undo-bar.tsx';

/** A build that is done: what became of it, and the way back in. */
export function ClosedBuild({ state, closedAt }: { state: BuildState; closedAt: number }) {
  // It takes the place of a route that was scrolled down to its last step.
  useEffect(() => scrollTo(0, 0), []);
  const { header, disposition } = state;
  const zone = zoneAt(closedAt);
  const day = formatDay(closedAt, zone, now.value).replace(/^(Today|Yesterday)$/, (word) =>
    word.toLowerCase(),
  );
  const when = `${day}, ${formatClockTime(closedAt, zone)}`;
  const reopen = () => act([{ kind: 'reopened', subject: header.id }], { said: 'Open again' });
  return (
    <Screen
      kicker={`${header.name} no. ${header.number}`}
      title={`Tube no. ${header.number} is done`}
      actions={
        <>
          <UndoBar state={state} />
          <Secondary onPress={reopen}>Open it again</Secondary>
          <Action onPress={() => go('/')}>Back to the bench</Action>
        </>
      }
    >
      <p>
        {disposition ? `Judged ${outcomeWords[disposition.entry.outcome].toLowerCase()}. ` : ''}
        Closed {when}.
      </p>
      {disposition?.entry.outcome !== 'scrap' && !curedByWeight(state).ok && (
        <Warning kind="amber" title="How much resin is in it is not known">
          The tube was not weighed, or not all of it. It can be weighed still.
        </Warning>
      )}
      {disposition?.entry.text && <p class="quiet">{disposition.entry.text}</p>}
      <Rows>
        <Row to={`/weigh/${header.id}`} title="Weights and results" />
        <Row
          to={`/record/build/${header.id}`}
          title="Its record"
          about="Every step with its time; to print, to another phone"
        />
      </Rows>
    </Screen>
  );
}
