import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { Secondary } from '#app/parts/action.tsx';
import { Row, Rows } from '#app/parts/rows.tsx';
import { now, zoneAt } from '#app/state/now.ts';
import type { BuildSummary } from '#shared/record/summary.ts';
import { formatDay } from '#shared/units/time.ts';
import { resultWords } from './result-words.ts';
import { outcomeWords } from './say-entry.ts';

/** So many are drawn at first, and again whenever the end comes near: ten years of tubes would hold the screen. */
const atOnce = 40;

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

/** As many builds as there are, drawn as they are scrolled to. */
export function BuildRows({ builds }: { builds: readonly BuildSummary[] }) {
  const drawn = useSignal(atOnce);
  const end = useRef<HTMLDivElement>(null);
  const more = () => {
    drawn.value += atOnce;
  };
  const left = builds.length - drawn.value;
  useEffect(() => {
    const element = end.current;
    if (!element || typeof IntersectionObserver === 'undefined') return;
    const watcher = new IntersectionObserver(([seen]) => seen?.isIntersecting && more(), {
      rootMargin: '0px 0px 200% 0px',
    });
    watcher.observe(element);
    return () => watcher.disconnect();
  }, [drawn.value, left > 0]);
  return (
    <>
      <Rows label="Builds, newest first">
        {builds.slice(0, drawn.value).map((b) => (
          <BuildRow key={b.subject} build={b} />
        ))}
      </Rows>
      {left > 0 && (
        <div ref={end}>
          <Secondary onPress={more}>Show older ones</Secondary>
        </div>
      )}
    </>
  );
}
