import type { Signal } from '@preact/signals';
import { Action } from '#app/parts/action.tsx';
import { HoldAction } from '#app/parts/hold-action.tsx';
import type { BuildState } from '#shared/record/build-state.ts';
import type { CupState } from '#shared/record/cup-state.ts';
import { asItIs, type PourTask, type Verdict } from './cup-phase.ts';
import { pour, takeAsItIs } from './mix-acts.ts';
import type { ScaleReading } from './scale-reading.ts';

interface ActionsProps {
  state: BuildState;
  cup: CupState;
  task: PourTask;
  reading: ScaleReading;
  verdict: Verdict | undefined;
  before: number;
  mass: (kg: number) => string;
  text: Signal<string>;
}

/** Live when the pour is right or over; dead and saying by how much while it is short; held, it takes any. */
export function PourActions({ state, cup, task, reading, verdict, before, mass, text }: ActionsProps) {
  const recorded = async (mark?: 'lean' | 'rich') => {
    if (reading.kind !== 'read') return;
    const done = await pour(state.header.id, cup, {
      part: task.part,
      mass: reading.mass,
      typed: reading.typed,
      asItIs: mark,
    });
    if (done) text.value = '';
  };
  const main = (
    <Action {...mainAction({ task, reading, verdict, before, mass })} onPress={() => recorded()} />
  );
  if (verdict ? verdict.kind === 'good' : !(task.correcting && reading.kind === 'nothing')) return main;
  const hold = () => (verdict ? recorded(asItIs(verdict)) : takeAsItIs(state, cup));
  return (
    <>
      <HoldAction onHeld={hold}>
        Record it as it is <small aria-hidden="true">press and hold</small>
      </HoldAction>
      {main}
    </>
  );
}

/** The main action says what will have happened, or what is missing. */
function mainAction(p: Pick<ActionsProps, 'task' | 'reading' | 'verdict' | 'before' | 'mass'>): {
  children: string;
  not?: string;
} {
  const { task, reading, verdict, mass } = p;
  const name = task.part === 'resin' ? 'Resin' : 'Hardener';
  if (reading.kind !== 'read' || !verdict) {
    const not = reading.kind === 'wrong' ? 'Check the figure' : 'Type what the scale shows';
    return { children: `${name} is in`, not };
  }
  switch (verdict.kind) {
    case 'short':
      return { children: `${name} is in`, not: `${mass(verdict.by)} short` };
    case 'good':
      return { children: `${name} is in: ${mass(reading.reading)}` };
    case 'over': {
      // Zeroed between the parts, the next pour starts from nothing.
      const to = p.before > 0 ? reading.reading + verdict.add : verdict.add;
      return { children: `Pour ${verdict.next} to ${mass(to)}` };
    }
  }
}
