import { useSignal } from '@preact/signals';
import { Action, Secondary } from '#app/parts/action.tsx';
import { HoldAction } from '#app/parts/hold-action.tsx';
import { Keyed } from '#app/parts/keyed.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { useTypedFigure } from '#app/parts/typed-figure.ts';
import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import { recordUndoable } from '#app/state/undo.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { unitFor } from '#shared/units/quantity.ts';
import { expectedEach, plannedModulus } from './bend.ts';
import { GaveWaySheet } from './gave-way.tsx';
import type { PlannedOfBuild } from './planned-of-build.ts';
import {
  gaveWayDraft,
  type HowItGave,
  nextReading,
  type Phase,
  proofDrafts,
  type Running,
  setRunning,
  withoutLast,
  withReading,
} from './running.ts';
import { at, gaveWayWords, letters, phaseWords } from './words.ts';

interface Props {
  state: BuildState;
  planned: PlannedOfBuild;
  running: Running;
  onDone: () => void;
}

/** So much further than expected is no longer a soft tube but one that gives way, or a slip. */
const farther = 1.6;

const kilograms = (running: Running) => show(running.setup.mass, 'hungMass');

/** Writes the test down, with as many readings as there are. */
async function enter({ state, planned, running, onDone }: Props, gave?: HowItGave): Promise<void> {
  const { tube } = planned;
  const { setup } = running;
  const drafts = proofDrafts(state.header.id, running, {
    each: (place) => (tube ? expectedEach(tube, setup, place) : undefined),
    modulus: tube && plannedModulus(tube, setup),
  });
  if (gave) drafts.push(gaveWayDraft(state.header.id, running, gave));
  if (drafts.length > 0) {
    const ended = gave ? gaveWayWords[gave.how] : 'Proof test';
    const said = `${ended}: ${kilograms(running)} at ${at(setup.hangAt)}`;
    if (!(await recordUndoable(drafts, { said }))) return;
  }
  setRunning(state.header.id, undefined);
  onDone();
}

interface Figures {
  before: number;
  moved: number | undefined;
  expected: number | undefined;
}

/** What is to be done, and what is to be expected. */
function about(phase: Phase, { before, moved, expected }: Figures): string {
  const hoped = expected === undefined ? undefined : show(expected, 'dial', 1);
  if (phase === 'before') return 'As the tube lies, nothing hung on it.';
  if (phase === 'after') return `Before it was ${show(before, 'dial')}.`;
  if (moved !== undefined) return `Moved ${show(moved, 'dial')}${hoped ? `, expected ${hoped}` : ''}.`;
  return `Let it down slowly.${hoped ? ` Expect ${hoped}.` : ''}`;
}

function Reading(props: Props & { next: NonNullable<ReturnType<typeof nextReading>> }) {
  const { state, planned, running, onDone, next } = props;
  const { id, name, number } = state.header;
  const figure = useTypedFigure({ quantity: 'dial', min: 0, max: 5 });
  const gaveWay = useSignal(false);
  const si = figure.si.value;
  const unit = unitFor('dial', settings.value.units);
  const before = running.before[next.dial]?.si ?? 0;
  const expected =
    planned.tube &&
    Math.abs(expectedEach(planned.tube, running.setup, next.at) * running.setup.mass) / planned.counted;
  const moved = si === undefined ? undefined : Math.abs(si - before);
  const doubt =
    next.phase === 'under' && moved !== undefined && expected && moved > farther * expected
      ? `It moved ${show(moved, 'dial')}, ${show(expected, 'dial', 1)} were expected: read it again, and look whether it gives way.`
      : undefined;
  const take = async () => {
    if (si === undefined) return;
    const read = withReading(running, next.phase, si, figure.typed.value);
    if (nextReading(read)) setRunning(id, read);
    else await enter({ ...props, running: read });
  };
  const back = () => setRunning(id, withoutLast(running));
  const giveUp = () => {
    setRunning(id, undefined);
    onDone();
  };
  return (
    <Screen
      keys
      kicker={`${name} no. ${number}, ${kilograms(running)}`}
      title={`${phaseWords[next.phase]}: ${letters[next.dial] ?? ''}`}
      actions={
        <>
          {running.before.length > 0 ? (
            <Secondary onPress={back}>One back</Secondary>
          ) : (
            <HoldAction small onHeld={giveUp}>
              Hold to give up
            </HoldAction>
          )}
          {next.phase === 'after' && <Secondary onPress={() => enter(props)}>Not again</Secondary>}
          {next.phase !== 'before' && (
            <Secondary onPress={() => (gaveWay.value = true)}>It gave way</Secondary>
          )}
          <Action onPress={take} not={si === undefined ? 'Type what it reads' : undefined}>
            {si === undefined ? '' : `It reads ${show(si, 'dial')}`}
          </Action>
        </>
      }
    >
      <p class="quiet">
        At {at(next.at)}. {about(next.phase, { before, moved, expected })}
      </p>
      <Keyed
        text={figure.text}
        unit={unit}
        label={`${phaseWords[next.phase]}, dial reads, ${unit}`}
        says={figure.problem.value ?? doubt}
      />
      {gaveWay.value && (
        <GaveWaySheet
          mass={running.setup.mass}
          length={state.header.tubeLength ?? 15}
          onWrite={(gave) => enter(props, gave)}
          onClose={() => (gaveWay.value = false)}
        />
      )}
    </Screen>
  );
}

/** What does the dial read? */
export function ReadDial(props: Props) {
  const next = nextReading(props.running);
  return next ? <Reading key={`${next.phase} ${next.dial}`} {...props} next={next} /> : null;
}
