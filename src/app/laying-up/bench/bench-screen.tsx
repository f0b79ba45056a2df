import { computed } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { readingDue } from '#app/curing/oven/reading-due.ts';
import { mixAddress } from '#app/laying-up/build/cups-left.ts';
import { buildName } from '#app/laying-up/clocks/clock-list.ts';
import { ClocksTwin } from '#app/laying-up/clocks/clocks-twin.tsx';
import { resinIsWet, runningClocks } from '#app/laying-up/clocks/running.ts';
import { Action, Beside, LinkButton } from '#app/parts/action.tsx';
import { Empty, Rows } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { go } from '#app/router.ts';
import { openBuilds, openOvenLoads } from '#app/state/journals.ts';
import { now } from '#app/state/now.ts';
import { cupToMix } from './bench-now.ts';
import { BuildRow, OvenRow, TimerRows } from './bench-rows.tsx';
import { askWhetherEverBuilt, everBuilt } from './ever-built.ts';
import { OvenChips } from './oven-chips.tsx';
import { QuietLines } from './quiet-lines.tsx';
import { Welcome } from './welcome.tsx';
import './bench.css';

/** The oven load whose temperatures are being written down; of two, the one that is read next. */
const litOven = () =>
  openOvenLoads.value
    .filter((o) => o.litAt !== undefined && o.outAt === undefined)
    .sort((a, b) => (readingDue(a) ?? Infinity) - (readingDue(b) ?? Infinity))[0];
const tubeToMix = () => openBuilds.value.find((b) => cupToMix(b) !== undefined);

/** Chips leave little of the tubes to be seen: they take the thumb's place from so long before a reading is due, ms */
const soon = 120_000;

/** An oven that wants its reading now; while resin is wet or waits to be mixed, its chips make room for that. */
const chipsAreMain = computed(() => {
  const oven = litOven();
  const due = oven && readingDue(oven);
  if (due === undefined || due > now.value + soon) return false;
  return !resinIsWet.value && tubeToMix() === undefined;
});

/** Wet resin comes first; then an oven that wants its readings; then the tube worked on last. */
function MainAction() {
  const oven = litOven();
  const latest = openBuilds.value[0];
  if (oven && chipsAreMain.value) return <OvenChips load={oven} />;
  if (!latest) return <Action onPress={() => go('/start')}>Start a tube</Action>;
  return (
    <Action onPress={() => go(`/build/${latest.header.id}`)}>{`Go on with ${buildName(latest)}`}</Action>
  );
}

function BenchActions() {
  const mixable = tubeToMix();
  return (
    <>
      {mixable && <LinkButton to={mixAddress(mixable)}>{cupToMix(mixable)}</LinkButton>}
      <Beside>
        {(openBuilds.value.length > 0 || litOven()) && <LinkButton to="/start">Start a tube</LinkButton>}
        <LinkButton to="/timer">Timer</LinkButton>
        <ClocksTwin />
      </Beside>
      <MainAction />
    </>
  );
}

/** What is on the bench now, and what to do next. */
export function BenchScreen() {
  useEffect(() => {
    askWhetherEverBuilt();
  }, []);
  const builds = openBuilds.value;
  const ovens = openOvenLoads.value;
  const timers = runningClocks.value.some((c) => c.of === undefined);
  const oven = litOven();
  const nothing = builds.length === 0 && ovens.length === 0 && !timers;
  if (nothing && everBuilt.value === undefined) return <div class="screen" />;
  if (nothing && everBuilt.value === false) return <Welcome />;
  return (
    <Screen title={nothing ? 'Bench is clear' : 'On the bench'} actions={<BenchActions />}>
      <QuietLines />
      <Rows label="On the bench now">
        {builds.map((state) => (
          <BuildRow key={state.header.id} state={state} />
        ))}
        {ovens.map((state) => (
          <OvenRow key={state.header.id} state={state} />
        ))}
        <TimerRows />
      </Rows>
      {oven && !chipsAreMain.value && <OvenChips load={oven} />}
      {nothing && <Empty>No tube is open and no clock runs. Tubes that are done are under Record.</Empty>}
    </Screen>
  );
}
