import { useEffect, useState } from 'preact/hooks';
import { Tested } from '#app/laying-up/proof/proof-results.tsx';
import { Laminate } from '#app/laying-up/weigh/laminate.tsx';
import { Absent } from '#app/parts/absent.tsx';
import { Action } from '#app/parts/action.tsx';
import { Choice } from '#app/parts/field.tsx';
import { Lines } from '#app/parts/figure.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Caution } from '#app/parts/warning.tsx';
import { HandOver } from '#app/phone/data/hand-over.tsx';
import type { Params } from '#app/router.ts';
import { loadJournals, ovenState } from '#app/state/journals.ts';
import { now } from '#app/state/now.ts';
import { settings } from '#app/state/settings.ts';
import { useBuild } from '#app/state/use-journal.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { CurePart } from './cure-part.tsx';
import { paperTime } from './day.ts';
import { type LoadOnPaper, loadIds, loadsOf } from './loads.ts';
import { LoadsPart } from './loads-part.tsx';
import { lineTable, recordJson } from './paper-files.ts';
import { AllLines, Cups, Outcome, Pieces, Planned, Steps } from './paper-parts.tsx';
import { paperLines } from './time-line-rows.ts';
import './paper.css';

type As = 'paper' | 'table' | 'json';

function Head({ state, at }: { state: BuildState; at: number }) {
  const { header, closedAt } = state;
  const day = (ms: number) => paperTime(ms, header.zone);
  return (
    <Lines
      rows={[
        ['Started', day(header.startedAt)],
        [closedAt === undefined ? 'Not closed yet; last entry' : 'Closed', day(closedAt ?? state.lastAt)],
        ['Printed', day(at)],
      ]}
    />
  );
}

function Paper({ state, loads }: { state: BuildState; loads: readonly LoadOnPaper[] }) {
  const [as, setAs] = useState<As>('paper');
  const at = now.peek();
  const { header } = state;
  const name = `${header.name} no. ${header.number}`;
  return (
    <Screen
      kicker="Build record"
      title={name}
      back={{ to: `/record/build/${header.id}`, label: name }}
      actions={
        as === 'paper' ? (
          <Action onPress={() => print()}>Print it, or keep it as PDF</Action>
        ) : (
          <HandOver
            key={as}
            what={as === 'table' ? 'table' : 'data file'}
            make={async () => (as === 'table' ? lineTable(state, loads) : recordJson(state, loads))}
          />
        )
      }
    >
      <div class="paper">
        <div class="paper-not-printed">
          <Choice
            label="As"
            value={as}
            options={[
              { value: 'paper', label: 'Paper' },
              { value: 'table', label: 'Table' },
              { value: 'json', label: 'Data file' },
            ]}
            onChange={setAs}
          />
        </div>
        <Head state={state} at={at} />
        <Laminate state={state} />
        <Outcome state={state} />
        <Tested state={state} />
        <Planned state={state} />
        <LoadsPart state={state} />
        <Pieces state={state} units={settings.value.units} />
        <Cups state={state} />
        {loads.map((load) => (
          <CurePart key={load.state.header.id} load={load} />
        ))}
        <Steps state={state} />
        <AllLines title="Everything that was entered" lines={paperLines(state)} />
        {loads.map(({ state: load }) => (
          <AllLines
            key={load.header.id}
            title={`Everything entered for oven load ${load.header.number}`}
            lines={paperLines(load)}
          />
        ))}
        <Caution>
          This says how the tube was made and what was read, not what it carries. What carries people needs
          tests, local rules and licensed review. Data sheets of the materials go before anything printed
          here.
        </Caution>
      </div>
    </Screen>
  );
}

/** Can a stranger follow from one document how this tube was made? */
export function PaperScreen({ params }: { params: Params }) {
  const state = useBuild(params.id);
  const [loads, setLoads] = useState<LoadOnPaper[] | undefined>(undefined);
  const ids = typeof state === 'object' ? loadIds(state).join(' ') : '';
  useEffect(() => {
    if (typeof state !== 'object') return;
    loadJournals(loadIds(state))
      .then(() =>
        loadJournals(loadIds(state).flatMap((id) => ovenState(id)?.builds.map((b) => b.build) ?? [])),
      )
      .then(() => loadsOf(state))
      .then(setLoads);
  }, [typeof state, ids]);
  if (state === 'absent') return <Absent what="tube" />;
  return state && loads ? <Paper state={state} loads={loads} /> : null;
}
