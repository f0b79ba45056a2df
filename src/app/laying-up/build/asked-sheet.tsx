import { theStore } from '#app/state/shop.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { StageState } from '#shared/record/route-state.ts';
import type { Asked } from './asked.ts';
import { FilmsSheet } from './films-sheet.tsx';
import { GuardSheet } from './guard-sheet.tsx';
import { JudgeSheet } from './judge-sheet.tsx';
import { NoteSheet } from './note-sheet.tsx';
import { RateSheet } from './rate-sheet.tsx';
import { SamplesSheet } from './samples-sheet.tsx';
import { StagesSheet } from './stages-sheet.tsx';
import { StepSheet } from './step-sheet.tsx';
import { SurroundingsSheet } from './surroundings-sheet.tsx';
import type { Ticking } from './use-ticking.ts';

interface Props {
  state: BuildState;
  stage: StageState | undefined;
  ticking: Ticking;
}

/** The one question in front of the route, when there is one. */
export function AskedSheet({ state, stage, ticking }: Props) {
  const { asked, actionOf, open, tick, takeBack } = ticking;
  const value = asked.value;
  const onClose = () => {
    asked.value = undefined;
  };
  if (!value) return null;
  const newId = () => theStore().newId();
  const shared = { state, round: 1, newId, onClose };
  switch (value.kind) {
    case 'stages':
      return (
        <StagesSheet
          state={state}
          shown={stage}
          onJudge={() => (asked.value = { kind: 'close' })}
          onClose={onClose}
        />
      );
    case 'note':
      return <NoteSheet build={state.header.id} onClose={onClose} />;
    case 'rate':
      return <RateSheet state={state} onClose={onClose} />;
    case 'close':
      return <JudgeSheet {...shared} closing />;
    case 'guard':
      return (
        <GuardSheet
          state={state}
          guard={value.guard}
          round={value.step.round}
          onDone={() => tick(value.step)}
          onClose={onClose}
        />
      );
    case 'step': {
      const { step } = value;
      return (
        <StepSheet
          build={state.header.id}
          step={step}
          opens={actionOf(step).opens}
          onOpen={() => {
            onClose();
            open(step);
          }}
          onTick={() => tick(step)}
          onTakeBack={() => takeBack(step)}
          onClose={onClose}
        />
      );
    }
    case 'sheet':
      return <NamedSheet asked={value} {...shared} round={value.round} />;
  }
}

type Named = Extract<Asked, { kind: 'sheet' }>;

function NamedSheet({ asked, ...props }: { asked: Named } & Parameters<typeof SamplesSheet>[0]) {
  switch (asked.sheet) {
    case 'surroundings':
      return <SurroundingsSheet {...props} />;
    case 'films':
      return <FilmsSheet {...props} direction={asked.films} />;
    case 'samples':
      return <SamplesSheet {...props} />;
    case 'judge':
      return <JudgeSheet {...props} />;
  }
}
