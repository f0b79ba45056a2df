import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { LinkButton, Secondary } from '#app/parts/action.tsx';
import { Empty, Row, Rows } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { journals } from '#app/state/journals.ts';
import { now, zoneAt } from '#app/state/now.ts';
import { theStore } from '#app/state/shop.ts';
import { show } from '#app/state/show.ts';
import type { OvenSummary } from '#shared/record/summary.ts';
import { formatDay } from '#shared/units/time.ts';

const pageSize = 40;

/** Which oven loads were there? */
export function OvensScreen() {
  const loads = useSignal<OvenSummary[] | undefined>(undefined);
  const wanted = useSignal(pageSize);
  const more = useSignal(false);
  const changes = journals.value;
  useEffect(() => {
    theStore()
      .summaries({ of: 'ovenLoad', limit: wanted.value })
      .then((page) => {
        loads.value = page.summaries.filter((s): s is OvenSummary => s.of === 'ovenLoad');
        more.value = page.next !== undefined;
      });
  }, [wanted.value, changes]);
  return (
    <Screen title="Oven loads" back={{ to: '/record', label: 'Record' }}>
      {loads.value?.length === 0 && (
        <>
          <Empty>None yet. A tube that has come to its cure sets one up on its route.</Empty>
          <LinkButton to="/">To the bench</LinkButton>
        </>
      )}
      {loads.value && loads.value.length > 0 && (
        <Rows label="Oven loads, newest first">
          {loads.value.map((l) => (
            <Row
              key={l.subject}
              to={`/record/oven/${l.subject}`}
              title={`Oven load ${l.number}`}
              about={`${formatDay(l.startedAt, zoneAt(l.startedAt), now.value)} · ${l.builds.length} ${l.builds.length === 1 ? 'tube' : 'tubes'}, ${l.readings} readings`}
              value={
                l.highestRead === undefined
                  ? 'no reading'
                  : `highest ${show(l.highestRead, 'temperature', 0)}`
              }
            />
          ))}
        </Rows>
      )}
      {more.value && (
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
