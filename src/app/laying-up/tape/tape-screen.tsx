import { type Signal, signal } from '@preact/signals';
import { buildName } from '#app/laying-up/clocks/clock-list.ts';
import { Absent } from '#app/parts/absent.tsx';
import { Action, LinkButton } from '#app/parts/action.tsx';
import { Ask } from '#app/parts/ask.tsx';
import { Choice } from '#app/parts/field.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { NoPlan } from '#app/planning/wall/no-plan.tsx';
import { go, type Params } from '#app/router.ts';
import { findDoc } from '#app/state/documents.ts';
import { useBuild } from '#app/state/use-journal.ts';
import type { Tape } from '#shared/record/tape.ts';
import { SqueezeSection } from './squeeze-section.tsx';
import { TapeFacts } from './tape-facts.tsx';
import { type Winding, wound } from './tape-figures.ts';
import { jobOfBuild, jobOfPlan, type NoJob, type TapeJob } from './tape-job.ts';
import { TapeLength } from './tape-length.tsx';
import { TapePicture } from './tape-picture.tsx';

/** How this tube is wound, as last chosen, by plan or build. */
const chosen = new Map<string, Signal<Winding>>();

function windingOf(of: string): Signal<Winding> {
  const known = chosen.get(of) ?? signal<Winding>({ overlapFraction: 0.5, passes: 2 });
  chosen.set(of, known);
  return known;
}

function HowWound({ winding }: { winding: Signal<Winding> }) {
  const { overlapFraction, passes } = winding.value;
  const set = (change: Partial<Winding>) => {
    winding.value = { ...winding.value, ...change };
  };
  return (
    <>
      <Choice
        label="Each turn lies on the one before by"
        value={overlapFraction > 0.6 ? 'twoThirds' : 'half'}
        options={[
          { value: 'half', label: 'Half' },
          { value: 'twoThirds', label: 'Two thirds' },
        ]}
        onChange={(v) => set({ overlapFraction: v === 'half' ? 0.5 : 2 / 3 })}
      />
      <Choice
        label="Passes"
        value={passes === 1 ? 'one' : 'two'}
        options={[
          { value: 'one', label: 'One' },
          { value: 'two', label: 'There and back' },
        ]}
        onChange={(v) => set({ passes: v === 'one' ? 1 : 2 })}
      />
    </>
  );
}

function Wound({ job, tape, of }: { job: TapeJob; tape: Tape; of: string }) {
  const winding = windingOf(of);
  const figures = wound(job.outside, tape, winding.value);
  return (
    <>
      <TapeLength job={job} tape={tape} winding={winding.value} figures={figures} />
      <TapePicture outside={job.outside} width={tape.width} advance={figures.advance} />
      <HowWound winding={winding} />
      <Ask term="tape-overlap" asks="What does overlap do?" line />
      <SqueezeSection job={job} tape={tape} layers={figures.layers} />
      <TapeFacts />
    </>
  );
}

function TapeBody({ job, of, planDoc }: { job: TapeJob | NoJob; of: string; planDoc: string | undefined }) {
  if ('says' in job) {
    return (
      <Warning kind="amber" title="No tape can be reckoned">
        {job.says}
      </Warning>
    );
  }
  if (job.tape) return <Wound job={job} tape={job.tape} of={of} />;
  return (
    <>
      <Warning kind="amber" title="No shrink tape is chosen">
        Without it nothing squeezes the wall but the cloth itself.{' '}
        {planDoc
          ? 'Choose one in the plan to see how much it takes.'
          : 'This tube was started without one: choose it in the plan for the next.'}
      </Warning>
      {planDoc && <LinkButton to={`/plan/${planDoc}/edit`}>Choose a tape</LinkButton>}
    </>
  );
}

function PlanTape({ doc }: { doc: string }) {
  const plan = findDoc('plan', doc)?.body;
  if (!plan) return <NoPlan />;
  return (
    <Screen
      kicker={plan.name}
      title="Shrink tape"
      back={{ to: `/plan/${doc}`, label: plan.name }}
      actions={<Action onPress={() => go(`/plan/${doc}`)}>Back to the plan</Action>}
    >
      <TapeBody job={jobOfPlan(plan)} of={doc} planDoc={doc} />
    </Screen>
  );
}

function BuildTape({ id }: { id: string }) {
  const state = useBuild(id);
  if (state === undefined) return <div class="screen" />;
  if (state === 'absent') return <Absent what="tube" />;
  const name = buildName(state);
  const to = `/build/${id}`;
  return (
    <Screen
      kicker={name}
      title="Shrink tape"
      back={{ to, label: name }}
      actions={<Action onPress={() => go(to)}>Back to the tube</Action>}
    >
      <TapeBody job={jobOfBuild(state.header)} of={id} planDoc={undefined} />
    </Screen>
  );
}

/** How much tape does this tube take, and how hard will it squeeze? */
export function TapeScreen({ params }: { params: Params }) {
  return params.id === undefined ? <PlanTape doc={params.doc ?? ''} /> : <BuildTape id={params.id} />;
}
