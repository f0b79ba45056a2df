import { useSignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import { Absent } from '#app/parts/absent.tsx';
import { Secondary } from '#app/parts/action.tsx';
import { Screen } from '#app/parts/screen.tsx';
import type { Params } from '#app/router.ts';
import { loadJournals, ovenState } from '#app/state/journals.ts';
import { show } from '#app/state/show.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
import { formatClockTime, formatDuration } from '#shared/units/time.ts';
import { BigChart } from './big-chart.tsx';
import { chartContent, wholeOf } from './chart-content.ts';
import { type ChartContent, dashes, shapes } from './chart-draw.ts';
import { insideOf, tubesOf } from './earlier-cures.ts';
import { useOvenResults } from './use-oven-results.ts';
import { panned, type Window, zoomed } from './window.ts';
import './big-chart.css';

const shapePaths = {
  circle: 'M15 3a5 5 0 1 0 .01 0Z',
  square: 'M10 3H20V13H10Z',
  triangle: 'M15 2 21 13H9Z',
  diamond: 'M15 2 21 8 15 14 9 8Z',
} as const;

/** Which line is which, by its dash and its shape. */
function Key({ content }: { content: ChartContent }) {
  return (
    <ul class="big-chart-key">
      {content.lines.map(({ name, sees, style }) => (
        <li key={style} class={sees === 'part' ? 'big-chart-part' : 'big-chart-air'}>
          <svg width="30" height="16" aria-hidden="true">
            <path
              class="big-chart-line"
              d="M0 8H30"
              stroke-dasharray={dashes[style % dashes.length]?.join(' ')}
            />
            <path class="big-chart-mark" d={shapePaths[shapes[style % shapes.length] ?? 'circle']} />
          </svg>
          {name}
        </li>
      ))}
      <li>
        <svg width="30" height="16" aria-hidden="true">
          <path class="big-chart-schedule" d="M1 8H30" />
        </svg>
        Schedule
      </li>
      {content.byHand.length > 0 && (
        <li>
          <svg width="30" height="16" aria-hidden="true">
            <path class="big-chart-hand" d="M10 3 20 13M20 3 10 13" />
          </svg>
          Read by hand
        </li>
      )}
    </ul>
  );
}

function shownWords({ from, to }: Window, zone: number): string {
  return `${formatClockTime(from, zone)} to ${formatClockTime(to, zone)}, ${formatDuration((to - from) / 1000)}`;
}

function ChartView({ state }: { state: OvenState }) {
  const tubes = tubesOf(state, insideOf(state));
  const { results, traces, reading } = useOvenResults(state, tubes);
  const content = useMemo(() => chartContent(state, results, traces), [state, results, traces]);
  const all = useMemo(() => wholeOf(content), [content]);
  const chosen = useSignal<Window | undefined>(undefined);
  const view = chosen.value ?? all;
  const change = (to: (view: Window) => Window) => {
    chosen.value = to(chosen.peek() ?? all);
  };
  const { highestPart, highestAir } = results;
  const highest = highestPart ?? highestAir;
  const count = content.lines.reduce((sum, l) => sum + l.trace.at.length, 0);
  // Chart, keys and tabs are seen together on a phone, and a big screen is used.
  const height = Math.min(620, Math.max(230, innerHeight - 450));
  const isWhole = view.to - view.from >= all.to - all.from;
  return (
    <Screen
      kicker={`Oven load ${state.header.number} · ${count.toLocaleString('en-US')} readings`}
      title="The cure, large"
      back={{ to: `/oven/${state.header.id}`, label: 'Oven load' }}
      actions={
        <div class="big-chart-keys">
          <Secondary onPress={() => change((v) => panned(v, -0.5, all))}>‹ Earlier</Secondary>
          <Secondary onPress={() => change((v) => panned(v, 0.5, all))}>Later ›</Secondary>
          <Secondary
            onPress={() => {
              chosen.value = undefined;
            }}
          >
            All of it
          </Secondary>
          <Secondary onPress={() => change((v) => zoomed(v, 0.5, 0.5, all))}>+ Closer</Secondary>
          <Secondary onPress={() => change((v) => zoomed(v, 2, 0.5, all))}>− Wider</Secondary>
          <Secondary onPress={() => print()}>Print it</Secondary>
        </div>
      }
    >
      {reading && <p role="status">The logger’s file is being read.</p>}
      {content.lines.length === 0 && !reading && <p>Nothing was read in this oven load yet.</p>}
      <BigChart
        content={content}
        view={view}
        all={all}
        height={height}
        label={`Temperatures against the schedule, ${shownWords(view, state.header.zone)}. Highest read ${highest ? show(highest.temperature, 'temperature') : 'nothing'}.`}
        onView={change}
      />
      <p class="big-chart-shown">
        {isWhole ? 'All of it: ' : ''}
        {shownWords(view, state.header.zone)}
      </p>
      <Key content={content} />
    </Screen>
  );
}

/** What did the oven do, minute by minute? */
export function ChartScreen({ params }: { params: Params }) {
  const id = params.id ?? '';
  const looked = useSignal(false);
  useEffect(() => {
    loadJournals([id])
      .then(() => loadJournals(ovenState(id)?.builds.map((b) => b.build) ?? []))
      .finally(() => {
        looked.value = true;
      });
  }, [id, looked]);
  const state = ovenState(id);
  if (state && looked.value) return <ChartView state={state} />;
  return looked.value ? <Absent what="oven load" /> : <div class="screen" />;
}
