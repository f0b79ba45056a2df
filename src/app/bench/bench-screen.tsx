import { useEffect } from 'preact/hooks';
import { buildName } from '#app/clocks/clock-list.ts';
import { ClocksTwin } from '#app/clocks/clocks-twin.tsx';
import { runningClocks } from '#app/clocks/running.ts';
import { Action, Beside, LinkButton } from '#app/parts/action.tsx';
import { Empty, Rows } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { go } from '#app/router.ts';
import { openBuilds, openOvenLoads } from '#app/state/journals.ts';
import { cupToMix } from './bench-now.ts';
import { BuildRow, OvenRow, TimerRows } from './bench-rows.tsx';
import { askWhetherEverBuilt, everBuilt } from './ever-built.ts';
import { QuietLines } from './quiet-lines.tsx';
import { Welcome } from './welcome.tsx';
import './bench.css';

/** Two taps from here to a cup or a temperature. */
function NextLinks() {
  const oven = openOvenLoads.value.find((o) => o.litAt !== undefined && o.outAt === undefined);
  const mixable = openBuilds.value.find((b) => cupToMix(b) !== undefined);
  if (!oven && !mixable) return null;
  return (
    <Beside>
      {mixable && <LinkButton to={`/mix/${mixable.header.id}`}>{cupToMix(mixable)}</LinkButton>}
      {oven && <LinkButton to={`/oven/${oven.header.id}`}>Log temperature</LinkButton>}
    </Beside>
  );
}

function BenchActions() {
  const latest = openBuilds.value[0];
  return (
    <>
      <NextLinks />
      <Beside>
        {latest && <LinkButton to="/start">Start a tube</LinkButton>}
        <LinkButton to="/timer">Timer</LinkButton>
        <ClocksTwin />
      </Beside>
      {latest ? (
        <Action onPress={() => go(`/build/${latest.header.id}`)}>{`Go on with ${buildName(latest)}`}</Action>
      ) : (
        <Action onPress={() => go('/start')}>Start a tube</Action>
      )}
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
      {nothing && <Empty>No tube is open and no clock runs. Tubes that are done are under Record.</Empty>}
    </Screen>
  );
}
