import { Absent } from '#app/parts/absent.tsx';
import { LinkButton } from '#app/parts/action.tsx';
import { Screen } from '#app/parts/screen.tsx';
import type { Params } from '#app/router.ts';
import { now } from '#app/state/now.ts';
import { formatClockTime, formatDay } from '#shared/units/time.ts';
import { useSubject } from './fix-screen.tsx';
import { TimeLine } from './time-line.tsx';

/** What happened in this oven load? */
export function OvenRecordScreen({ params }: { params: Params }) {
  const subject = useSubject(params.id ?? '');
  if (subject === undefined) return null;
  if (subject === 'absent') return <Absent what="oven load" />;
  const { header } = subject;
  return (
    <Screen
      kicker={`${formatDay(header.startedAt, header.zone, now.value)}, ${formatClockTime(header.startedAt, header.zone)}`}
      title={`Oven load ${header.number}`}
      back={{ to: '/record/ovens', label: 'Oven loads' }}
      actions={<LinkButton to={`/oven/${header.id}`}>Chart and results</LinkButton>}
    >
      <h2>Time line</h2>
      <p class="quiet small">Tap a line to correct it. What was there stays to be seen.</p>
      <TimeLine subject={subject} />
    </Screen>
  );
}
