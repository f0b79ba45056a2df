import { hardenerPerResin } from '#app/laying-up/mix/recipe.ts';
import { Tested } from '#app/laying-up/proof/proof-results.tsx';
import { Laminate } from '#app/laying-up/weigh/laminate.tsx';
import { ratingNames, ratingWords } from '#app/made/results/rating-words.ts';
import { Absent } from '#app/parts/absent.tsx';
import { Action, Beside, LinkButton } from '#app/parts/action.tsx';
import { Lines } from '#app/parts/figure.tsx';
import { HoldAction } from '#app/parts/hold-action.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { countOf } from '#app/phone/data/file-words.ts';
import { go, type Params } from '#app/router.ts';
import { now } from '#app/state/now.ts';
import { record } from '#app/state/record.ts';
import { resinWords } from '#app/state/resin-words.ts';
import { show } from '#app/state/show.ts';
import { useBuild } from '#app/state/use-journal.ts';
import { ratioError } from '#calc';
import type { BuildState } from '#shared/record/build-state.ts';
import { ratingsOf } from '#shared/record/entry.ts';
import { formatClockTime, formatDay } from '#shared/units/time.ts';
import { outcomeWords } from './say-entry.ts';
import { Thumbnails } from './thumbnails.tsx';
import { TimeLine } from './time-line.tsx';

function Made({ state }: { state: BuildState }) {
  const { header } = state;
  return (
    <Lines
      rows={[
        ['Cloth', header.cloth.name],
        ['Resin', resinWords(header.resin)],
        ...(header.release ? [['Release', header.release.name]] : []),
        ...(header.tape ? [['Tape', header.tape.name]] : []),
        ...ratingsOf.flatMap((what) => {
          const rated = state.ratings.get(what)?.entry.value;
          return rated === undefined ? [] : [[ratingNames[what], ratingWords[what][rated] ?? '']];
        }),
        ...(state.disposition ? [['Judged', outcomeWords[state.disposition.entry.outcome]]] : []),
      ]}
    />
  );
}

function Cups({ state }: { state: BuildState }) {
  const poured = state.cups.filter((c) => c.resin > 0 && c.hardener > 0);
  if (poured.length === 0) return null;
  const ratio = hardenerPerResin(state.header.resin);
  return (
    <Lines
      head={['Cup', 'resin', 'hardener', 'off']}
      rows={poured.map((c) => {
        const error = ratioError({
          resinPoured: c.resin,
          hardenerPoured: c.hardener,
          hardenerPerResin: ratio,
        });
        return [
          `${c.number}${c.discardedAt !== undefined ? ', thrown out' : ''}`,
          show(c.resin, 'mass'),
          show(c.hardener, 'mass'),
          `${error > 0 ? '+' : ''}${show(error, 'fraction')}`,
        ];
      })}
    />
  );
}

/** How was this tube made, and how did it come out? */
export function BuildRecordScreen({ params }: { params: Params }) {
  const state = useBuild(params.id);
  if (state === undefined) return null;
  if (state === 'absent') return <Absent what="tube" />;
  const { header, closedAt } = state;
  const oven = state.ovenLoads.at(-1)?.entry.ovenLoad;
  return (
    <Screen
      kicker={`Started ${formatDay(header.startedAt, header.zone, now.value)}, ${formatClockTime(header.startedAt, header.zone)}`}
      title={`${header.name} no. ${header.number}`}
      back={{ to: '/record', label: 'Record' }}
      actions={
        closedAt === undefined ? (
          <Action onPress={() => go(`/build/${header.id}`)}>Take it to the bench</Action>
        ) : (
          <Beside>
            {oven && <LinkButton to={`/oven/${oven}`}>Its oven load</LinkButton>}
            <HoldAction small onHeld={() => record({ kind: 'reopened', subject: header.id })}>
              Hold to open it again
            </HoldAction>
          </Beside>
        )
      }
    >
      <Laminate state={state} />
      <Made state={state} />
      <Cups state={state} />
      <Tested state={state} />
      {state.photos.length > 0 && <h2>{countOf(state.photos.length, 'photo')}</h2>}
      <Thumbnails photos={state.photos} />
      <Beside>
        <LinkButton to={`/record/build/${header.id}/paper`}>Print it</LinkButton>
        <LinkButton to={`/hand/build/${header.id}`}>To another phone</LinkButton>
        <LinkButton to={`/proof/${header.id}`}>Test it</LinkButton>
      </Beside>
      <h2>Time line</h2>
      <p class="quiet small">Tap a line to correct it. What was there stays to be seen.</p>
      <TimeLine subject={state} />
    </Screen>
  );
}
