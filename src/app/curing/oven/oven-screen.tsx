import { useSignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import { AheadWarning } from '#app/curing/cure/ahead-warning.tsx';
import { buildName } from '#app/laying-up/clocks/clock-list.ts';
import { Absent } from '#app/parts/absent.tsx';
import { LinkButton, Secondary } from '#app/parts/action.tsx';
import { Figures } from '#app/parts/figure.tsx';
import { Screen } from '#app/parts/screen.tsx';
import type { Params } from '#app/router.ts';
import { loadJournals, ovenState } from '#app/state/journals.ts';
import { now } from '#app/state/now.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
import { formatClockTime, formatDuration } from '#shared/units/time.ts';
import { CureChart } from './cure-chart.tsx';
import { CureSection } from './cure-section.tsx';
import { doneLines, type Inside } from './done-three.ts';
import { insideOf, journalsBefore, tubesOf } from './earlier-cures.ts';
import { PostcureSection, TapeWords } from './heat-sections.tsx';
import { LoggerRows } from './logger-rows.tsx';
import { OvenActions } from './oven-actions.tsx';
import { ovenOff } from './oven-acts.ts';
import { finishOf } from './oven-finish.ts';
import { type OvenNow, ovenNow } from './oven-now.ts';
import type { OvenResults } from './oven-results.ts';
import { ByAir, Details, OverLimits, Unread } from './oven-sections.tsx';
import { ovenKicker, ovenTitle, rateFigure } from './oven-words.ts';
import { postcureOf } from './postcure.ts';
import { ReadingsList } from './readings-list.tsx';
import { Reckoned } from './reckoned.tsx';
import { type NamedTape, tapesOf } from './tape-begins.ts';
import { DoneThree, GelRows } from './tube-sections.tsx';
import { useOvenResults } from './use-oven-results.ts';
import './oven.css';

function offWords({ burning, phase }: OvenNow): string {
  if (!burning) return 'oven went off';
  return phase === 'held' ? 'hold was done' : 'oven off';
}

function OvenFigures({ results, at }: { results: OvenResults; at: OvenNow }) {
  const isOff = !at.burning;
  return (
    <div class="oven-figures">
      <Figures
        items={[
          isOff || at.phase === 'held'
            ? { value: formatDuration(at.held), label: 'held' }
            : { value: formatDuration(at.holdLeft), label: 'of hold left' },
          { value: formatClockTime(at.offAt), label: offWords(at) },
          {
            value: results.part.length < 2 ? '–' : rateFigure(results.steepest),
            label: 'fastest rise',
          },
        ]}
      />
    </div>
  );
}

function dueLine({ dueAt }: OvenNow): string | undefined {
  if (dueAt === undefined) return undefined;
  const late = (now.value - dueAt) / 1000;
  return late < 60
    ? `Next reading due ${formatClockTime(dueAt)}`
    : `Reading was due ${formatClockTime(dueAt)}, ${formatDuration(late)} ago`;
}

/** While it cools, the next question is whether it comes off. */
function LooseYet({ inside }: { inside: readonly Inside[] }) {
  return inside.map(({ state }) => (
    <LinkButton key={state.header.id} to={`/demold/${state.header.id}`}>
      Is {buildName(state)} loose yet?
    </LinkButton>
  ));
}

function OvenLoadView({ state }: { state: OvenState }) {
  const inside = insideOf(state);
  const known = journalsBefore(state.header.id, inside).filter((id) => ovenState(id)).length;
  const tubes = useMemo(() => tubesOf(state, inside), [state, inside.length, known]);
  const read = useOvenResults(state, tubes);
  const { results } = read;
  const at = ovenNow(state, results, now.value);
  const minute = Math.floor(now.value / 60_000);
  const finish = useMemo(() => finishOf(state, results, at, now.value), [results, at.phase, minute]);
  const postcure = useMemo(() => postcureOf(tubes, results), [tubes, results]);
  const until = ((state.outAt ?? minute * 60_000) - results.series.from) / 1000;
  const chart = useMemo(
    () => <CureChart header={state.header} series={results.series} until={until} />,
    [results, until],
  );
  const { over } = results;
  const { from } = results.series;
  const due = dueLine(at);
  const tapes: NamedTape[] = postcure ? [] : tapesOf(state, inside, results.series);
  return (
    <Screen
      kicker={ovenKicker(state, now.value)}
      title={ovenTitle(at)}
      back={{ to: '/', label: 'Bench' }}
      actions={<OvenActions state={state} results={results} at={at} inside={inside} />}
    >
      <OverLimits over={over.filter((o) => o.isNow)} from={from} />
      {at.burning && (
        <AheadWarning
          header={state.header}
          resins={tubes.map((t) => t.resin)}
          lit={from}
          now={minute * 60_000}
        />
      )}
      {chart}
      {results.series.judged.length > 0 && (
        <div class="oven-links">
          <LinkButton to={`/oven/${state.header.id}/chart`}>The chart, large</LinkButton>
        </div>
      )}
      <OvenFigures results={results} at={at} />
      {due && (
        <>
          <p class="oven-due">{due}</p>
          <LinkButton to={`/oven/${state.header.id}/reminders`}>Reminders to read it</LinkButton>
        </>
      )}
      <CureSection results={results} finish={finish} now={now.value} />
      {postcure && <PostcureSection postcure={postcure} />}
      <OverLimits over={over.filter((o) => !o.isNow)} from={from} />
      <Unread results={results} at={at} />
      <GelRows load={state} inside={inside} held={results.held >= results.hold.lasts} />
      {tapes.map(({ tape, name }) => (
        <TapeWords key={tape.build} tape={tape} name={name} />
      ))}
      {at.burning && at.phase !== 'held' && <Secondary onPress={() => ovenOff(state)}>Oven is off</Secondary>}
      {!at.burning && <LooseYet inside={inside} />}
      <DoneThree lines={doneLines(results, state, inside)} inside={inside} />
      <ByAir results={results} />
      <Details state={state} results={results} at={at} />
      <Reckoned state={state} results={results} at={at} finish={finish} tapes={tapes} now={now.value} />
      <LoggerRows state={state} read={read} />
      <ReadingsList state={state} />
    </Screen>
  );
}

/** What is the oven doing, and what does it read now? */
export function OvenScreen({ params }: { params: Params }) {
  const id = params.id ?? '';
  const looked = useSignal(false);
  useEffect(() => {
    loadJournals([id])
      .then(() => loadJournals(ovenState(id)?.builds.map((b) => b.build) ?? []))
      .then(() => {
        const load = ovenState(id);
        return loadJournals(load ? journalsBefore(id, insideOf(load)) : []);
      })
      .finally(() => {
        looked.value = true;
      });
  }, [id]);
  const state = ovenState(id);
  if (state) return <OvenLoadView state={state} />;
  return looked.value ? <Absent what="oven load" /> : <div class="screen" />;
}
